import type { Length } from './circles.ts';

/** An angle at the archer with its 95 % interval [rad]. */
export interface AngleFigure {
  readonly value: number;
  readonly interval: readonly [low: number, high: number];
}

/**
 * A length on the face as an angle at the archer, so that groups of several distances can be set side by side.
 *
 * @equation atan(length/distance)
 * @param length - a radius, spread or offset on the face, either sign [m]
 * @param distance - from archer to face, > 0 [m]
 * @returns angle [rad]
 * @validity a length from the line of sight outwards, face square to it; a distance that is not positive or a length that is not finite throws RangeError
 * @source own derivation
 * @example angleAt(0.3, 0.3) // 0.7853981633974483
 */
export function angleAt(length: number, distance: number): number {
  if (!(distance > 0 && distance < Infinity && Number.isFinite(length))) throw new RangeError('A distance above 0 is needed.');
  return Math.atan(length / distance);
}

/**
 * A length across the line of sight, half on either side, as an angle at the archer: an extreme spread, a width.
 *
 * @equation 2 atan(length/(2 distance))
 * @param length - an extent on the face, ≥ 0 [m]
 * @param distance - from archer to face, > 0 [m]
 * @returns angle [rad]
 * @validity face square to the line of sight; as angleAt
 * @source own derivation
 * @example angleAcross(0.6, 0.3) // 1.5707963267948966
 */
export function angleAcross(length: number, distance: number): number {
  return 2 * angleAt(length / 2, distance);
}

/**
 * A length with its interval as an angle with its interval.
 *
 * @equation angleAt of the value and of both ends
 * @param length - the length and its interval [record]
 * @param distance - from archer to face, > 0 [m]
 * @returns angle and its interval [record]
 * @validity as angleAt, which keeps the order of the ends
 * @source own derivation
 * @example angleOfLength({ value: 0.3, interval: [0, 0.3] }, 0.3).interval[1] // 0.7853981633974483
 */
export function angleOfLength(length: Length, distance: number): AngleFigure {
  const [low, high] = length.interval;
  return { value: angleAt(length.value, distance), interval: [angleAt(low, distance), angleAt(high, distance)] };
}
