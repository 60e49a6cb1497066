import { fQuantileUpper } from '../../group/index.ts';
import type { ClearanceShot } from '../../model/trial.ts';
import type { Spanned } from './plot.ts';

/**
 * Share of shots that do something, with its exact interval.
 *
 * @equation k/n; Clopper and Pearson: low 1/(1 + (n - k + 1)/(k F_α(2 k, 2 (n - k + 1)) )), F_α the lower point, and high likewise; α = 0.025 a side, or 0.05 on the one side that is open when k is 0 or n
 * @param k - how many did [-]
 * @param n - of how many, > 0 [-]
 * @returns share and interval [record]
 * @validity independent shots; 0 ≤ k ≤ n, else RangeError
 * @source clopper-pearson-1934
 * @example shareOf(0, 3).high // 0.631596850136126
 */
export function shareOf(k: number, n: number): Spanned {
  if (!(n > 0 && k >= 0 && k <= n)) throw new RangeError('0 <= k <= n with n > 0 is needed.');
  const alpha = k === 0 || k === n ? 0.05 : 0.025;
  const low = k === 0 ? 0 : k / (k + (n - k + 1) * fQuantileUpper(alpha, 2 * (n - k + 1), 2 * k));
  const upper = (k + 1) * fQuantileUpper(alpha, 2 * (k + 1), 2 * Math.max(1, n - k));
  const high = k === n ? 1 : upper / (n - k + upper);
  return { value: k / n, low, high };
}

/** The shots since the nock was last turned, and what they touched. */
export interface Touches {
  readonly shots: readonly ClearanceShot[];
  /** With a mark on something. */
  readonly touched: number;
  readonly parts: readonly ClearanceShot['touched'][number][];
  /** Places the nock has been turned to, this one among them. */
  readonly turns: number;
  readonly nockTurn: number;
}

/**
 * What the powder shows since the nock was last turned.
 *
 * @equation the last run of shots with one turn of the nock
 * @param shots - all shots of the trial, in order [list]
 * @returns the run, or null when nothing was shot [record]
 * @validity any trial
 * @source own derivation
 * @example lastTouches([]) // null
 */
export function lastTouches(shots: readonly ClearanceShot[]): Touches | null {
  const last = shots.at(-1);
  if (last === undefined) return null;
  const from = shots.findLastIndex(({ nockTurn }) => nockTurn !== last.nockTurn) + 1;
  const run = shots.slice(from);
  return {
    shots: run,
    touched: run.filter(({ touched }) => touched.length > 0).length,
    parts: [...new Set(run.flatMap(({ touched }) => touched))],
    turns: new Set(shots.map(({ nockTurn }) => nockTurn)).size,
    nockTurn: last.nockTurn,
  };
}
