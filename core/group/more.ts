import { fQuantileUpper } from './distributions.ts';
import type { Moments } from './moments.ts';
import { noncentralFUpperTail } from './noncentralF.ts';
import { leastWhole } from './search.ts';
import { welchTest } from './welch.ts';

const POWER = 0.8;
const MOST = 1e9;

/**
 * About how many more shots each group needs before a shift that cannot be told yet can be told.
 *
 * @equation the least m ≥ 1 for which, with n_i + m shots of the spreads and shape seen so far, (1) a shift of δ = max(size, matters) is found with 80 %: noncentral F with 1/c, ν and λ = δ²/(2 c (v1 + v2)); and (2) a shift that stays as large as seen is settled: radius ≤ max(size, matters - size)
 * @param first - moments of one group [record]
 * @param second - moments of the other [record]
 * @param shape - c, ½ for round groups to 1 for a line [-]
 * @param size - distance of the two centres, ≥ 0 [m]
 * @param matters - the smallest shift that matters, > 0 [m]
 * @param alpha - α, false alarms allowed [-]
 * @returns m, more shots in each group, at least 1 [-]
 * @validity a plan, not a promise: the spreads are estimates, and 20 in 100 such plans miss
 * @source own derivation
 * @example moreOfEach({ n: 6, centre: { x: 0, y: 0 }, covariance: { xx: 1, xy: 0, yy: 1 } }, { n: 6, centre: { x: 1, y: 0 }, covariance: { xx: 1, xy: 0, yy: 1 } }, 0.5, 1, 1, 0.05) // 15
 */
export function moreOfEach(first: Moments, second: Moments, shape: number, size: number, matters: number, alpha: number): number {
  const sought = Math.max(size, matters);
  const settled = Math.max(size, matters - size);
  return leastWhole(1, MOST, (m) => {
    const { variance, df } = welchTest({ ...first, n: first.n + m }, { ...second, n: second.n + m }, shape);
    const critical = fQuantileUpper(alpha, ...df);
    if (2 * variance * critical > settled ** 2) return false;
    return noncentralFUpperTail(critical, ...df, sought ** 2 / (2 * shape * variance)) >= POWER;
  });
}
