import { fairWind, launchElevation, trajectory, type Wind } from '../flight/index.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { Launch } from './launch.ts';

/** What a wind does to an arrow that was aimed as in still air. */
export interface WindDrift {
  /** To the archer's right at the target [m]; hold as far to the other side. */
  readonly across: number;
  /** Upwards at the target [m]. */
  readonly up: number;
  /** From the loose to the target [s]. */
  readonly time: number;
  /** The lag rule's answer for the side [m]. */
  readonly lagRule: number;
}

/**
 * How far a steady wind carries an arrow that was aimed as in still air.
 *
 * @equation the flight of the still-air launch angle, flown in the wind, less the same in still air; lag rule z = W_z (t − x/v_x0)
 * @param launch - speed, drag parameter, eye height and target drop [record]
 * @param distance - R [m]
 * @param wind - along the shot, up and to the right [record]
 * @returns sideways and upwards at the target, the time of flight and the lag rule beside it; or a refusal [record]
 * @validity a steady wind of at most 20 m/s, the same from bow to butt; an arrow that flies along its path: what the wind does to its heading at the loose is not in it
 * @source own derivation
 * @example windDrift({ speed: 60, k: 0, eyeHeight: 0 }, 70, { x: 0, y: 0, z: 4 }).value.across // 0
 */
export function windDrift(launch: Launch, distance: number, wind: Wind): Result<WindDrift> {
  const fair = fairWind(wind);
  if (!fair.ok) return fair;
  const { speed, k, eyeHeight, targetDrop = 0 } = launch;
  const found = launchElevation({ speed, k, eyeHeight, x: distance, y: -targetDrop });
  if (!found.ok) return found;
  const elevation = found.value;
  const ahead = distance - eyeHeight * Math.sin(elevation);
  const still = trajectory({ speed, elevation, k, until: { x: ahead } }).at(ahead);
  const blown = trajectory({ speed, elevation, k, wind, until: { x: ahead } }).at(ahead);
  if (still === null || blown === null)
    return refuse(
      'out-of-reach',
      'Against this wind the arrow does not get so far: a nearer distance was expected.',
      'shootingDistance',
    );
  const lag = blown.t - ahead / (speed * Math.cos(elevation));
  return ok({ across: blown.z, up: blown.y - still.y, time: blown.t, lagRule: wind.z * lag });
}
