import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { factorBanded, solveBanded, timesBanded } from '../../../core/arrow/banded.ts';

const cell = fc.double({ min: -1, max: 1, noNaN: true });

/** A banded matrix that its diagonal makes positive definite, and the same written out. */
const matrices = fc
  .record({ size: fc.integer({ min: 1, max: 12 }), reach: fc.integer({ min: 0, max: 4 }) })
  .chain(({ size, reach }) =>
    fc
      .array(cell, { minLength: size * (reach + 1), maxLength: size * (reach + 1) })
      .map((cells) => cells.map((value, i) => (i % (reach + 1) === reach ? value + 2 * reach + 2 : value)))
      .map((cells) => ({ size, reach, cells: new Float64Array(cells) })),
  );

const writtenOut = ({ size, reach, cells }: { size: number; reach: number; cells: Float64Array }): Matrix => {
  const full = Matrix.zeros(size, size);
  for (let i = 0; i < size; i++)
    for (let j = Math.max(0, i - reach); j <= i; j++) {
      const value = cells[i * (reach + 1) + j - i + reach] ?? 0;
      full.set(i, j, value);
      full.set(j, i, value);
    }
  return full;
};

describe('a banded matrix', () => {
  it('solves and multiplies as a general library does with the same matrix written out', () => {
    fc.assert(
      fc.property(matrices, fc.array(cell, { minLength: 12, maxLength: 12 }), (matrix, numbers) => {
        const right = new Float64Array(numbers.slice(0, matrix.size));
        const full = writtenOut(matrix);
        const column = Matrix.columnVector([...right]);
        const x = solveBanded(factorBanded(matrix), right);
        const wanted = solve(full, column).to1DArray();
        for (const [i, value] of wanted.entries()) expect(Math.abs((x[i] ?? 0) - value)).toBeLessThan(1e-10);
        const product = full.mmul(column).to1DArray();
        for (const [i, value] of timesBanded(matrix, right).entries()) expect(value).toBeCloseTo(product[i] ?? 0, 12);
      }),
    );
  });

  it('is refused when it is not positive definite', () => {
    expect(() => factorBanded({ size: 2, reach: 1, cells: new Float64Array([0, 1, 2, 1]) })).toThrow(RangeError);
    expect(() => factorBanded({ size: 1, reach: 0, cells: new Float64Array([Number.NaN]) })).toThrow(RangeError);
  });
});
