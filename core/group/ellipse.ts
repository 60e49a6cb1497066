import { ok, refuse, type Result } from '../model/problem.ts';
import { fQuantileUpper } from './distributions.ts';
import { groupMeasures } from './measures.ts';
import type { Covariance } from './moments.ts';
import type { Point } from './points.ts';

/** An oval by its half axes [m] and the direction of the long one: from x towards y, above -90° and up to 90° [rad]. */
export interface Ellipse {
  readonly long: number;
  readonly short: number;
  readonly direction: number;
}

/** Where the true centre lies, with 95 %, when the group is let be oval. */
export interface CentreEllipse extends Ellipse {
  readonly centre: Point;
}

/** Half axes closer than this share of each other have no direction. */
const ROUND = 1e-12;

/**
 * The oval of a covariance.
 *
 * @equation half axes √(k λ), λ = (S_xx + S_yy)/2 ± √(((S_xx - S_yy)/2)² + S_xy²); direction ½ atan2(2 S_xy, S_xx - S_yy)
 * @param covariance - S_xx, S_xy, S_yy [record]
 * @param factor - k, by which the variances are multiplied; 1 for the oval of one standard deviation [-]
 * @returns half axes and direction; 0 for a round one [record]
 * @validity any covariance; the short half axis of a line is 0. Figures that are not finite or a factor below 0 throw RangeError
 * @source johnson-wichern-2007
 * @example covarianceEllipse({ xx: 1, xy: 0, yy: 4 }, 1) // { "long": 2, "short": 1, "direction": 1.5707963267948966 }
 */
export function covarianceEllipse(covariance: Covariance, factor: number): Ellipse {
  const { xx, xy, yy } = covariance;
  if (!(Number.isFinite(xx + xy + yy) && factor >= 0 && factor < Infinity)) throw new RangeError('Finite variances are needed.');
  const half = (xx + yy) / 2;
  const oval = Math.hypot((xx - yy) / 2, xy);
  // The product of the two is the determinant: it keeps the digits that the difference loses.
  const most = half + oval;
  const least = most > 0 ? Math.max(0, (xx * yy - xy * xy) / most) : 0;
  return {
    long: Math.sqrt(factor * most),
    short: Math.sqrt(factor * least),
    direction: oval <= ROUND * half ? 0 : Math.atan2(2 * xy + 0, xx - yy) / 2,
  };
}

/**
 * The oval within which a true mean, or a true difference of two means, lies.
 *
 * @equation covarianceEllipse with k = 2 ν/(ν - 1) F_α(2, ν - 1) Σ 1/n
 * @param covariance - S, of one group, or pooled of two [record]
 * @param perShot - Σ 1/n: 1/n for one centre, 1/n1 + 1/n2 for a difference, > 0 [-]
 * @param degreesOfFreedom - ν of S: n - 1, or n1 + n2 - 2; above 1 [-]
 * @param alpha - α, 1 minus the level [-]
 * @returns half axes and direction about the mean as measured [record]
 * @validity normal errors, any oval; a ν of 1 or less throws RangeError
 * @source johnson-wichern-2007
 * @example confidenceEllipse({ xx: 2, xy: 0, yy: 2 }, 0.25, 2, 0.25).long // 3.872983346207417
 */
export function confidenceEllipse(covariance: Covariance, perShot: number, degreesOfFreedom: number, alpha: number): Ellipse {
  if (!(degreesOfFreedom > 1)) throw new RangeError('More than one degree of freedom is needed.');
  const f = fQuantileUpper(alpha, 2, degreesOfFreedom - 1);
  return covarianceEllipse(covariance, ((2 * degreesOfFreedom) / (degreesOfFreedom - 1)) * f * perShot);
}

/**
 * The 95 % oval of a group's true centre.
 *
 * @equation half axes √(λ 2 (n - 1)/(n - 2) F/n), F = F_0.05(2, n - 2), along the axes of the group's own oval
 * @param points - places of the shots [m]
 * @returns centre, half axes and direction, or a refusal: those of groupMeasures, and `too-few` below three shots [record]
 * @validity normal shots, round or oval; three give a very wide oval (F with one degree of freedom), from about 12 on it is near the circle
 * @source johnson-wichern-2007
 * @example centreEllipse([{ x: 0, y: 0 }, { x: 0.03, y: 0.04 }]).problem.code // "too-few"
 */
export function centreEllipse(points: readonly Point[]): Result<CentreEllipse> {
  const group = groupMeasures(points);
  if (!group.ok) return group;
  const { n, centre, covariance } = group.value;
  if (n < 3)
    return refuse('too-few', 'The oval of the centre needs at least 3 shots, better 12: shoot more, or use the circle.', 'shots');
  return ok({ centre, ...confidenceEllipse(covariance, 1 / n, n - 1, 0.05) });
}
