import type { SetSight } from './lineOfSight.ts';

/**
 * How far out a flight comes down to level ground.
 *
 * @equation x where the flight passes y = −H on its way down, seen from the eye
 * @param sight - the flight with its sight set, from `setSight` [record]
 * @param eyeAboveGround - H [m]
 * @returns distance from the eye, or null when the flight was not flown so far [m]
 * @validity level ground, still air; H above the target drop, so that the ground lies beyond the mark
 * @source own derivation
 * @example comesDown(setSight({ speed: 50, k: 0, eyeHeight: 0 }, 30, 200).value, 1.3).toFixed(2) // "44.76"
 */
export function comesDown(sight: SetSight, eyeAboveGround: number): number | null {
  const { flight, start } = sight;
  const down = flight.downTo(-eyeAboveGround - start.y);
  return down === null ? null : start.x + down.x;
}
