import type { Face } from '../../core/group/index.ts';
import type { Band } from '../../core/model/band.ts';

/** Who and what a paper holds for: it hangs in a quiver long after the screen has moved on. */
export interface PaperHead {
  readonly archer: string;
  readonly bow: string;
  readonly arrows: string;
  readonly form: string;
  readonly date: string;
  readonly units: string;
}

/** A distance on the sight's bar. */
export interface StripRow {
  /** From the eye [m]. */
  readonly distance: number;
  /** The figure that stands beside its line, in the archer's own unit: "30". */
  readonly label: string;
  /** In the scale's numbers with 95 %; null where the arrow does not carry so far. */
  readonly reading: Band | null;
  /** Not known well enough to be shot by: drawn hollow, with its interval. */
  readonly weak: boolean;
  /** Shot in and entered. */
  readonly known: boolean;
}

/** What the sight strip is drawn from. */
export interface StripPaper {
  readonly title: string;
  /** Whether its marks still hold: they were shot in with this very archer, bow, arrow and form. */
  readonly proven: boolean;
  /** What it rests on, in a sentence or two. */
  readonly note: string;
  /** One unit of the scale [m], and which way its numbers grow. */
  readonly unit: number;
  readonly grows: 'down' | 'up';
  /** Of the distances: "m" or "yd". */
  readonly distanceUnit: string;
  readonly rows: readonly StripRow[];
  /** The ends of the bar in the scale's numbers, where they are known. */
  readonly lowest?: number;
  readonly highest?: number;
  /** Decimals that a reading is shown with. */
  readonly digits: number;
}

/** A small table for the quiver. */
export interface CardPaper {
  readonly title: string;
  /** As on a strip. */
  readonly proven: boolean;
  readonly note: string;
  /** Column heads with their units. The first column is the distance and never left out. */
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** Which rows are known marks, shot and entered. */
  readonly strong: readonly boolean[];
}

/** Where the tip of the arrow is held at a distance. */
export interface PointRow {
  /** "30 m". */
  readonly label: string;
  /** "86 cm below", "on the centre". */
  readonly hold: string;
  /** "80 to 92". */
  readonly band: string;
  readonly side: 'above' | 'below' | 'on';
  /** Above the centre of the face, below it when negative [m]. */
  readonly holdM: number;
  /** "marker 23.4 m out", where the ground comes before the target. */
  readonly ground: string | null;
}

/** What the point-of-aim card is drawn from. */
export interface PointPaper {
  readonly title: string;
  readonly note: string;
  readonly rows: readonly PointRow[];
  readonly face: Face;
}
