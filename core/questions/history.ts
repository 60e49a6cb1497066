import {
  axisVariance,
  inOneHole,
  momentsOf,
  priorFromGroups,
  sameDistance,
  type PastSpread,
  type SpreadPrior,
} from '../group/index.ts';
import { counted, type ShotGroup } from '../model/group.ts';
import type { Result } from '../model/problem.ts';

/** The spread of longer ago says less of today. */
const MOST_GROUPS = 40;

const shotAt = (group: ShotGroup): number => Date.parse(group.context.shotAt.at);
const sameWords = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * Whether two groups were shot alike: what their spreads may be held against each other for.
 *
 * @equation one distance, one set of arrows, one form, both fletched or both bare
 * @param a - the one group [record]
 * @param b - the other group [record]
 * @returns true when they were [choice]
 * @validity groups of one archer and bow
 * @source common practice
 * @example shotAlike(exampleFletched, exampleBare) // false
 */
export function shotAlike(a: ShotGroup, b: ShotGroup): boolean {
  return (
    a.fletching === b.fletching &&
    a.context.arrowSetId === b.context.arrowSetId &&
    sameDistance(a, b) &&
    sameWords(a.context.form, b.context.form)
  );
}

/**
 * The archer's earlier groups that were shot alike and show a spread, oldest first.
 *
 * @equation shot before this one, alike, two holes apart or more; at most the last 40
 * @param group - the group that is asked about [record]
 * @param others - other groups of this archer and bow [list]
 * @returns the earlier groups [list]
 * @validity a group shot at the same instant counts as earlier when it stands before it in the list
 * @source own derivation
 * @example earlierAlike(exampleFletched, [exampleFletched, exampleBare]) // []
 */
export function earlierAlike(group: ShotGroup, others: readonly ShotGroup[]): readonly ShotGroup[] {
  return others
    .filter((other) => other.id !== group.id && shotAt(other) <= shotAt(group) && shotAlike(other, group))
    .filter((other) => !inOneHole(counted(other)))
    .sort((a, b) => shotAt(a) - shotAt(b))
    .slice(-MOST_GROUPS);
}

/**
 * What the earlier groups say of the spread.
 *
 * @equation priorFromGroups of the shots that count
 * @param history - earlier groups shot alike [list]
 * @returns the usual variance with its degrees of freedom, or a refusal below three groups [record]
 * @validity as priorFromGroups
 * @source smyth-2004
 * @example usualSpread([]).problem.code // "too-few-groups"
 */
export function usualSpread(history: readonly ShotGroup[]): Result<SpreadPrior> {
  return priorFromGroups(
    history.map((group) => {
      const moments = momentsOf(counted(group));
      return { variance: axisVariance(moments), degreesOfFreedom: 2 * (moments.n - 1) };
    }),
  );
}

/**
 * The usual spread as flyers are judged by it.
 *
 * @equation s0 = √(variance), with its degrees of freedom
 * @param prior - what the earlier groups say, or a refusal [record]
 * @returns the spread, or null when there are too few groups [record]
 * @validity any
 * @source smyth-2004
 * @example pastSpread(usualSpread([])) // null
 */
export function pastSpread(prior: Result<SpreadPrior>): PastSpread | null {
  return prior.ok ? { spread: Math.sqrt(prior.value.variance), df: prior.value.degreesOfFreedom } : null;
}
