import { axisVariance, fQuantileUpper, momentsOf, ONE_HOLE, type Point } from '../group/index.ts';

/** Bare shafts always scatter somewhat wider; believably more than this times as wide is no group (our own line). */
export const WIDER = 1.5;

/** Two kinds of arrow shot at one distance. */
export interface Pair {
  readonly distance: number;
  readonly first: readonly Point[];
  readonly second: readonly Point[];
}

/**
 * How many times as wide the second kind of arrow scatters as the first, over all distances, and at least how many.
 *
 * @equation ratio² = s₂²/s₁², s² = Σ SS/z² / ν, ν = Σ 2 (n - 1); least = √(ratio²/F_0.025(ν₂, ν₁))
 * @param pairs - both kinds, distance by distance, two or more arrows of each [list]
 * @returns the ratio and the low end of its 95 % interval; null when the first kind lies in one hole, or nothing is given [record]
 * @validity about round and normal; scatter that grows with the distance
 * @source own derivation
 * @example timesWider([]) // null
 */
export function timesWider(pairs: readonly Pair[]): { times: number; least: number } | null {
  const sum = (which: 'first' | 'second') => {
    let [squares, df] = [0, 0];
    for (const pair of pairs) {
      const moments = momentsOf(pair[which]);
      squares += (2 * (moments.n - 1) * axisVariance(moments)) / pair.distance ** 2;
      df += 2 * (moments.n - 1);
    }
    return { variance: squares / df, df };
  };
  if (pairs.length === 0) return null;
  const [one, other] = [sum('first'), sum('second')];
  const nearest = Math.min(...pairs.map(({ distance }) => distance));
  if (Math.sqrt(one.variance) * nearest < ONE_HOLE) return null;
  const ratio = other.variance / one.variance;
  return { times: Math.sqrt(ratio), least: Math.sqrt(ratio / fQuantileUpper(0.025, other.df, one.df)) };
}
