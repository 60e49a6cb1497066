import type { Band } from '../../model/band.ts';
import { markError, pinPlace, pinSlopes, readingOf, Z95 } from './markModel.ts';
import type { SolvedMarks } from './solveMarks.ts';
import type { MarkPriors, SightScale } from './types.ts';

/** Where a mark is expected: its place on the bar and one standard deviation of it, the mark's own error counted in [m]. */
export interface ExpectedPlace {
  readonly place: number;
  readonly sd: number;
}

/**
 * The quadratic form of a covariance.
 *
 * @equation a C bᵀ
 * @param a - one row [list]
 * @param covariance - C [list]
 * @param b - the other row [list]
 * @returns the covariance of the two [-]
 * @validity lengths as C
 * @source jcgm-100
 * @example covarianceOf([1, 1], [[1, 0], [0, 2]], [1, 2]) // 5
 */
export function covarianceOf(a: readonly number[], covariance: readonly (readonly number[])[], b: readonly number[]): number {
  return covariance.reduce((sum, row, i) => sum + (a[i] ?? 0) * row.reduce((inner, c, j) => inner + c * (b[j] ?? 0), 0), 0);
}

/**
 * How many times wider than their errors say the marks miss.
 *
 * @equation S = √(χ²/ν), at least 1, with ν = marks − 1: each held figure brings a miss and an unknown, and the zero is free
 * @param sum - χ², squared misses in their standard deviations [-]
 * @param marks - how many marks [-]
 * @returns S, which every interval is widened by [-]
 * @validity errors that are all too small by about one factor; 1 for a single mark
 * @source birge-1932
 * @example widerBy(16, 5) // 2
 */
export function widerBy(sum: number, marks: number): number {
  return marks > 1 ? Math.max(1, Math.sqrt(sum / (marks - 1))) : 1;
}

/**
 * Where a mark for a distance is expected, with its own error.
 *
 * @equation q = q(R; φ̂), variance S² (g C gᵀ + σ²)
 * @param solved - likeliest figures with their covariance C [record]
 * @param wider - S [-]
 * @param priors - for the mark's own error σ [record]
 * @param distance - R [m]
 * @param shots - arrows that would settle it; Infinity for pin and scale alone [-]
 * @returns place and standard deviation, or null out of reach [m]
 * @validity to first order in what is not known
 * @source jcgm-100
 * @example (1000 * expectedPlace(solveMarks(exampleMarks, exampleScale, examplePriors), 1, examplePriors, 40, 6).place).toFixed(0) // "66"
 */
export function expectedPlace(
  solved: Pick<SolvedMarks, 'parameters' | 'covariance'>,
  wider: number,
  priors: MarkPriors,
  distance: number,
  shots: number,
): ExpectedPlace | null {
  const place = pinPlace(solved.parameters, distance);
  const slopes = pinSlopes(solved.parameters, distance);
  if (slopes === null || !Number.isFinite(place)) return null;
  const variance = Math.max(0, covarianceOf(slopes, solved.covariance, slopes));
  return { place, sd: wider * Math.hypot(Math.sqrt(variance), markError(priors, shots)) };
}

/**
 * An expected place as a reading with its 95 % interval.
 *
 * @equation reading of q, and of q ± 1.96 SD
 * @param expected - place and standard deviation [m]
 * @param scale - the sight's scale [record]
 * @returns value, low and high in the scale's numbers [record]
 * @validity an error that is about normal
 * @source jcgm-100
 * @example readingBand({ place: 0.04, sd: 0 }, exampleScale) // {"value":40,"low":40,"high":40}
 */
export function readingBand({ place, sd }: ExpectedPlace, scale: SightScale): Band {
  const value = readingOf(place, scale);
  const half = (Z95 * sd) / scale.unit;
  return { value, low: value - half, high: value + half };
}
