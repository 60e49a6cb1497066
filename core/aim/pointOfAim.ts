import { launchElevation, peak } from '../flight/index.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { Launch } from './launch.ts';
import { pointOnDistance } from './pointOn.ts';

/**
 * Where the arrow's tip must be held so that the arrow strikes the middle of the target, without a sight.
 *
 * @equation h = R tan(θ − atan(e / L_p)) + d, with θ the launch angle that strikes the middle
 * @param launch - speed, drag parameter, eye height and target drop [record]
 * @param tipForward - L_p, from the nock to the tip of the arrow at full draw [m]
 * @param distance - R, beyond the tip [m]
 * @returns h, above the middle when positive, below when negative, in the target's plane; or a refusal when R is out of reach [m]
 * @validity level ground, still air; in the target's plane only: a marker nearer or farther scales with its distance from the eye
 * @source own derivation
 * @example pointOfAim({ speed: 50, k: 0, eyeHeight: 0.12 }, 0.74, 30).value.toFixed(3) // "-2.943"
 */
export function pointOfAim(launch: Launch, tipForward: number, distance: number): Result<number> {
  const { speed, k, eyeHeight, targetDrop = 0 } = launch;
  if (!(tipForward > 0 && distance > tipForward))
    return refuse('too-near', 'A distance beyond the tip of the arrow was expected.', 'shootingDistance');
  const found = launchElevation({ speed, k, eyeHeight, x: distance, y: -targetDrop });
  return found.ok ? ok(distance * Math.tan(found.value - Math.atan2(eyeHeight, tipForward)) + targetDrop) : found;
}

/**
 * Where on level ground the tip covers the same line, when the point of aim lies so low that it meets the ground first.
 *
 * @equation x = R H / (d − h)
 * @param hold - h, point of aim against the middle of the target [m]
 * @param distance - R, of the target [m]
 * @param targetDrop - d, the middle of the target below the eye [m]
 * @param eyeAboveGround - H [m]
 * @returns x from the archer, or null when the point of aim is above the ground at the target [m]
 * @validity level ground; a marker that lies on the ground moves along it, it does not keep its height
 * @source own derivation
 * @example groundMark(-2.9, 30, 0.3, 1.6) // 15
 */
export function groundMark(hold: number, distance: number, targetDrop: number, eyeAboveGround: number): number | null {
  const below = targetDrop - hold;
  return below > eyeAboveGround && eyeAboveGround > 0 ? (distance * eyeAboveGround) / below : null;
}

/** Where the point of aim lies lowest, and how low. */
export interface WidestGap {
  readonly distance: number;
  /** As `pointOfAim`: negative, below the middle [m]. */
  readonly hold: number;
}

/**
 * The distance inside the point-on distance at which the tip must be held lowest: the largest gap.
 *
 * @equation least h(R) for R up to the point-on distance
 * @param launch - speed, drag parameter, eye height and target drop [record]
 * @param tipForward - L_p, from the nock to the tip of the arrow at full draw [m]
 * @returns distance to 0.05 m and hold [m], or the refusal of the point-on distance [record]
 * @validity as `pointOfAim`; near half the point-on distance
 * @source common practice
 * @example widestGap({ speed: 50, k: 0, eyeHeight: 0.12 }, 0.74).value.distance.toFixed(0) // "41"
 */
export function widestGap(launch: Launch, tipForward: number): Result<WidestGap> {
  const pointOn = pointOnDistance(launch, tipForward);
  if (!pointOn.ok) return pointOn;
  const gap = (distance: number) => {
    const hold = pointOfAim(launch, tipForward, distance);
    return hold.ok ? -hold.value : -Infinity;
  };
  const distance = peak(gap, 2 * tipForward, pointOn.value, 0.05);
  const hold = pointOfAim(launch, tipForward, distance);
  return hold.ok ? ok({ distance, hold: hold.value }) : hold;
}
