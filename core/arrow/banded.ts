/** A symmetric matrix that is nought beyond `reach` places from its diagonal: row i keeps the columns i − reach to i. */
export interface Banded {
  readonly size: number;
  readonly reach: number;
  readonly cells: Float64Array;
}

/**
 * An empty banded matrix.
 *
 * @equation A = 0
 * @param size - rows [-]
 * @param reach - how far from the diagonal a cell may lie [-]
 * @returns A [record]
 * @validity whole numbers above nought
 * @source own derivation
 * @example emptyBanded(3, 1).cells.length // 6
 */
export function emptyBanded(size: number, reach: number): Banded {
  return { size, reach, cells: new Float64Array(size * (reach + 1)) };
}

/**
 * The lower factor of a positive definite banded matrix.
 *
 * @equation A = L Lᵀ
 * @param matrix - A [record]
 * @returns L, banded as A is [record]
 * @validity throws RangeError when A is not positive definite
 * @source golub-van-loan-2013
 * @example factorBanded({ size: 2, reach: 1, cells: new Float64Array([0, 4, 2, 5]) }).cells.join(' ') // "0 2 1 2"
 */
export function factorBanded(matrix: Banded): Banded {
  const { size, reach } = matrix;
  const cells = matrix.cells.slice();
  const width = reach + 1;
  for (let i = 0; i < size; i++) {
    const start = Math.max(0, i - reach);
    for (let j = start; j <= i; j++) {
      let sum = cells[i * width + j - i + reach] as number;
      for (let k = Math.max(start, j - reach); k < j; k++)
        sum -= (cells[i * width + k - i + reach] as number) * (cells[j * width + k - j + reach] as number);
      if (j === i && !(sum > 0)) throw new RangeError(`The matrix is not positive definite at row ${i}.`);
      cells[i * width + j - i + reach] = j === i ? Math.sqrt(sum) : sum / (cells[j * width + reach] as number);
    }
  }
  return { size, reach, cells };
}

/**
 * The solution of a banded system whose lower factor is known.
 *
 * @equation L Lᵀ x = b
 * @param factor - L, from factorBanded [record]
 * @param right - b [list]
 * @returns x [list]
 * @validity b as long as L has rows
 * @source golub-van-loan-2013
 * @example solveBanded({ size: 2, reach: 1, cells: new Float64Array([0, 2, 1, 2]) }, new Float64Array([8, 14])).join(' ') // "0.75 2.5"
 */
export function solveBanded({ size, reach, cells }: Banded, right: Float64Array): Float64Array {
  const width = reach + 1;
  const x = right.slice();
  for (let i = 0; i < size; i++) {
    let sum = x[i] as number;
    for (let j = Math.max(0, i - reach); j < i; j++) sum -= (cells[i * width + j - i + reach] as number) * (x[j] as number);
    x[i] = sum / (cells[i * width + reach] as number);
  }
  for (let i = size - 1; i >= 0; i--) {
    const own = (x[i] as number) / (cells[i * width + reach] as number);
    x[i] = own;
    for (let j = Math.max(0, i - reach); j < i; j++) x[j] = (x[j] as number) - (cells[i * width + j - i + reach] as number) * own;
  }
  return x;
}

/**
 * A banded matrix times a vector.
 *
 * @equation y = A x
 * @param matrix - A, symmetric [record]
 * @param vector - x [list]
 * @returns y [list]
 * @validity x as long as A has rows
 * @source own derivation
 * @example timesBanded({ size: 2, reach: 1, cells: new Float64Array([0, 4, 2, 5]) }, new Float64Array([1, 2])).join(' ') // "8 12"
 */
export function timesBanded({ size, reach, cells }: Banded, vector: Float64Array): Float64Array {
  const width = reach + 1;
  const y = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const own = vector[i] as number;
    let sum = (cells[i * width + reach] as number) * own;
    for (let j = Math.max(0, i - reach); j < i; j++) {
      const cell = cells[i * width + j - i + reach] as number;
      sum += cell * (vector[j] as number);
      y[j] = (y[j] as number) + cell * own;
    }
    y[i] = (y[i] as number) + sum;
  }
  return y;
}
