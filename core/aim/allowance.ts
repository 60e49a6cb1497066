import { solveShot, type Wind } from '../flight/index.ts';
import type { Band } from '../model/band.ts';
import { ok, type Result } from '../model/problem.ts';
import { atCorners, bandOver, type Corners } from './bands.ts';
import type { Launch } from './launch.ts';
import { levelFor } from './slope.ts';

/** What has to be allowed for a slope and a wind, so that the arrow strikes the middle all the same. */
export interface Allowance {
  /** The level distance to set the sight for [m]; null where it gives so little, or so much, for none. */
  readonly setFor: Band | null;
  /** How far to the right of the middle to hold, in the plane of the face [m]; to the left when negative. */
  readonly hold: Band;
}

/**
 * What has to be allowed for a slope and a wind: the distance to set the sight for, and how far to hold off.
 *
 * @equation θ and ψ of solveShot; the sight is set for the level distance R with δ(R) = θ − φ; hold S cos φ tan ψ to the right
 * @param launches - speed, drag parameter and eye height, with what is not known of them; a target drop has no part in it [record]
 * @param distance - S, from the eye along the slope [m]
 * @param slope - φ, upwards when positive [rad]
 * @param wind - along the shot, up and to the right [record]
 * @returns setting and hold [m] with their bands; or a refusal: those of solveShot [record]
 * @validity as solveShot; the sight was shot in on level ground in still air
 * @source own derivation
 * @example allowance({ value: { speed: 50, k: 0, eyeHeight: 0 }, corners: [] }, 30, 0, { x: 0, y: 0, z: 5 }).value.hold.value // 0
 */
export function allowance(launches: Corners<Launch>, distance: number, slope: number, wind: Wind): Result<Allowance> {
  // The launch turns about the upright: what it turns past is the level way to the target.
  const ahead = distance * Math.cos(slope);
  const solved = atCorners(launches, (launch) => {
    const { speed, k, eyeHeight } = launch;
    const shot = solveShot({ speed, k, eyeHeight, distance, slope, wind });
    return shot.ok
      ? ok({ hold: ahead * Math.tan(shot.value.windage), setFor: levelFor(launch, shot.value.above, distance) })
      : shot;
  });
  if (!solved.ok) return solved;
  const settings = atCorners(solved.value, ({ setFor }) => (setFor === null ? none : ok(setFor)));
  return ok({
    setFor: settings.ok ? bandOver(settings.value, (setFor) => setFor) : null,
    hold: bandOver(solved.value, ({ hold }) => hold),
  });
}

const none: Result<number> = { ok: false, problem: { code: 'no-setting', sentence: 'No distance gives this setting.' } };
