import type { Point } from './points.ts';

/** What a Hotelling test needs to know of a sample, in any number of dimensions. */
export interface Sample {
  readonly n: number;
  readonly mean: readonly number[];
  /** Divisor n - 1, row by row. */
  readonly covariance: readonly (readonly number[])[];
}

/** Places on a face, or the summary of any sample. */
export type Observations = readonly Point[] | Sample;

/**
 * Size, mean and covariance of rows of figures, in two passes.
 *
 * @equation x̄_j = Σ x_j / n, S_jk = Σ (x_j - x̄_j)(x_k - x̄_k) / (n - 1)
 * @param rows - one row of figures for each observation, all of one length [list]
 * @returns the sample's summary [record]
 * @validity at least two rows of one length; else RangeError
 * @source johnson-wichern-2007
 * @example sampleOfRows([[6, 9], [10, 6], [8, 3]]).covariance // [[4, -3], [-3, 9]]
 */
export function sampleOfRows(rows: readonly (readonly number[])[]): Sample {
  const n = rows.length;
  const width = rows[0]?.length ?? 0;
  if (n < 2 || width < 1 || rows.some((row) => row.length !== width)) throw new RangeError('At least two rows of one length.');
  const columns = Array.from({ length: width }, (_, j) => rows.map((row) => row[j] ?? 0));
  const centred = columns.map((column) => {
    const mean = column.reduce((sum, value) => sum + value, 0) / n;
    return { mean, values: column.map((value) => value - mean) };
  });
  const product = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
  return {
    n,
    mean: centred.map((column) => column.mean),
    covariance: centred.map((a) => centred.map((b) => product(a.values, b.values) / (n - 1))),
  };
}

/** Tells a summary from a list of places. */
const isSample = (observations: Observations): observations is Sample => 'covariance' in observations;

/**
 * How many observations there are.
 *
 * @equation n of a summary, or the number of places
 * @param observations - places on a face, or a summary [list]
 * @returns n [-]
 * @validity any
 * @source own derivation
 * @example countOf([{ x: 6, y: 9 }, { x: 10, y: 6 }]) // 2
 */
export function countOf(observations: Observations): number {
  return isSample(observations) ? observations.n : observations.length;
}

/**
 * The summary of places or rows; a summary passes through.
 *
 * @equation the sample's n, mean and covariance with divisor n - 1
 * @param observations - places on a face, or a summary [list]
 * @returns the sample's summary [record]
 * @validity at least two places; else RangeError
 * @source johnson-wichern-2007
 * @example sampleOf([{ x: 6, y: 9 }, { x: 10, y: 6 }, { x: 8, y: 3 }]).mean // [8, 6]
 */
export function sampleOf(observations: Observations): Sample {
  return isSample(observations) ? observations : sampleOfRows(observations.map(({ x, y }) => [x, y]));
}
