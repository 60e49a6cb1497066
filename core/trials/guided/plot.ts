import type { ClearanceShot, Tear } from '../../model/trial.ts';

/** A figure with the ends of its 95 % interval. */
export interface Spanned {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Where the second group's centre lies from the first's at one distance, with half widths of each axis [m]. */
export interface ShiftPoint {
  readonly distance: number;
  readonly dx: number;
  readonly dy: number;
  readonly halfX: number;
  readonly halfY: number;
  readonly arrows: readonly [first: number, second: number];
}

/** A spread of one axis, or a speed, at one setting. */
export interface SettingPoint extends Spanned {
  readonly setting: number;
  readonly arrows: number;
  /** Not told from the tightest; null where the spreads are not told apart at all, and for speeds. */
  readonly amongBest: boolean | null;
}

/** The numbers of a trial's picture, in SI; nothing in them is rounded. */
export type TrialPlot =
  | { readonly kind: 'shifts'; readonly points: readonly ShiftPoint[] }
  | {
      readonly kind: 'tears';
      readonly tears: readonly Tear[];
      /** Mean of the kind that was read. */
      readonly mean: { readonly across: Spanned; readonly up: Spanned } | null;
      /** Up to here a tear to the side can come from a tuned bow [m]. */
      readonly usual: number;
    }
  | {
      readonly kind: 'walk-back';
      readonly shots: readonly { readonly distance: number; readonly offset: number }[];
      /** Straight line with its half width, and the parabola beside it [m]; empty where there is none. */
      readonly line: readonly { readonly distance: number; readonly offset: number; readonly half: number }[];
      readonly curve: readonly { readonly distance: number; readonly offset: number }[];
    }
  | {
      readonly kind: 'sizes';
      readonly along: 'brace height' | 'nocking point';
      readonly sizes: readonly SettingPoint[];
      readonly speeds: readonly SettingPoint[];
    }
  | {
      readonly kind: 'heights';
      /** How far the bare shafts strike above the fletched, by nocking point [m]. */
      readonly points: readonly (Spanned & { readonly setting: number })[];
      readonly line: readonly { readonly setting: number; readonly height: number }[];
      /** The nocking point at which they would strike level; null when it cannot be told. */
      readonly level: Spanned | null;
    }
  | { readonly kind: 'clearance'; readonly shots: readonly ClearanceShot[] };
