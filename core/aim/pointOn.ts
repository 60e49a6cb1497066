import { crossing, trajectory } from '../flight/index.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { Launch } from './launch.ts';

// Beyond any bow: a tip that has not come back to the mark by then has no point-on distance.
const farthest = 1000;

/**
 * The launch angle when the arrow's tip is held on the middle of the target.
 *
 * @equation θ = atan(e / L_p) − atan(d / R): the arrow points above the line from eye to tip by its angle at the tip
 * @param launch - eye height e and target drop d, besides speed and drag [record]
 * @param tipForward - L_p, from the nock to the tip of the arrow at full draw [m]
 * @param distance - R [m]
 * @returns θ, above the horizontal [rad]
 * @validity the nock is squarely below the eye and the arrow leaves along its own axis
 * @source own derivation
 * @example tipHeldElevation({ speed: 50, k: 0, eyeHeight: 0.75, targetDrop: 0 }, 0.75, 30) // 0.7853981633974483
 */
export function tipHeldElevation(launch: Launch, tipForward: number, distance: number): number {
  return Math.atan2(launch.eyeHeight, tipForward) - Math.atan2(launch.targetDrop ?? 0, distance);
}

/**
 * How far over the middle of the target the arrow strikes when its tip is held on it.
 *
 * @equation miss = y(R; θ) + d with θ of the tip held on the middle
 * @param launch - speed, drag parameter, eye height and target drop [record]
 * @param tipForward - L_p, from the nock to the tip of the arrow at full draw [m]
 * @param distance - R, beyond the tip [m]
 * @returns above the middle when positive, below when negative [m]
 * @validity level ground, still air; throws RangeError for a distance short of the tip
 * @source common practice
 * @example missWithTipOn({ speed: 50, k: 0, eyeHeight: 0.12 }, 0.74, 30) > 0 // true
 */
export function missWithTipOn(launch: Launch, tipForward: number, distance: number): number {
  const { speed, k, eyeHeight, targetDrop = 0 } = launch;
  if (!(distance >= tipForward)) throw new RangeError('A distance beyond the tip of the arrow was expected.');
  const elevation = tipHeldElevation(launch, tipForward, distance);
  const ahead = distance - eyeHeight * Math.sin(elevation);
  const passing = trajectory({ speed, elevation, k, until: { x: ahead } }).at(ahead);
  return passing ? passing.y - eyeHeight * Math.cos(elevation) + targetDrop : -Infinity;
}

/**
 * The distance at which an arrow strikes what its tip is held on: nearer it strikes over, farther under.
 *
 * @equation miss(R) = 0 on the way down
 * @param launch - speed, drag parameter, eye height and target drop [record]
 * @param tipForward - L_p, from the nock to the tip of the arrow at full draw [m]
 * @returns R, or a refusal when the arrow never rises over the line from eye to tip [m]
 * @validity level ground, still air; the nock squarely below the eye; the arrow leaves along its own axis
 * @source own derivation
 * @example pointOnDistance({ speed: 50, k: 0, eyeHeight: 0.12 }, 0.74).value.toFixed(2) // "79.84"
 */
export function pointOnDistance(launch: Launch, tipForward: number): Result<number> {
  // Past the end of a short flight the miss has no bottom, and a search for nought needs a number there.
  const miss = (distance: number) => Math.max(-farthest, missWithTipOn(launch, tipForward, distance));
  const near = 2 * tipForward;
  if (!(miss(near) > 0))
    return refuse(
      'no-point-on',
      'There is no point-on distance: with the eye so close to the arrow it strikes under the tip everywhere.',
      'eyeHeight',
    );
  let [before, beyond] = [near, 4 * near];
  while (beyond < farthest && miss(beyond) > 0) [before, beyond] = [beyond, Math.min(2 * beyond, farthest)];
  if (!(miss(beyond) < 0))
    return refuse(
      'no-point-on',
      `There is no point-on distance within ${farthest} m: check the eye height and the arrow's length.`,
      'eyeHeight',
    );
  return ok(crossing(miss, before, beyond, 1e-6));
}
