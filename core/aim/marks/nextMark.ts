import { markError, pinSlopes, usualShots, Z95 } from './markModel.ts';
import { covarianceOf } from './expectedFrom.ts';
import type { FittedMarks } from './types.ts';

/** The distance to shoot in next, and the worst half interval over the distances wanted, in the scale's numbers. */
export interface NextMark {
  readonly distance: number;
  readonly worstNow: number;
  readonly worstThen: number;
  /** Where the worst one is now [m]. */
  readonly worstAt: number;
}

/**
 * Which distance to shoot in next, so that the widest interval over the distances wanted becomes narrowest.
 *
 * @equation least over c of max over w of S √(g_w C g_wᵀ − (g_w C g_cᵀ)²/(g_c C g_cᵀ + σ²) + σ²)
 * @param fit - from `fitMarks` [record]
 * @param candidates - distances that could be shot in [m]
 * @param wanted - distances whose readings are wanted [m]
 * @returns the distance and the worst half intervals before and after it, or null when no candidate or no distance wanted is in reach [record]
 * @validity a mark settled by `usualShots` arrows that falls where it is expected; the first of equals
 * @source own derivation
 * @example nextMark(fitMarks(exampleMarks.slice(0, 2), exampleScale, examplePriors).value, [20, 40, 60], [18, 30, 50, 60]).distance // 60
 */
export function nextMark(fit: FittedMarks, candidates: readonly number[], wanted: readonly number[]): NextMark | null {
  const { parameters, covariance, wider, priors, scale } = fit;
  const own = markError(priors, usualShots) ** 2;
  const reached = (distances: readonly number[]) =>
    distances.flatMap((distance) => {
      const slopes = pinSlopes(parameters, distance);
      return slopes === null ? [] : [{ distance, slopes, variance: covarianceOf(slopes, covariance, slopes) }];
    });
  const [from, for_] = [reached(candidates), reached(wanted)];
  const half = (variance: number) => (Z95 * wider * Math.sqrt(Math.max(0, variance) + own)) / scale.unit;
  const now = for_.reduce(
    (worst, each) => (each.variance > worst.variance ? each : worst),
    for_[0] ?? { variance: NaN, distance: NaN },
  );
  const worstAfter = (candidate: (typeof from)[number]) =>
    Math.max(
      ...for_.map(
        ({ slopes, variance }) => variance - covarianceOf(slopes, covariance, candidate.slopes) ** 2 / (candidate.variance + own),
      ),
    );
  if (from.length === 0 || for_.length === 0) return null;
  let best = { distance: NaN, after: Infinity };
  for (const candidate of from) {
    const after = worstAfter(candidate);
    if (after < best.after) best = { distance: candidate.distance, after };
  }
  return { distance: best.distance, worstNow: half(now.variance), worstThen: half(best.after), worstAt: now.distance };
}
