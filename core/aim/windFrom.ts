import type { Wind } from '../flight/index.ts';

/**
 * A level wind by its strength and where it comes from, as archers say it on the clock: the target stands at 12.
 *
 * @equation W = −w (cos β, 0, sin β): along the shot, up, to the right
 * @param strength - w, ≥ 0 [m/s]
 * @param from - β, where it comes from: 0 from the target, π/2 from the archer's right (3 o'clock), π from behind [rad]
 * @returns the wind on the shooting line: a headwind has x below nought, a wind from the right pushes to the left [record]
 * @validity any finite figures
 * @source own derivation
 * @example windFrom(4, 0) // { "x": -4, "y": 0, "z": 0 }
 */
export function windFrom(strength: number, from: number): Wind {
  // Adding 0 turns -0 into 0.
  return { x: -strength * Math.cos(from) + 0, y: 0, z: -strength * Math.sin(from) + 0 };
}
