import { pointBeyondShaft } from '../arrow/index.ts';
import type { Band } from '../model/band.ts';
import { given } from '../model/given.ts';
import { limits } from '../model/limits.ts';
import { ok, refuse, type Result } from '../model/problem.ts';

export interface AimInput {
  /** Launch speed [m/s]. */
  readonly speed: Band;
  /** Of the whole arrow [kg]. */
  readonly mass: number;
  /** Outer diameter of the shaft [m]. */
  readonly diameter: number;
  /** [kg/m³], from `airDensity`. */
  readonly airDensity: number;
  /** Drag parameter [1/m], where two speeds of this arrow have been measured; else the band of `dragBand`. */
  readonly drag?: Band;
  /** From the arrow's axis up to the eye at full draw [m]. */
  readonly eyeHeight: number;
  /** How far the middle of the target lies below the eye [m]; at eye height when left out. */
  readonly targetDrop?: number;
  /** From the throat of the nock to the end of the shaft [m], as the arrow is recorded. */
  readonly arrowLength: number;
  /** What the point adds ahead of the shaft [m]. */
  readonly pointLength?: number;
  readonly distances: readonly number[];
  /** The distance that the sight is set for [m]. */
  readonly setFor: number;
}

/** The eye of a standing adult above the ground [m]: from memory. */
export const standingEye = 1.6;

/** How high the centre of a face stands over the ground [m]: World Archery rule book. */
export const goldAboveGround = 1.3;

const { min: slowest, max: fastest } = limits.arrowSpeed;

/**
 * Check the figures of an aim before anything is flown.
 *
 * @equation every figure finite and within the limits of its measure; low ≤ value ≤ high; speed 20 to 120 m/s
 * @param input - what `aimPlan` was given [record]
 * @returns the same input, or a refusal that says what was expected [record]
 * @validity any input, also one that is not a number
 * @source own derivation
 * @example checkAim({ speed: { value: 10, low: 9, high: 11 } }).problem.sentence // "An arrow speed between 20 and 120 m/s (66 and 394 ft/s) was expected."
 */
export function checkAim(input: AimInput): Result<AimInput> {
  const { speed, drag, airDensity, targetDrop = 0, pointLength = pointBeyondShaft } = input;
  if (!(speed.value >= slowest && speed.value <= fastest))
    return refuse('speed', `An arrow speed between ${slowest} and ${fastest} m/s (66 and 394 ft/s) was expected.`, 'arrowSpeed');
  for (const band of drag ? [speed, drag] : [speed])
    if (!(band.low >= 0 && band.low <= band.value && band.value <= band.high && band.high < Infinity && speed.low > 0))
      return refuse('band', 'A band around the speed and the drag was expected, from low to high.', 'arrowSpeed');
  if (!(airDensity >= 0 && airDensity <= 2))
    return refuse('air', 'An air density between 0 and 2 kg/m³ was expected: 1.2 is ordinary.');
  if (!(Math.abs(targetDrop) <= 3)) return refuse('target', 'A target within 3 m of eye height was expected.');
  if (!(pointLength >= 0 && pointLength <= 0.1))
    return refuse('point', 'A point of 0 to 100 mm ahead of the shaft was expected.');
  if (input.distances.length > 500)
    return refuse('distances', 'At most 500 distances at a time were expected.', 'shootingDistance');
  const { mass: arrowMass, diameter: shaftDiameter, eyeHeight, arrowLength } = input;
  const figures = given('The aim', { arrowMass, shaftDiameter, eyeHeight, arrowLength });
  if (!figures.ok) return figures;
  for (const shootingDistance of [input.setFor, ...input.distances]) {
    const distance = given('The aim', { shootingDistance });
    if (!distance.ok) return distance;
  }
  return ok(input);
}
