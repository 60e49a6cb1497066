import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossing, peak } from '../../../core/flight/index.ts';
import { inside } from '../inside.ts';

describe('the search for a crossing', () => {
  it('finds the root of a cubic with a known root', () => {
    fc.assert(
      fc.property(inside(-3, 3), inside(0.1, 5), (root, width) => {
        const found = crossing((x) => (x - root) ** 3 + 0.2 * (x - root), root - width, root + 2 * width, 1e-13);
        expect(Math.abs(found - root)).toBeLessThan(1e-11);
      }),
    );
  });

  it('takes an end that is itself the root, in either order of the ends', () => {
    expect(crossing((x) => x, 0, 5, 0)).toBe(0);
    expect(crossing((x) => x, 5, 0, 0)).toBe(0);
  });

  it('refuses ends of one sign, and ends that are no number', () => {
    expect(() => crossing((x) => x * x + 1, -1, 1, 1e-9)).toThrow(RangeError);
    expect(() => crossing(() => NaN, -1, 1, 1e-9)).toThrow(RangeError);
  });
});

describe('the search for a peak', () => {
  it('finds the top of a parabola wherever it lies', () => {
    fc.assert(
      fc.property(inside(-4, 9), (top) => {
        expect(Math.abs(peak((x) => -((x - top) ** 2), -5, 10, 1e-6) - top)).toBeLessThan(2e-6);
      }),
    );
  });

  it('finds a peak that lies at an end', () => {
    expect(peak((x) => x, 0, 1, 1e-6)).toBeCloseTo(1, 5);
    expect(peak((x) => -x, 0, 1, 1e-6)).toBeCloseTo(0, 5);
  });
});
