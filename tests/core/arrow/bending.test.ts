import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendingFrequency, betaL, firstBendingFrequency } from '../../../core/arrow/index.ts';

const ratio = fc.double({ min: 0, max: 20, noNaN: true });
const mode = fc.constantFrom<(1 | 2 | 3)[]>(1, 2, 3);
const shaft = { stiffness: 4, linearDensity: 0.012, length: 0.72, nockMass: 0.001, frontMass: 0.008 };

describe('bending of an arrow', () => {
  it('does not care which end carries which mass', () => {
    fc.assert(
      fc.property(mode, ratio, ratio, (k, a, b) => {
        expect(betaL(k, a, b)).toBeCloseTo(betaL(k, b, a), 10);
      }),
    );
  });

  it('lies between both ends held and both ends free, and falls as an end grows heavier', () => {
    fc.assert(
      fc.property(mode, ratio, ratio, (k, a, b) => {
        const root = betaL(k, a, b);
        expect(root).toBeGreaterThan(k * Math.PI);
        expect(root).toBeLessThanOrEqual(betaL(k, 0, 0));
        expect(betaL(k, a + 0.1, b)).toBeLessThan(root);
      }),
    );
  });

  it('rings higher when stiffer, shorter or with a lighter point', () => {
    const first = firstBendingFrequency(shaft);
    expect(firstBendingFrequency({ ...shaft, stiffness: 5 })).toBeGreaterThan(first);
    expect(firstBendingFrequency({ ...shaft, length: 0.7 })).toBeGreaterThan(first);
    expect(firstBendingFrequency({ ...shaft, frontMass: 0.007 })).toBeGreaterThan(first);
  });

  it('keeps its frequency when lengths, masses and stiffness are counted in other units', () => {
    // Length in units of s metres, mass in units of q kilograms; the second stays.
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), fc.double({ min: 0.01, max: 100, noNaN: true }), (s, q) => {
        const other = {
          stiffness: shaft.stiffness / (q * s ** 3),
          linearDensity: (shaft.linearDensity / q) * s,
          length: shaft.length / s,
          nockMass: shaft.nockMass / q,
          frontMass: shaft.frontMass / q,
        };
        expect(bendingFrequency(other, 2) / bendingFrequency(shaft, 2)).toBeCloseTo(1, 9);
      }),
    );
  });

  it.each([Number.NaN, -1, Number.POSITIVE_INFINITY])('throws a RangeError for an end mass of %s', (bad) => {
    expect(() => betaL(1, bad, 0)).toThrow(RangeError);
    expect(() => bendingFrequency({ ...shaft, frontMass: bad }, 1)).toThrow(RangeError);
    expect(() => bendingFrequency({ ...shaft, stiffness: bad }, 1)).toThrow(RangeError);
  });

  it('throws a RangeError for a shaft without length, mass or stiffness', () => {
    expect(() => firstBendingFrequency({ ...shaft, length: 0 })).toThrow(RangeError);
    expect(() => firstBendingFrequency({ ...shaft, linearDensity: 0 })).toThrow(RangeError);
    expect(() => firstBendingFrequency({ ...shaft, stiffness: 0 })).toThrow(RangeError);
  });
});
