import { crossing, fairSlope, launchElevation, peak } from '../flight/index.ts';
import { ok, type Result } from '../model/problem.ts';
import type { Launch } from './launch.ts';

/** A target up or down a slope: how the bow is held to it, and what the sight is set to. */
export interface SlopeShot {
  /** Launch angle above the horizontal [rad]. */
  readonly elevation: number;
  /** Between the line of sight and the arrow's axis: what the sight has to give [rad]. */
  readonly above: number;
  /** The level distance for which the sight gives the same [m]; null where it gives so little for none. */
  readonly setFor: number | null;
  /** S cos φ, the trade's rule [m]. */
  readonly cosineRule: number;
}

/** Nearer than this nobody sets a sight. */
const NEAREST = 2;
/** Slopes of up to 50° ask for more than this share of their length [-]. */
const USUAL = 0.6;
/** Less than a thousandth of a millimetre of setting [rad]. */
const FINE = 1e-9;

/** The angle between line of sight and arrow for a level shot; NaN out of reach. */
function levelAngle({ speed, k, eyeHeight }: Launch, distance: number): number {
  const found = launchElevation({ speed, k, eyeHeight, x: distance, y: 0 });
  return found.ok ? found.value : NaN;
}

/**
 * A shot up or down a slope, solved in full.
 *
 * @equation the flight passes (S cos φ, S sin φ), seen from the eye; δ = θ − φ; the sight is set for the level distance R with δ(R) = δ, on the branch where δ grows with R
 * @param launch - speed, drag parameter and eye height; a target drop has no part in it [record]
 * @param distance - S, from the eye along the slope to the middle of the target [m]
 * @param slope - φ, upwards when positive [rad]
 * @returns the launch angle, δ, the level distance to set the sight for, and S cos φ beside it; or a refusal [record]
 * @validity still air; slopes up to 60° either way; the archer tilts at the hips, so that eye, nock and tip keep their triangle
 * @source own derivation
 * @example slopeShot({ speed: 50, k: 0, eyeHeight: 0 }, 30, 0).value.setFor.toFixed(3) // "30.000"
 */
export function slopeShot(launch: Launch, distance: number, slope: number): Result<SlopeShot> {
  const fair = fairSlope(slope);
  if (!fair.ok) return fair;
  const { speed, k, eyeHeight } = launch;
  const found = launchElevation({ speed, k, eyeHeight, x: distance * Math.cos(slope), y: distance * Math.sin(slope) });
  if (!found.ok) return found;
  const above = found.value - slope;
  return ok({ elevation: found.value, above, setFor: levelFor(launch, above, distance), cosineRule: distance * Math.cos(slope) });
}

/**
 * The level distance for which the sight gives an angle.
 *
 * @equation R with θ(R) = δ, on the branch where the angle grows with R
 * @param launch - speed, drag parameter and eye height; a target drop has no part in it [record]
 * @param above - δ, between the line of sight and the arrow's axis [rad]
 * @param distance - where the target stands: R lies below 1.2 times that [m]
 * @returns R, or null where the sight gives so little or so much for none [m]
 * @validity still air over level ground
 * @source own derivation
 * @example levelFor({ speed: 50, k: 0, eyeHeight: 0 }, 0.0591775, 40).toFixed(2) // "30.10"
 */
export function levelFor(launch: Launch, above: number, distance: number): number | null {
  if (!(distance > NEAREST)) return null;
  const off = (x: number) => levelAngle(launch, x) - above;
  // The eye stands over the arrow: up close δ falls with the distance before it grows. From anywhere below δ it can only be crossed growing.
  const usual = Math.max(NEAREST, USUAL * distance);
  const below = off(usual) <= 0 ? usual : peak((x) => -levelAngle(launch, x), NEAREST, distance, 1e-6);
  if (!(off(below) <= 0)) return null;
  let far = distance;
  // A slope never asks for much more than its own length.
  while (!(off(far) >= 0)) {
    if (far > 1.2 * distance || Number.isNaN(off(far))) return null;
    far *= 1.02;
  }
  return crossing(off, below, far, FINE);
}
