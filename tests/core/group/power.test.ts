import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arrowsForShift,
  fUpperTail,
  noncentralFUpperTail,
  powerForShift,
  smallestShiftFound,
} from '../../../core/group/index.ts';

describe('noncentral F', () => {
  // Computed independently: the Poisson mixture of incomplete beta functions at 30 digits (mpmath).
  it.each([
    [3.5, 1.4, 10.4, 6, 0.6346120789313694],
    [1.0368, 1.0369, 10.37, 14, 0.9961998580854499],
    [3, 2, 100_000, 9, 0.7701318669409517],
    [30, 2, 4, 30, 0.2872509895323397],
  ])('above %d with %d and %d degrees of freedom, λ %d: %d', (f, df1, df2, lambda, figure) =>
    expect(noncentralFUpperTail(f, df1, df2, lambda) / figure).toBeCloseTo(1, 8),
  );

  it('is F itself without a shift, rises with the shift and stays between 0 and 1', () => {
    const positive = fc.double({ min: 0.1, max: 50, noNaN: true });
    fc.assert(
      fc.property(
        positive,
        fc.double({ min: 1, max: 2, noNaN: true }),
        fc.double({ min: 1, max: 500, noNaN: true }),
        positive,
        (f, a, b, lambda) => {
          expect(noncentralFUpperTail(f, a, b, 0)).toBe(fUpperTail(f, a, b));
          expect(noncentralFUpperTail(f, a, b, 1e-9)).toBeCloseTo(fUpperTail(f, a, b), 8);
          const [low, high] = [noncentralFUpperTail(f, a, b, lambda), noncentralFUpperTail(f, a, b, lambda + 1)];
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeGreaterThanOrEqual(low - 1e-14);
          expect(high).toBeLessThanOrEqual(1);
        },
      ),
    );
  });

  it('does not lose itself when the shift is enormous', () => {
    expect(noncentralFUpperTail(4, 2, 20, 1e5)).toBeCloseTo(1, 10);
    expect(() => noncentralFUpperTail(4, 2, 20, NaN)).toThrow(RangeError);
  });
});

describe('planning a comparison', () => {
  it('with six and six arrows finds one spread 28 times in 100 (computed independently)', () => {
    expect(powerForShift(1, 6, 6, 0.05)).toBeCloseTo(0.28, 2);
  });

  it('needs four times the arrows for half the shift, when there are many', () => {
    expect(arrowsForShift(0.01, 0.8, 0.05) / arrowsForShift(0.02, 0.8, 0.05)).toBeCloseTo(4, 3);
    expect(arrowsForShift(1e-5, 0.8, 0.05) / arrowsForShift(0.01, 0.8, 0.05)).toBeCloseTo(1e6, -2);
  });

  it('gives the least number of arrows that is enough, and a smallest shift that is just found', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 4, noNaN: true }), fc.constantFrom(0.5, 0.8, 0.9), (shift, power) => {
        const n = arrowsForShift(shift, power, 0.05);
        expect(powerForShift(shift, n, n, 0.05)).toBeGreaterThanOrEqual(power);
        if (n > 2) expect(powerForShift(shift, n - 1, n - 1, 0.05)).toBeLessThan(power);
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 60 }), fc.integer({ min: 2, max: 60 }), (n1, n2) => {
        expect(powerForShift(smallestShiftFound(n1, n2, 0.8), n1, n2, 0.05)).toBeCloseTo(0.8, 9);
      }),
    );
  });

  it('refuses plans that make no sense', () => {
    for (const ask of [
      () => arrowsForShift(0, 0.8, 0.05),
      () => arrowsForShift(1, 1, 0.05),
      () => arrowsForShift(1, 0.04, 0.05),
      () => smallestShiftFound(1, 6, 0.8),
    ]) {
      expect(ask).toThrow(RangeError);
    }
  });
});
