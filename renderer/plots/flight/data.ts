import type { Band } from '../../../core/model/band.ts';

/** How high the arrow stands over the line of sight at a distance, with its band [m]. */
export interface FlightSample extends Band {
  readonly distance: number;
}

/** A flight ready to be drawn: heights over a level line of sight from the eye to the centre of the face, SI. */
export interface FlightData {
  /** From the archer onwards, by distance; it may end before the axis does. */
  readonly samples: readonly FlightSample[];
  /** Where the arrow meets the line of sight on its way down. */
  readonly setFor: number;
  /** The highest point over the line of sight. */
  readonly top: { readonly distance: number; readonly height: number };
  /** How far the ground lies below the line of sight; null when nothing is known of it. */
  readonly ground: number | null;
  /** Where the tip held on the centre hits the centre; null where it is not asked or not there. */
  readonly pointOn: Band | null;
  /** What the band holds, in a few words. */
  readonly bandName: string;
  /** The end of the axis. */
  readonly farEnd: number;
}

/** What is read off the flight at one distance. */
export interface FlightReading {
  readonly distance: number;
  readonly height: Band;
  /** The distance, then the figures there: two texts for one line. */
  readonly where: string;
  readonly figures: string;
}
