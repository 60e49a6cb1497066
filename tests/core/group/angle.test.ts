import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleAcross, angleAt, angleOfLength } from '../../../core/group/index.ts';

describe('a length as an angle', () => {
  it('is a milliradian for a millimetre at a metre, and 3.4378 minutes of arc (180 · 60/π to a thousand)', () => {
    expect(angleAt(0.018, 18) * 1000).toBeCloseTo(1, 5);
    expect((angleAt(0.018, 18) * 180 * 60) / Math.PI).toBeCloseTo(3.4378, 3);
  });

  it('is the same at twice the distance for twice the length, and 60° across an equilateral triangle', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.double({ min: 1, max: 120, noNaN: true }),
        (length, distance) => {
          expect(angleAt(2 * length, 2 * distance)).toBeCloseTo(angleAt(length, distance), 14);
          expect(angleAt(-length, distance)).toBeCloseTo(-angleAt(length, distance), 14);
        },
      ),
    );
    expect(angleAcross(1, Math.sqrt(3) / 2)).toBeCloseTo(Math.PI / 3, 14);
  });

  it('keeps the order of an interval, and is not asked at no distance', () => {
    const { value, interval } = angleOfLength({ value: 0.05, interval: [0.03, 0.09] }, 30);
    expect(interval[0]).toBeLessThan(value);
    expect(interval[1]).toBeGreaterThan(value);
    expect(() => angleAt(0.1, 0)).toThrow(RangeError);
    expect(() => angleAt(NaN, 10)).toThrow(RangeError);
  });
});
