import { describe, expect, it } from 'vitest';
import { defaultPreferences } from '../../core/model/index.ts';
import { parseQuantity, type Use } from '../../core/units/index.ts';

const read = (text: string, use: Use): number => {
  const result = parseQuantity(text, use, defaultPreferences.units);
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

/** NIST SP 811 (2008), appendix B.8: factors printed in bold there are exact, the others are given to seven figures. */
const printed: readonly (readonly [text: string, use: Use, value: number, exact: boolean])[] = [
  ['1 in', 'length', 2.54e-2, true],
  ['1 ft', 'length', 3.048e-1, true],
  ['1 yd', 'distance', 9.144e-1, true],
  ['1 gr', 'mass', 6.479891e-5, true],
  ['1 oz', 'mass', 2.834952e-2, false],
  ['1 lb', 'mass', 4.535924e-1, false],
  ['1 kgf', 'weight', 9.80665, true],
  ['1 lbf', 'weight', 4.448222, false],
  ['1 ozf', 'weight', 2.780139e-1, false],
  ['1 ft/s', 'speed', 3.048e-1, true],
  ['1 mi/h', 'speed', 4.4704e-1, true],
  ['1 km/h', 'speed', 2.777778e-1, false],
  ['1 ft lbf', 'energy', 1.355818, false],
  ['1 degree', 'angle', 1.745329e-2, false],
  ['1 min', 'time', 60, true],
];

describe('conversion factors against NIST SP 811, appendix B.8', () => {
  it('has a table to go through', () => expect(printed.length).toBeGreaterThan(10));

  it.each(printed)('%s as %s is %d', (text, use, value, exact) => {
    const relative = Math.abs(read(text, use) / value - 1);
    expect(relative).toBeLessThan(exact ? 1e-15 : 5.1e-7);
  });

  it('takes the exact pound of 0.45359237 kg and pound-force of 4.4482216152605 N (NIST SP 811, appendix B.8, footnotes)', () => {
    expect(read('1 lb', 'mass')).toBe(0.45359237);
    expect(Math.abs(read('1 lbf', 'weight') / (0.45359237 * 9.80665) - 1)).toBeLessThan(1e-15);
    expect(read('1 lbf', 'weight')).toBe(4.4482216152605);
  });

  it('finds 7000 grains in a pound and 16 ounces in a pound (NIST Handbook 44, appendix C, avoirdupois units)', () => {
    expect(read('7000 gr', 'mass')).toBeCloseTo(read('1 lb', 'mass'), 14);
    expect(read('16 oz', 'mass')).toBeCloseTo(read('1 lb', 'mass'), 14);
  });
});
