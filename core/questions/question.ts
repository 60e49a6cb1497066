import type { Why } from '../findings/finding.ts';
import type { Ellipse, Interval, Point } from '../group/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { Id } from '../model/common.ts';
import type { ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';

export type QuestionId =
  | 'left out'
  | 'aim'
  | 'size'
  | 'flyer'
  | 'odd'
  | 'drift'
  | 'shape'
  | 'tighter'
  | 'stopping'
  | 'score'
  | 'one centre';

/** What a technician asks of one group, and what there is to answer it from. */
export interface QuestionInput {
  readonly group: ShotGroup;
  /** The group that stands beside it on the page; null when it stands alone. */
  readonly beside: ShotGroup | null;
  /** Other groups of this archer and bow; those that were not shot alike are left aside. */
  readonly others: readonly ShotGroup[];
  /** Groups that were shot for a walk-back, at one mark with one sight setting for all distances: where they lie is asked of the trial. */
  readonly walkBack?: ReadonlySet<Id>;
  readonly bundle: Bundle;
  /** Half the shaft's diameter [m]. */
  readonly shaftRadius: number;
  readonly units: UnitChoice;
}

/** How an answer stands: something to act on, a figure, open until more is shot, or nothing found. */
export type Standing = 'act' | 'figure' | 'open' | 'clear';

export interface Question {
  readonly id: QuestionId;
  readonly ask: string;
  /** One line with its number and interval. */
  readonly answer: string;
  readonly state: 'yes' | 'no' | 'cannot tell';
  readonly standing: Standing;
  /** How many more shots or ends would tell; null where nothing is open. */
  readonly tells: string | null;
  /** Shots that the answer names, which a person may leave out with a reason of their own. */
  readonly named?: readonly { readonly shot: number; readonly name: string }[];
  /** What opens behind it, worked out only then. */
  readonly page: () => QuestionPage;
}

export interface QuestionPage {
  readonly tables: readonly QuestionTable[];
  readonly notes: readonly string[];
  readonly plot: QuestionPlot | null;
  readonly why: Why;
}

export interface QuestionTable {
  /** Over the columns; the first stands over the names of the rows. */
  readonly head: readonly string[];
  readonly rows: readonly { readonly cells: readonly string[]; readonly answer: boolean }[];
}

/** A value with its 95 % interval on a row of its own; `strong` for the one that is asked about. */
export interface PlotRow {
  readonly name: string;
  readonly value: number;
  readonly interval: Interval | null;
  readonly strong: boolean;
}

/** Numbers to draw, in m or points. */
export type QuestionPlot =
  | {
      readonly kind: 'face';
      readonly sentence: string;
      readonly centre: Point;
      readonly ellipse: Ellipse;
      readonly circles: readonly { readonly name: string; readonly radius: number }[];
    }
  | {
      readonly kind: 'rows';
      readonly sentence: string;
      readonly of: 'length' | 'points' | 'ratio';
      readonly panels: readonly {
        readonly title: string;
        readonly rows: readonly PlotRow[];
        /** What the rows are held against, drawn as a line. */
        readonly against: number | null;
      }[];
    }
  | {
      readonly kind: 'places';
      readonly sentence: string;
      /** Each with the circle that its true place lies in with 95 %. */
      readonly places: readonly {
        readonly name: string;
        readonly at: Point;
        readonly radius: number;
        readonly strong: boolean;
      }[];
      readonly origin: string;
    };
