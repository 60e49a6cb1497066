import { wallTime, type Id } from '../model/common.ts';
import type { ShotGroup } from '../model/group.ts';
import { groupMeasures } from './measures.ts';
import { sameDistance } from './sameDistance.ts';

/** What very many shots like one group's would show, mean radius with its 95 % interval [m], at the clock on the wall where it was shot [ms]. */
export interface RadiusPoint {
  readonly id: Id;
  readonly at: number;
  readonly shots: number;
  readonly radius: number;
  readonly low: number;
  readonly high: number;
}

export interface RadiusSeries {
  /** Where the groups of the series were shot [m]; null when there is none. */
  readonly distance: number | null;
  readonly points: readonly RadiusPoint[];
  /** Groups at this distance whose size cannot be told: one shot, or all in one hole. */
  readonly untold: number;
}

/**
 * The distance at which most groups were shot.
 *
 * @equation the most groups within 1 % of the first one shot there; of two distances that are equally common, the one that was shot last
 * @param groups - the groups [list]
 * @returns the distance, as noted with the first group there; null without groups [m]
 * @validity any groups
 * @source own derivation
 * @example commonestDistance([exampleFletched, exampleBare]) // 18
 */
export function commonestDistance(groups: readonly ShotGroup[]): number | null {
  return firstAtCommonest(groups)?.context.distance ?? null;
}

function firstAtCommonest(groups: readonly ShotGroup[]): ShotGroup | null {
  const counted: { readonly first: ShotGroup; count: number; last: number }[] = [];
  for (const group of groups) {
    const at = wallTime(group.context.shotAt);
    const known = counted.find(({ first }) => sameDistance(first, group));
    if (known === undefined) counted.push({ first: group, count: 1, last: at });
    else {
      known.count += 1;
      known.last = Math.max(known.last, at);
    }
  }
  return counted.sort((a, b) => b.count - a.count || b.last - a.last)[0]?.first ?? null;
}

/**
 * How the size of the fletched groups moved, at the one distance where most of them were shot.
 *
 * @equation mean radius of many and its 95 % interval of each fletched group at commonestDistance, as groupMeasures has them
 * @param groups - the groups of a set-up, oldest first [list]
 * @returns the distance [m], the points in the order of the groups, and how many groups there are too small to tell [record]
 * @validity a group of one shot, or all in one hole, has no size and is only counted; the intervals are of each group by itself and no test of a trend
 * @source grubbs-1964
 * @example radiusSeries([exampleFletched, exampleBare]).points.map(({ shots }) => shots) // [6]
 */
export function radiusSeries(groups: readonly ShotGroup[]): RadiusSeries {
  const fletched = groups.filter((group) => group.fletching === 'fletched');
  const first = firstAtCommonest(fletched);
  if (first === null) return { distance: null, points: [], untold: 0 };
  const there = fletched.filter((group) => sameDistance(group, first));
  const points = there.flatMap((group): RadiusPoint[] => {
    const measured = groupMeasures(group.shots);
    if (!measured.ok) return [];
    const { meanRadiusOfMany, meanRadiusInterval, n } = measured.value;
    const [low, high] = meanRadiusInterval;
    return [{ id: group.id, at: wallTime(group.context.shotAt), shots: n, radius: meanRadiusOfMany, low, high }];
  });
  return { distance: first.context.distance, points, untold: there.length - points.length };
}
