import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bendingStiffness,
  deflectionOf,
  standardDeflection,
  stiffnessOf,
  testers,
  woodPounds,
} from '../../../core/arrow/index.ts';
import { SpineConvention } from '../../../core/model/index.ts';

const deflections = fc.double({ min: 0.0025, max: 0.1, noNaN: true });
const conventions = fc.constantFrom(...SpineConvention.options);

describe('spine', () => {
  it('has a tester for every convention that a record may name', () => {
    expect(SpineConvention.options.length).toBeGreaterThan(1);
    for (const convention of SpineConvention.options) expect(testers[convention].span).toBeGreaterThan(0.6);
  });

  it('comes back to the same deflection by way of the stiffness', () => {
    fc.assert(
      fc.property(deflections, conventions, (deflection, convention) => {
        expect(deflectionOf(stiffnessOf(deflection, convention), convention) / deflection).toBeCloseTo(1, 12);
      }),
    );
  });

  it('knows a shaft by its stiffness, whichever tester read it', () => {
    fc.assert(
      fc.property(deflections, (standard) => {
        const older = deflectionOf(stiffnessOf(standard, '28 in, 880 g'), '26 in, 2 lb');
        expect(standardDeflection(older, '26 in, 2 lb') / standard).toBeCloseTo(1, 12);
        expect(woodPounds(older, '26 in, 2 lb') / woodPounds(standard, '28 in, 880 g')).toBeCloseTo(1, 12);
        expect(older).toBeLessThan(standard);
      }),
    );
  });

  it('calls a shaft that sags more weaker, in stiffness and in pounds', () => {
    fc.assert(
      fc.property(deflections, conventions, (deflection, convention) => {
        expect(stiffnessOf(deflection * 1.01, convention)).toBeLessThan(stiffnessOf(deflection, convention));
        expect(woodPounds(deflection * 1.01, convention)).toBeLessThan(woodPounds(deflection, convention));
      }),
    );
  });

  it.each([Number.NaN, 0, -0.01, Number.POSITIVE_INFINITY])('throws a RangeError for a deflection of %s', (bad) => {
    expect(() => bendingStiffness(bad, 0.7, 8)).toThrow(RangeError);
    expect(() => standardDeflection(bad, '28 in, 880 g')).toThrow(RangeError);
    expect(() => standardDeflection(bad, '26 in, 2 lb')).toThrow(RangeError);
    expect(() => woodPounds(bad, '26 in, 2 lb')).toThrow(RangeError);
    expect(() => deflectionOf(bad, '26 in, 2 lb')).toThrow(RangeError);
  });
});
