import type { scaleUtc } from 'd3';

export interface TimelineData {
  /** Group sizes in the shown unit, oldest first; the panel is left out when there are fewer than two. */
  readonly sizes: {
    readonly name: string;
    readonly small: string;
    readonly points: readonly {
      readonly at: number;
      readonly shots: number;
      readonly value: number;
      readonly low: number;
      readonly high: number;
      readonly text: string;
      /** The setting it was shot to try, and by which trial; such a group is not how the bow shoots now. */
      readonly tried?: string;
    }[];
  };
  readonly lanes: readonly {
    readonly key: string;
    readonly name: string;
    readonly unit: string;
    readonly steps: readonly { readonly at: number; readonly value: number; readonly text: string }[];
    /** Settings that were only tried: marks beside the line. */
    readonly tried?: readonly { readonly at: number; readonly value: number; readonly text: string }[];
    readonly now: { readonly value: number; readonly text: string } | null;
  }[];
  readonly flags: readonly {
    readonly id: string;
    readonly at: number;
    readonly name: string;
    readonly chosen: boolean;
    /** A pennant: a trial that was begun, not a snapshot. */
    readonly trial?: boolean;
  }[];
}

/** Sizes in px. The last column stands apart from the scale of time: it is how the bow stands now. */
export const timelineSize = { left: 128, now: 62, flagRow: 18, panel: 148, lane: 37, axis: 26, foot: 10, dot: 11 } as const;

export type Anchor = 'start' | 'middle' | 'end';
export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: Anchor;
}

/** From wall time to px. */
export type Time = ReturnType<typeof scaleUtc<number, number>>;

/** What is drawn, in px. */
export interface TimelineMarks {
  readonly height: number;
  readonly plot: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly panel: {
    readonly top: number;
    readonly bottom: number;
    readonly grid: readonly { readonly y: number; readonly text: string }[];
    readonly dots: readonly {
      readonly x: number;
      readonly at: number;
      readonly y: number;
      readonly r: number;
      readonly from: number;
      readonly to: number;
      /** The interval runs on beyond the panel. */
      readonly beyond: boolean;
      readonly tried: boolean;
      /** What it is, for whoever points at it. */
      readonly said: string;
    }[];
    /** The newest group that was not shot to try something and has arrows enough to tell; null when there is none. */
    readonly last: Label | null;
    /** What the size of a dot says, in short lines that keep off the figures of the axis. */
    readonly dotNote: readonly Label[];
  } | null;
  readonly lanes: readonly {
    readonly key: string;
    readonly name: string;
    readonly unit: string;
    readonly y: number;
    readonly rule: number;
    readonly path: string;
    readonly labels: readonly Label[];
    readonly tried: readonly { readonly x: number; readonly y: number; readonly text: string }[];
    readonly now: (Label & { readonly stepped: boolean }) | null;
  }[];
  readonly flags: readonly {
    readonly id: string;
    readonly x: number;
    /** Where its cloth hangs: the staff begins there. */
    readonly y: number;
    readonly chosen: boolean;
    readonly trial: boolean;
    readonly label: Label | null;
  }[];
  readonly ticks: readonly Label[];
}
