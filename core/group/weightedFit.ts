import { Matrix, QrDecomposition } from 'ml-matrix';
import { ok, refuse, type Result } from '../model/problem.ts';
import { fUpperTail, tQuantile } from './distributions.ts';

export interface WeightedPoint {
  readonly x: number;
  readonly y: number;
  /** One over the variance of y, but for a common factor. */
  readonly weight: number;
}

/** A polynomial fitted by weighted least squares: y = b0 + b1 x + b2 x² … */
export interface WeightedFit {
  readonly coefficients: readonly number[];
  /** Standard errors of the coefficients. */
  readonly errors: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  /** s², variance of a point of weight 1. */
  readonly variance: number;
  readonly df: number;
}

export interface LackOfFit {
  readonly f: number;
  readonly df: readonly [numerator: number, denominator: number];
  readonly p: number;
}

/**
 * A polynomial through points of unequal weight, with its standard errors.
 *
 * @equation minimise Σ w (y - Σ b_j x^j)² by Householder's QR, x in units of the largest |x|; s² = Σ w r²/(N - degree - 1), Cov b = s² (X' W X)⁻¹
 * @param points - places and weights, in any units [list]
 * @param degree - degree of the polynomial, 0 to 4 [-]
 * @returns the fit, or a refusal: `bad-point`, `too-few`, `same-x` [record]
 * @validity nine digits on lines and parabolas far from the origin; more points than coefficients, and more different x than the degree; a degree outside throws RangeError
 * @source draper-smith-1998
 * @example weightedFit([{ x: 0, y: 0, weight: 1 }, { x: 1, y: 0, weight: 1 }, { x: 2, y: 3, weight: 1 }], 1).value.coefficients // [-0.5, 1.5]
 */
export function weightedFit(points: readonly WeightedPoint[], degree: number): Result<WeightedFit> {
  if (!(Number.isInteger(degree) && degree >= 0 && degree <= 4)) throw new RangeError('A degree from 0 to 4 is needed.');
  const bad = points.findIndex(
    ({ x, y, weight }) => !(Number.isFinite(x) && Number.isFinite(y) && weight > 0 && Number.isFinite(weight)),
  );
  if (bad >= 0)
    return refuse('bad-point', `Point ${bad + 1} is no number, or has no weight above 0: correct it or leave it out.`);
  const df = points.length - degree - 1;
  if (df < 1) return refuse('too-few', `At least ${degree + 2} points were expected, and ${points.length} were given.`);
  if (new Set(points.map(({ x }) => x)).size <= degree) {
    return refuse('same-x', `At least ${degree + 1} different places were expected, or the curve cannot be told.`);
  }
  const unit = Math.max(...points.map(({ x }) => Math.abs(x))) || 1;
  const rows = points.map(({ x, weight }) => {
    const root = Math.sqrt(weight);
    return Array.from({ length: degree + 1 }, (_, j) => root * (x / unit) ** j);
  });
  const qr = new QrDecomposition(new Matrix(rows));
  if (!qr.isFullRank()) return refuse('same-x', 'The places lie too close together for the curve to be told.');
  const scaled = qr.solve(Matrix.columnVector(points.map(({ y, weight }) => Math.sqrt(weight) * y))).to1DArray();
  const squares = points.reduce((sum, { x, y, weight }) => {
    const fitted = scaled.reduceRight((value, b) => value * (x / unit) + b, 0);
    return sum + weight * (y - fitted) ** 2;
  }, 0);
  const variance = squares / df;
  const root = new QrDecomposition(qr.upperTriangularMatrix).solve(Matrix.eye(degree + 1));
  const inverse = root.mmul(root.transpose());
  const covariance = scaled.map((_, i) => scaled.map((_b, j) => (variance * inverse.get(i, j)) / unit ** (i + j)));
  return ok({
    coefficients: scaled.map((b, j) => b / unit ** j),
    errors: covariance.map((row, i) => Math.sqrt(Math.max(0, row[i] ?? 0))),
    covariance,
    variance,
    df,
  });
}

/**
 * What a fit says at one place, and where one more point there would fall.
 *
 * @equation ŷ = g b, g = (1, x, x² …); half widths t √(g Cov b g') for the curve and t √(g Cov b g' + s²/w) for a point
 * @param fit - the fit [record]
 * @param x - where [-]
 * @param weight - w of the one more point, > 0 [-]
 * @param alpha - α, 1 minus the level, 0.05 when left out [-]
 * @returns ŷ and both half widths, in the unit of y [record]
 * @validity within or near the places fitted; a weight or an α outside throws RangeError
 * @source draper-smith-1998
 * @example fitAt({ coefficients: [1, 2], errors: [0, 0], covariance: [[0, 0], [0, 0]], variance: 0, df: 3 }, 2, 1).y // 5
 */
export function fitAt(fit: WeightedFit, x: number, weight: number, alpha = 0.05): { y: number; half: number; pointHalf: number } {
  if (!(weight > 0)) throw new RangeError('A weight above 0 is needed.');
  const g = fit.coefficients.map((_, j) => x ** j);
  const spread = fit.covariance.reduce(
    (sum, row, i) => sum + row.reduce((inner, c, j) => inner + c * (g[i] ?? 0) * (g[j] ?? 0), 0),
    0,
  );
  const t = tQuantile(1 - alpha / 2, fit.df);
  return {
    y: fit.coefficients.reduceRight((value, b) => value * x + b, 0),
    half: t * Math.sqrt(Math.max(0, spread)),
    pointHalf: t * Math.sqrt(Math.max(0, spread) + fit.variance / weight),
  };
}

/**
 * Whether a fit misses the means at its places by more than the points there scatter.
 *
 * @equation pure error SS_P = Σ w (y - ȳ_x)² with N - m degrees of freedom at m different places; F = [(SS - SS_P)/(m - degree - 1)]/[SS_P/(N - m)]
 * @param points - the points that were fitted [list]
 * @param fit - their fit [record]
 * @returns F, its degrees of freedom and p; null without two points at a place, without a place to spare, or without any scatter [record]
 * @validity points at one place of independent errors
 * @source draper-smith-1998
 * @example lackOfFit([{ x: 0, y: 0, weight: 1 }, { x: 1, y: 1, weight: 1 }], { coefficients: [0, 1], errors: [0, 0], covariance: [], variance: 0, df: 1 }) // null
 */
export function lackOfFit(points: readonly WeightedPoint[], fit: WeightedFit): LackOfFit | null {
  const places = new Map<number, WeightedPoint[]>();
  for (const point of points) places.set(point.x, [...(places.get(point.x) ?? []), point]);
  const free = points.length - places.size;
  const spare = places.size - fit.coefficients.length;
  if (free < 1 || spare < 1) return null;
  let [within, between] = [0, 0];
  for (const [x, here] of places) {
    const weight = here.reduce((sum, point) => sum + point.weight, 0);
    const mean = here.reduce((sum, point) => sum + point.weight * point.y, 0) / weight;
    const fitted = fit.coefficients.reduceRight((value, b) => value * x + b, 0);
    within += here.reduce((sum, point) => sum + point.weight * (point.y - mean) ** 2, 0);
    between += weight * (mean - fitted) ** 2;
  }
  if (!(within > 1e-12 * (within + between))) return null;
  const f = between / spare / (within / free);
  return { f, df: [spare, free], p: fUpperTail(f, spare, free) };
}
