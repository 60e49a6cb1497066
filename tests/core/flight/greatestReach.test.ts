import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { greatestReach } from '../../../core/flight/index.ts';
import { inside } from '../inside.ts';

const g = 9.80665;

describe('the greatest reach at any angle', () => {
  it('without air is the closed form v/g √(v² + 2 g h) (projectile from a height, any mechanics textbook)', () => {
    fc.assert(
      fc.property(inside(20, 110), inside(0, 3), (v, h) => {
        expect(greatestReach(v, 0, h) / ((v / g) * Math.sqrt(v * v + 2 * g * h))).toBeCloseTo(1, 6);
      }),
      { numRuns: 30 },
    );
  });

  it('with drag is a little more than the range at 45 degrees, 288.36967384 m for 60 m/s and k 0.001 (computed independently)', () => {
    const reach = greatestReach(60, 1e-3, 0);
    expect(reach).toBeGreaterThan(288.36967384);
    expect(reach).toBeLessThan(1.01 * 288.36967384);
  });

  it('never grows with drag', () => {
    expect(greatestReach(55, 2e-3, 1.5)).toBeLessThan(greatestReach(55, 1e-3, 1.5));
  });

  it('refuses a bow below the ground', () => {
    expect(() => greatestReach(55, 1e-3, -1)).toThrow(RangeError);
  });
});
