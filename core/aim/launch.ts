import type { Band } from '../model/band.ts';
import type { Corners } from './bands.ts';

/**
 * What decides where an arrow flies against the line of sight. Eye, nock and tip are one rigid triangle that the archer tilts as a whole:
 * the arrow's axis passes the eye height squarely below the eye, and the arrow leaves from the foot of that perpendicular.
 */
export interface Launch {
  /** Launch speed [m/s]. */
  readonly speed: number;
  /** Drag parameter [1/m]. */
  readonly k: number;
  /** From the arrow's axis up to the eye at full draw [m]. */
  readonly eyeHeight: number;
  /** How far the middle of every target lies below the eye [m]; at eye height when left out. */
  readonly targetDrop?: number;
}

/**
 * The launches that bound a flight whose speed and drag are not known exactly.
 *
 * @equation the value to go by, and (v, k) at low and high of both
 * @param speed - v, launch speed with its band [m/s]
 * @param drag - k, drag parameter with its band [1/m]
 * @param eyeHeight - e, from the arrow's axis up to the eye [m]
 * @param targetDrop - d, the middle of the target below the eye [m]
 * @returns the launch to go by and the four that bound it [record]
 * @validity low ≤ value ≤ high in both bands
 * @source own derivation
 * @example launchBand({ value: 55, low: 53, high: 57 }, { value: 0.002, low: 0.001, high: 0.003 }, 0.12, 0).corners.length // 4
 */
export function launchBand(speed: Band, drag: Band, eyeHeight: number, targetDrop: number): Corners<Launch> {
  const launch = (v: number, k: number): Launch => ({ speed: v, k, eyeHeight, targetDrop });
  const corners = [speed.low, speed.high].flatMap((v) => [drag.low, drag.high].map((k) => launch(v, k)));
  return { value: launch(speed.value, drag.value), corners };
}
