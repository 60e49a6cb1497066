import type { Band } from '../model/band.ts';
import { bandOver, type Corners } from './bands.ts';
import type { SetSight } from './lineOfSight.ts';

/** A point of the drawn flight: height over the line of sight with its band [m], at x from the eye [m]. */
export interface CurvePoint extends Band {
  readonly x: number;
}

/**
 * A flight as a curve over its line of sight, evenly spaced.
 *
 * @equation height over the line at x = i X / n for i = 0 to n, with its band over the corners
 * @param sights - the sight set for one distance with every launch of a band, from `setSight` [record]
 * @param farthest - X, the end of the curve [m]
 * @param steps - n, pieces of the curve [-]
 * @returns the points from the eye on [list]
 * @validity a flight that has been broken off short of X ends the curve there
 * @source own derivation
 * @example curveOver({ value: setSight({ speed: 50, k: 0, eyeHeight: 0 }, 30, 40).value, corners: [] }, 40, 4).map(({ x }) => x) // [0, 10, 20, 30, 40]
 */
export function curveOver(sights: Corners<SetSight>, farthest: number, steps: number): CurvePoint[] {
  const points: CurvePoint[] = [];
  for (let step = 0; step <= steps; step++) {
    const x = (farthest * step) / steps;
    const heights = bandOver(sights, (sight) => sight.heightOverLine(x) ?? NaN);
    if (!Number.isFinite(heights.low + heights.high)) break;
    points.push({ x, ...heights });
  }
  return points;
}
