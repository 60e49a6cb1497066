import { fUpperTail, tQuantile, tTwoSided } from '../../group/index.ts';
import type { Spanned } from './plot.ts';

/** A height difference at one setting, with its variance. */
export interface HeightAt {
  readonly setting: number;
  readonly height: number;
  readonly variance: number;
}

export interface LevelPlace {
  /** Height at the middle of the settings [m], slope [-] and the settings' middle [m]. */
  readonly middle: number;
  readonly slope: Spanned;
  readonly p: number;
  readonly at: number;
  /** The setting at which the height is nought; null when the slope is not told from nought, so that it may be anywhere. */
  readonly level: Spanned | null;
}

/**
 * The setting at which a height that runs straight with it becomes nought, with Fieller's interval.
 *
 * @equation h = a + b (n - n̄) by weights 1/v; covariance times max(1, χ²/(k - 2)) when the line misses; level n̄ - a/b; ends where (a + b u)² = t² (V_aa + u² V_bb), t = t_0.975(ν)
 * @param points - heights by setting, two or more settings [list]
 * @param df - ν, degrees of freedom of the scatter [-]
 * @returns slope, p and level; null with fewer than two settings or without scatter [record]
 * @validity about normal errors; where the slope is not told from nought the interval has no ends and none is given
 * @source fieller-1954; draper-smith-1998
 * @example levelPlace([{ setting: 0, height: 0.1, variance: 0.0001 }, { setting: 0.002, height: -0.1, variance: 0.0001 }], 20).level.value // 0.001
 */
export function levelPlace(points: readonly HeightAt[], df: number): LevelPlace | null {
  if (new Set(points.map(({ setting }) => setting)).size < 2 || !(df >= 1) || points.some(({ variance }) => !(variance > 0)))
    return null;
  const weight = points.reduce((sum, { variance }) => sum + 1 / variance, 0);
  const at = points.reduce((sum, { setting, variance }) => sum + setting / variance, 0) / weight;
  const middle = points.reduce((sum, { height, variance }) => sum + height / variance, 0) / weight;
  const square = points.reduce((sum, { setting, variance }) => sum + (setting - at) ** 2 / variance, 0);
  const slope = points.reduce((sum, { setting, height, variance }) => sum + ((setting - at) * height) / variance, 0) / square;
  const missed = points.reduce(
    (sum, { setting, height, variance }) => sum + (height - middle - slope * (setting - at)) ** 2 / variance,
    0,
  );
  const free = points.length - 2;
  const misses = free > 0 && fUpperTail(missed / free, free, df) < 0.05;
  const wider = misses ? Math.max(1, missed / free) : 1;
  const nu = misses ? free : df;
  const t = tQuantile(0.975, nu);
  const [va, vb] = [wider / weight, wider / square];
  const half = t * Math.sqrt(vb);
  const p = tTwoSided(slope / Math.sqrt(vb), nu);
  // (b² - t² Vb) u² + 2 a b u + a² - t² Va = 0: two ends only where the slope is told from nought.
  const a = slope ** 2 - t ** 2 * vb;
  const root = Math.sqrt(Math.max(0, (middle * slope) ** 2 - a * (middle ** 2 - t ** 2 * va)));
  const ends = a > 0 ? [(-middle * slope - root) / a, (-middle * slope + root) / a] : null;
  return {
    middle,
    slope: { value: slope, low: slope - half, high: slope + half },
    p,
    at,
    level: ends === null ? null : { value: at - middle / slope, low: at + (ends[0] ?? 0), high: at + (ends[1] ?? 0) },
  };
}
