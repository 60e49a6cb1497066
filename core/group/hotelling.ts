import { type AbstractMatrix, EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';
import { ok, refuse, type Result } from '../model/problem.ts';
import { fUpperTail } from './distributions.ts';
import { countOf, sampleOf, type Observations, type Sample } from './sample.ts';

export interface HotellingTest {
  readonly t2: number;
  readonly f: number;
  readonly df: readonly [numerator: number, denominator: number];
  readonly p: number;
}

/** Smallest eigenvalue of the correlation matrix below which the shots count as lying on a line. */
const LINE = 1e-10;
/** Below this a spread's square has lost its digits, so that it is no spread at all. */
const LEAST = 1e-140;

/** Inverse through the correlation matrix, so that axes of very different size do no harm; null when the shots lie on a line. */
function inverseOf(covariance: AbstractMatrix): Matrix | null {
  const scale = covariance.diagonal().map(Math.sqrt);
  if (!scale.every((value) => value > LEAST && Number.isFinite(value))) return null;
  const by = Matrix.diag(scale.map((value) => 1 / value));
  const correlation = by.mmul(covariance).mmul(by);
  const { realEigenvalues } = new EigenvalueDecomposition(correlation, { assumeSymmetric: true });
  return realEigenvalues.every((value) => value > LINE) ? by.mmul(inverse(correlation)).mmul(by) : null;
}

const matrixOf = ({ covariance }: Sample): Matrix => new Matrix(covariance.map((row) => [...row]));

const tooFew = (least: number) =>
  refuse('too-few', `This test needs at least ${least} shots in each group: shoot more.`, 'shots');
const onALine = () =>
  refuse('on-a-line', 'All shots lie on one line or have no usable place, so this test cannot be made: shoot more.', 'shots');

function finish(difference: readonly number[], covariance: Matrix, scale: number, df2: number): Result<HotellingTest> {
  const inverted = inverseOf(covariance);
  if (inverted === null || !difference.every(Number.isFinite)) return onALine();
  const d = Matrix.columnVector([...difference]);
  const t2 = d.transpose().mmul(inverted).mmul(d).get(0, 0);
  const f = scale * t2;
  return ok({ t2, f, df: [difference.length, df2], p: fUpperTail(f, difference.length, df2) });
}

/**
 * Hotelling's test of one sample's mean.
 *
 * @equation T² = n d' S⁻¹ d, F = (n - p)/(p (n - 1)) T² with p and n - p degrees of freedom
 * @param observations - places, or a summary in any number of dimensions [list]
 * @param expected - the mean that is tested, one figure for each dimension [list]
 * @returns T², F, its degrees of freedom and p, or a refusal: `too-few`, `on-a-line` [record]
 * @validity normal errors; more observations than dimensions; an expected mean of the wrong length throws RangeError
 * @source johnson-wichern-2007
 * @example oneSampleT2([{ x: 6, y: 9 }, { x: 10, y: 6 }, { x: 8, y: 3 }], [9, 5]).value.t2 // 0.7777777777777778
 */
export function oneSampleT2(observations: Observations, expected: readonly number[]): Result<HotellingTest> {
  const p = expected.length;
  const n = countOf(observations);
  if (n <= p) return tooFew(p + 1);
  const sample = sampleOf(observations);
  const difference = differenceOf(sample.mean, expected);
  return finish(difference, matrixOf(sample).div(n), (n - p) / (p * (n - 1)), n - p);
}

/**
 * Hotelling's test of two means whose groups share one covariance.
 *
 * @equation T² = d' [S_pooled (1/n1 + 1/n2)]⁻¹ d, F = (N - p - 1)/(p (N - 2)) T² with p and N - p - 1 degrees of freedom, N = n1 + n2
 * @param first - places, or a summary [list]
 * @param second - places, or a summary [list]
 * @returns T², F, its degrees of freedom and p, or a refusal: `too-few`, `on-a-line` [record]
 * @validity normal errors with one covariance: a small loose group beside a large tight one finds shifts that are not there
 * @source johnson-wichern-2007
 * @example twoSampleT2Pooled({ n: 3, mean: [1], covariance: [[1]] }, { n: 3, mean: [3], covariance: [[1]] }).value.t2 // 6
 */
export function twoSampleT2Pooled(first: Observations, second: Observations): Result<HotellingTest> {
  const both = twoSamples(first, second);
  if (!both.ok) return both;
  const [a, b] = both.value;
  const p = a.mean.length;
  const within = a.n + b.n - 2;
  const pooled = matrixOf(a)
    .mul(a.n - 1)
    .add(matrixOf(b).mul(b.n - 1))
    .mul((1 / a.n + 1 / b.n) / within);
  return finish(differenceOf(b.mean, a.mean), pooled, (within + 1 - p) / (p * within), within + 1 - p);
}

/**
 * Test of two means whose groups differ in covariance, by Krishnamoorthy and Yu.
 *
 * @equation V_i = S_i/n_i, V = V1 + V2, T² = d' V⁻¹ d, M_i = V⁻¹ V_i, ν = (p + p²) / Σ [tr(M_i²) + tr²(M_i)]/(n_i - 1), F = (ν - p + 1)/(p ν) T² with p and ν - p + 1 degrees of freedom
 * @param first - places, or a summary [list]
 * @param second - places, or a summary [list]
 * @returns T², F, its degrees of freedom and p, or a refusal: `too-few`, `on-a-line` [record]
 * @validity normal errors; more shots than dimensions in each group, good from about 6 in each
 * @source krishnamoorthy-yu-2004
 * @example twoSampleT2KrishnamoorthyYu({ n: 3, mean: [1], covariance: [[1]] }, { n: 3, mean: [3], covariance: [[1]] }).value.df // [1, 4]
 */
export function twoSampleT2KrishnamoorthyYu(first: Observations, second: Observations): Result<HotellingTest> {
  const both = twoSamples(first, second);
  if (!both.ok) return both;
  const [a, b] = both.value;
  const p = a.mean.length;
  const parts = [a, b].map((sample) => ({ variance: matrixOf(sample).div(sample.n), df: sample.n - 1 }));
  const total = Matrix.zeros(p, p);
  for (const { variance } of parts) total.add(variance);
  const inverted = inverseOf(total);
  if (inverted === null) return onALine();
  const spent = parts.reduce((sum, { variance, df }) => {
    const share = inverted.mmul(variance);
    return sum + (share.mmul(share).trace() + share.trace() ** 2) / df;
  }, 0);
  const nu = (p + p * p) / spent;
  return finish(differenceOf(b.mean, a.mean), total, (nu - p + 1) / (p * nu), nu - p + 1);
}

function differenceOf(a: readonly number[], b: readonly number[]): number[] {
  if (a.length !== b.length) throw new RangeError('Both means must have one figure for each dimension.');
  return a.map((value, i) => value - (b[i] ?? 0));
}

function twoSamples(first: Observations, second: Observations): Result<readonly [Sample, Sample]> {
  const fewest = Math.min(countOf(first), countOf(second));
  if (fewest < 2) return tooFew(2);
  const [a, b] = [sampleOf(first), sampleOf(second)];
  return fewest > a.mean.length ? ok([a, b]) : tooFew(a.mean.length + 1);
}
