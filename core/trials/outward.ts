import type { Hand } from '../model/archer.ts';

/** A side as the archer sees it on the face. */
export type Side = 'left' | 'right';

/**
 * A sideways place on the face turned into "outward from the riser": the one place where handedness is mirrored.
 *
 * @equation outward = −x for a right-handed archer, +x for a left-handed one
 * @param x - sideways place or shift as the archer sees it, right positive [m]
 * @param hand - the archer's hand [choice]
 * @returns the same, positive away from the riser [m]
 * @validity any x; up and down are never mirrored
 * @source common practice
 * @example outwardOf(0.041, 'right') // -0.041
 */
export function outwardOf(x: number, hand: Hand): number {
  // Adding nought keeps a centred group from becoming minus nought.
  return (hand === 'right' ? -x : x) + 0;
}

/**
 * The side that lies outward from the riser.
 *
 * @equation left for a right-handed archer, right for a left-handed one
 * @param hand - the archer's hand [choice]
 * @returns the side [choice]
 * @validity both hands
 * @source common practice
 * @example outwardSide('left') // "right"
 */
export function outwardSide(hand: Hand): Side {
  return hand === 'right' ? 'left' : 'right';
}
