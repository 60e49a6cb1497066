import { launchElevation, trajectory } from '../flight/index.ts';
import { ok, type Result } from '../model/problem.ts';
import type { Launch } from './launch.ts';

/**
 * How far over the middle an arrow strikes when the sight is set for another distance.
 *
 * @equation δ = θ(R_b) + atan(d/R_b) of the distance believed; the arrow leaves at δ − atan(d/R) and is read at R
 * @param launch - speed, drag parameter, eye height and target drop [record]
 * @param believed - R_b, what the sight is set for [m]
 * @param actual - R, where the target stands [m]
 * @returns above the middle when positive, below when negative, −∞ when the arrow does not get there; or a refusal when R_b is out of reach [m]
 * @validity level ground, still air; the sight is held on the middle
 * @source own derivation
 * @example Math.abs(misjudged({ speed: 50, k: 0, eyeHeight: 0 }, 30, 30).value) < 1e-6 // true
 */
export function misjudged(launch: Launch, believed: number, actual: number): Result<number> {
  const { speed, k, eyeHeight, targetDrop = 0 } = launch;
  const set = launchElevation({ speed, k, eyeHeight, x: believed, y: -targetDrop });
  if (!set.ok) return set;
  const elevation = set.value + Math.atan2(targetDrop, believed) - Math.atan2(targetDrop, actual);
  const ahead = actual - eyeHeight * Math.sin(elevation);
  const passing = trajectory({ speed, elevation, k, until: { x: ahead } }).at(ahead);
  // Adding 0 turns -0 into 0.
  return ok(passing === null ? -Infinity : passing.y - eyeHeight * Math.cos(elevation) + targetDrop + 0);
}
