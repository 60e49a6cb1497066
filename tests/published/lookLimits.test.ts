import { describe, expect, it } from 'vitest';
import { crossingChance, lookLimits } from '../../core/group/index.ts';

/** Looks, Pocock's χ², the p that each look must fall short of, O'Brien and Fleming's last χ², and what a naive 5 % at each look adds up to: computed independently. */
const table = [
  [2, 7.08025, 0.02901, 6.02525, 0.084],
  [3, 7.67015, 0.0216, 6.12237, 0.109],
  [4, 8.06376, 0.017741, 6.20339, 0.129],
  [5, 8.35421, 0.015343, 6.27025, 0.145],
  [6, 8.58185, 0.013692, 6.32587, 0.159],
  [8, 8.9236, 0.011542, 6.41318, 0.181],
  [10, 9.17435, 0.010182, 6.47916, 0.199],
  [12, 9.37028, 0.009231, 6.53127, 0.214],
] as const;

describe('The limits of several looks in the plane', () => {
  it.each(table)(
    'for %i looks agree with the table of Pocock and of O’Brien and Fleming (computed independently)',
    (looks, pocock, nominal, last, naive) => {
      const even = lookLimits(looks, 'pocock');
      const late = lookLimits(looks, 'obrien-fleming');
      expect(even).toHaveLength(looks);
      expect(Math.abs((even[0] ?? NaN) - pocock)).toBeLessThan(1.5e-5);
      expect(new Set(even).size).toBe(1);
      expect(Math.exp(-(even[0] ?? NaN) / 2)).toBeCloseTo(nominal, 6);
      expect(Math.abs((late.at(-1) ?? NaN) - last)).toBeLessThan(1.5e-5);
      expect(late[0]).toBeCloseTo((late.at(-1) ?? NaN) * looks, 9);
      expect(crossingChance(even)).toBeCloseTo(0.05, 9);
      expect(crossingChance(Array.from({ length: looks }, () => -2 * Math.log(0.05)))).toBeCloseTo(naive, 3);
    },
  );

  it('for one look are χ² itself: -2 ln 0.05 (closed form)', () => {
    expect(lookLimits(1, 'pocock')[0]).toBeCloseTo(5.991464547107979, 8);
    expect(lookLimits(1, 'obrien-fleming', 0.01)[0]).toBeCloseTo(9.21034037197618, 7);
  });

  it('stay finite and rise with the looks up to sixty, and stand still on bad plans', () => {
    expect(lookLimits(60, 'pocock')[0]).toBeGreaterThan(9.37);
    expect(crossingChance(lookLimits(60, 'obrien-fleming'))).toBeCloseTo(0.05, 8);
    expect(() => lookLimits(0, 'pocock')).toThrow(RangeError);
    expect(() => lookLimits(2.5, 'pocock')).toThrow(RangeError);
    expect(() => lookLimits(3, 'pocock', 0)).toThrow(RangeError);
    expect(() => crossingChance([5, NaN])).toThrow(RangeError);
  });
});
