import { trajectory } from './trajectory.ts';

/**
 * How far along level ground an arrow is down, loosed at an angle from a height.
 *
 * @equation x where the flight is down at y = −h
 * @param speed - v₀, launch speed [m/s]
 * @param k - drag parameter [1/m]
 * @param elevation - θ, launch angle above the horizontal [rad]
 * @param height - h, of the bow above the ground, ≥ 0 [m]
 * @returns x, along the ground [m]
 * @validity still air, a solid arrow that flies along its path; throws RangeError for a negative height and where `trajectory` does
 * @source own derivation
 * @example levelReach(9.80665, 0, Math.PI / 4, 0).toFixed(5) // "9.80665"
 */
export function levelReach(speed: number, k: number, elevation: number, height: number): number {
  if (!(height >= 0)) throw new RangeError('A height of 0 or more above the ground was expected.');
  const flight = trajectory({ speed, elevation, k, until: { y: -height } });
  return flight.downTo(-height)?.x ?? flight.end().x;
}
