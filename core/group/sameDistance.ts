import type { ShotGroup } from '../model/group.ts';

/** Two marks on one lane, paced or taped, still count as one distance: from memory. */
const SHARE = 0.01;

/**
 * Whether two groups were shot at one distance.
 *
 * @equation apart by at most 1 % of the farther
 * @param a - the one group [record]
 * @param b - the other group [record]
 * @returns true when they were [choice]
 * @validity any two groups
 * @source from memory
 * @example sameDistance(exampleFletched, exampleBare) // true
 */
export function sameDistance(a: ShotGroup, b: ShotGroup): boolean {
  const [one, other] = [a.context.distance, b.context.distance];
  return Math.abs(one - other) <= SHARE * Math.max(one, other);
}
