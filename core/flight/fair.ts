import { ok, refuse, type Result } from '../model/problem.ts';
import type { Wind } from './wind.ts';

/** Nobody sets a target steeper than this [rad]: about 60°. From memory. */
const STEEPEST = Math.PI / 3;
/** Beyond this a range is shut [m/s]. From memory. */
const STRONGEST = 20;

/** A sixty-degree slope must not fail for the last bit of its radians. */
const BIT = 1e-9;

/**
 * Refuses a slope that no target stands on.
 *
 * @equation |φ| ≤ 60°
 * @param slope - φ, upwards when positive [rad]
 * @returns the same slope, or the refusal `slope` [rad]
 * @validity any figure, also one that is not a number
 * @source from memory
 * @example fairSlope(89 * Math.PI / 180).problem.code // "slope"
 */
export function fairSlope(slope: number): Result<number> {
  if (Math.abs(slope) <= STEEPEST + BIT) return ok(slope);
  return refuse('slope', 'A slope of at most 60° up or down was expected: nobody sets a target steeper than that.', 'slope');
}

/**
 * Refuses a wind that nobody shoots in.
 *
 * @equation |W| ≤ 20 m/s
 * @param wind - along the shot, up and to the right [record]
 * @returns the same wind, or the refusal `wind` [record]
 * @validity any figures, also such as are not numbers
 * @source from memory
 * @example fairWind({ x: 0, y: 0, z: 33 }).problem.code // "wind"
 */
export function fairWind(wind: Wind): Result<Wind> {
  if (Math.hypot(wind.x, wind.y, wind.z) <= STRONGEST + BIT) return ok(wind);
  return refuse('wind', 'A wind of at most 20 m/s (45 mph) was expected: in more than that nobody shoots.', 'windSpeed');
}
