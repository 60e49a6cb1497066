import type { Point } from './points.ts';

/** The three different entries of a 2 x 2 covariance matrix. */
export interface Covariance {
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

/** What every test of centres needs to know of a group. */
export interface Moments {
  readonly n: number;
  readonly centre: Point;
  /** Divisor n - 1. */
  readonly covariance: Covariance;
}

/**
 * Mean and covariance in two passes, the second of which also takes out the rounding of the first mean.
 *
 * @equation x̄ = Σ x / n, S_xy = [Σ (x - x̄)(y - ȳ) - Σ(x - x̄) Σ(y - ȳ) / n] / (n - 1), and so for the rest
 * @param points - places [m]
 * @returns n, centre [m] and covariance [m²]
 * @validity at least two finite places; fewer throws RangeError
 * @source chan-golub-leveque-1983
 * @example momentsOf([{ x: 1, y: 0 }, { x: 3, y: 4 }]).covariance.xy // 4
 */
export function momentsOf(points: readonly Point[]): Moments {
  const n = points.length;
  if (n < 2) throw new RangeError('At least two places are needed.');
  let sumX = 0;
  let sumY = 0;
  for (const { x, y } of points) {
    sumX += x;
    sumY += y;
  }
  const roughX = sumX / n;
  const roughY = sumY / n;
  let [leftX, leftY, xx, xy, yy] = [0, 0, 0, 0, 0];
  for (const point of points) {
    const dx = point.x - roughX;
    const dy = point.y - roughY;
    leftX += dx;
    leftY += dy;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  return {
    n,
    centre: { x: roughX + leftX / n, y: roughY + leftY / n },
    covariance: {
      xx: Math.max(0, xx - (leftX * leftX) / n) / (n - 1),
      xy: (xy - (leftX * leftY) / n) / (n - 1),
      yy: Math.max(0, yy - (leftY * leftY) / n) / (n - 1),
    },
  };
}

/**
 * Variance per axis under the round model: what one axis has on average.
 *
 * @equation s² = (S_xx + S_yy) / 2
 * @param moments - moments of a group [record]
 * @returns s² [m²]
 * @validity any group of two or more
 * @source own derivation
 * @example axisVariance({ n: 3, centre: { x: 0, y: 0 }, covariance: { xx: 1, xy: 0, yy: 3 } }) // 2
 */
export function axisVariance(moments: Moments): number {
  return (moments.covariance.xx + moments.covariance.yy) / 2;
}
