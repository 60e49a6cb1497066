import { fUpperTail, tQuantile, tTwoSided } from '../../group/index.ts';
import type { Spanned } from './plot.ts';

/** A mean with its 95 % interval, and the chance of one at least so far from nought without cause. */
export interface Mean extends Spanned {
  readonly n: number;
  readonly deviation: number;
  readonly p: number;
}

/**
 * The mean of a few readings with its interval.
 *
 * @equation x̄ ± t_0.975(n - 1) s/√n; p of t = x̄ √n/s, two-sided
 * @param values - the readings, two or more [list]
 * @returns mean, interval and p; null with fewer than two. Readings all alike have no width, and p is 0 or 1 [record]
 * @validity about normal, independent readings
 * @source montgomery-2013
 * @example meanOf([1, 2, 3]).value // 2
 */
export function meanOf(values: readonly number[]): Mean | null {
  const n = values.length;
  if (n < 2) return null;
  const value = values.reduce((sum, x) => sum + x, 0) / n;
  const squares = values.reduce((sum, x) => sum + (x - value) ** 2, 0);
  const deviation = Math.sqrt(squares / (n - 1));
  const error = deviation / Math.sqrt(n);
  const half = tQuantile(0.975, n - 1) * error;
  // What is left of rounding is no scatter.
  const p = error > 1e-12 * (1 + Math.abs(value)) ? tTwoSided(value / error, n - 1) : value === 0 ? 1 : 0;
  return { n, value, low: value - half, high: value + half, deviation, p };
}

/**
 * Chance that the means of several sets of readings lie so far apart without cause.
 *
 * @equation F = [Σ n (x̄ - x̿)²/(k - 1)]/[Σ Σ (x - x̄)²/(N - k)], one-way analysis of variance
 * @param sets - readings, set by set; empty ones are left out [list]
 * @returns p; null with fewer than two sets, without two readings in any, or without any scatter [-]
 * @validity about normal readings of one scatter
 * @source montgomery-2013
 * @example meansDiffer([[1, 2], [1, 2]]) // 1
 */
export function meansDiffer(sets: readonly (readonly number[])[]): number | null {
  const told = sets.filter((set) => set.length > 0);
  const count = told.reduce((sum, set) => sum + set.length, 0);
  const [between, within] = [told.length - 1, count - told.length];
  if (between < 1 || within < 1) return null;
  const mean = (set: readonly number[]) => set.reduce((sum, x) => sum + x, 0) / set.length;
  const all = mean(told.flat());
  let [apart, inside] = [0, 0];
  for (const set of told) {
    const own = mean(set);
    apart += set.length * (own - all) ** 2;
    for (const x of set) inside += (x - own) ** 2;
  }
  if (!(inside > 1e-24 * (1 + all * all))) return null;
  return fUpperTail(apart / between / (inside / within), between, within);
}
