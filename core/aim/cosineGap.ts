import { ok, refuse, type Result } from '../model/problem.ts';
import type { Launch } from './launch.ts';
import { slopeShot } from './slope.ts';

/** Why a slope asks for another setting than S cos φ, taken one after the other: their sum is what the full solution differs by. */
export interface CosineGap {
  /** Gravity along the path: it slows an arrow on its way up and hurries it on its way down [m]. */
  readonly gravity: number;
  /** Drag on the whole of the way, not on its level part alone [m]. */
  readonly drag: number;
  /** The eye over the arrow [m]. */
  readonly eye: number;
}

/**
 * What the cosine rule leaves out of a slope, by its three reasons.
 *
 * @equation setting without drag and with the eye at the arrow, less S cos φ; then with drag, less without; then with the eye over the arrow, less without
 * @param launch - speed, drag parameter and eye height [record]
 * @param distance - S, along the slope [m]
 * @param slope - φ, upwards when positive [rad]
 * @returns the three parts in metres of setting, or a refusal: those of slopeShot, `no-setting` so near that the sight gives none [record]
 * @validity as slopeShot; the order in which the reasons are taken moves a part by a few centimetres, never the sum
 * @source own derivation
 * @example cosineGap({ speed: 50, k: 0, eyeHeight: 0 }, 30, 0).value.drag // 0
 */
export function cosineGap(launch: Launch, distance: number, slope: number): Result<CosineGap> {
  const settings: number[] = [];
  for (const part of [{ k: 0, eyeHeight: 0 }, { eyeHeight: 0 }, {}]) {
    const shot = slopeShot({ ...launch, ...part }, distance, slope);
    if (!shot.ok) return shot;
    if (shot.value.setFor === null)
      return refuse(
        'no-setting',
        'A target farther off was expected: so near, no distance gives this setting.',
        'shootingDistance',
      );
    settings.push(shot.value.setFor);
  }
  const [gravity = 0, drag = 0, whole = 0] = settings;
  return ok({ gravity: gravity - distance * Math.cos(slope), drag: drag - gravity, eye: whole - drag });
}
