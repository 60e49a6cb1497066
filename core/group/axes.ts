import { tQuantile, tTwoSided } from './distributions.ts';
import type { Moments } from './moments.ts';
import { ONE_HOLE } from './points.ts';

export interface AxisTest {
  /** Half width of the interval about the difference [m]. */
  readonly half: number;
  readonly p: number;
}

/**
 * Welch's t test of the difference of two means on one axis.
 *
 * @equation v_i = S_i/n_i, t = d/√(v1 + v2) with ν = (v1 + v2)²/Σ v_i²/(n_i - 1) degrees of freedom; half width t_{1 - α/2} √(v1 + v2)
 * @param first - moments of one group [record]
 * @param second - moments of the other [record]
 * @param axis - x or y [choice]
 * @param alpha - α, 1 minus the interval's level [-]
 * @returns half width and p; null when neither group has any spread on this axis, which then cannot be judged by itself [record]
 * @validity normal errors, spreads may differ; two or more shots in each group
 * @source welch-1947
 * @example axisTest({ n: 2, centre: { x: 0, y: 0 }, covariance: { xx: 1, xy: 0, yy: 1 } }, { n: 2, centre: { x: 1, y: 0 }, covariance: { xx: 1, xy: 0, yy: 1 } }, 'x', 0.05).half // 4.302652729749462
 */
export function axisTest(first: Moments, second: Moments, axis: 'x' | 'y', alpha: number): AxisTest | null {
  const key = axis === 'x' ? 'xx' : 'yy';
  if (Math.max(first.covariance[key], second.covariance[key]) < ONE_HOLE ** 2) return null;
  const v1 = first.covariance[key] / first.n;
  const v2 = second.covariance[key] / second.n;
  const share = v1 / (v1 + v2);
  const nu = 1 / (share ** 2 / (first.n - 1) + (1 - share) ** 2 / (second.n - 1));
  const error = Math.sqrt(v1 + v2);
  return {
    half: tQuantile(1 - alpha / 2, nu) * error,
    p: tTwoSided((second.centre[axis] - first.centre[axis]) / error, nu),
  };
}
