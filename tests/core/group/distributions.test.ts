import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  betaUpperTail,
  c4,
  chiSquareQuantile,
  fQuantileUpper,
  fUpperTail,
  tQuantile,
  tTwoSided,
} from '../../../core/group/index.ts';

const degrees = fc.double({ min: 0.5, max: 5000, noNaN: true });
const tail = fc.double({ min: 1e-9, max: 0.999, noNaN: true });

describe('F, t and chi-square', () => {
  const expectCloseToOne = (ratio: number, digits: number): void => expect(ratio).toBeCloseTo(1, digits);

  it('have tails and quantiles that undo each other, at any degrees of freedom', () => {
    fc.assert(
      fc.property(tail, degrees, degrees, (p, a, b) => {
        expectCloseToOne(fUpperTail(fQuantileUpper(p, a, b), a, b) / p, 8);
        expectCloseToOne(fUpperTail(fQuantileUpper(p, 2, b), 2, b) / p, 10);
        expectCloseToOne(tTwoSided(tQuantile(1 - p / 2, b), b) / p, 5);
      }),
      { numRuns: 300 },
    );
  });

  it('with two degrees of freedom above take the closed form where it meets the general one', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 40, noNaN: true }), degrees, (f, b) => {
        expect(fUpperTail(f, 2, b)).toBeCloseTo(fUpperTail(f, 2 + 1e-11, b), 8);
      }),
    );
  });

  it('obey: one over F has its degrees of freedom exchanged', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), degrees, degrees, (f, a, b) => {
        expectCloseToOne(fUpperTail(f, a, b) + fUpperTail(1 / f, b, a), 10);
      }),
    );
  });

  it('keep tails far below the rounding of 1 - p', () => {
    // (1 + f)^-1 squared and 2/π arctan(1/t) are closed forms: F with 2 and 4, and t with 1 degree of freedom.
    expect(fUpperTail(2e10, 2, 4) / (1 + 1e10) ** -2).toBeCloseTo(1, 12);
    expect(tTwoSided(1e12, 1) / ((2 / Math.PI) * Math.atan(1e-12))).toBeCloseTo(1, 12);
    expect(fUpperTail(Infinity, 2, 4)).toBe(0);
    expect(fUpperTail(-1, 2, 4)).toBe(1);
  });

  it('join smoothly where the series of chi-square takes over from the library', () => {
    for (const p of [0.025, 0.5, 0.975]) {
      const [below, above] = [chiSquareQuantile(p, 1000), chiSquareQuantile(p, 1000 + 1e-6)];
      expect(Math.abs(above / below - 1)).toBeLessThan(2e-9);
    }
  });

  it('refuse what cannot be asked', () => {
    for (const ask of [
      () => fUpperTail(NaN, 2, 4),
      () => fUpperTail(1, 0, 4),
      () => fQuantileUpper(0, 2, 4),
      () => fQuantileUpper(0.05, 2, Infinity),
      () => tQuantile(1, 3),
      () => tTwoSided(NaN, 3),
      () => chiSquareQuantile(0.5, -1),
      () => c4(0),
    ]) {
      expect(ask).toThrow(RangeError);
    }
  });

  it('rest on a beta tail that is 1 - x for the uniform', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (x) => {
        expect(betaUpperTail(x, 1 - x, 1, 1)).toBeCloseTo(1 - x, 14);
      }),
    );
  });
});
