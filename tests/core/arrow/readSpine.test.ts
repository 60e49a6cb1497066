import { describe, expect, it } from 'vitest';
import { readSpine, woodPounds } from '../../../core/arrow/index.ts';
import { defaultPreferences } from '../../../core/model/index.ts';

const { units } = defaultPreferences;
const inch = 0.0254;
const read = (text: string, convention: '28 in, 880 g' | '26 in, 2 lb', chosen = units) => {
  const found = readSpine(text, convention, chosen);
  return found.ok ? found.value : found.problem.sentence;
};

describe('a spine as the trade writes it', () => {
  // Pounds are 26 over the deflection on 26 in with 2 lb: from memory.
  it('takes a wooden shaft\u2019s pounds on the wood tester, and gives them back', () => {
    for (const text of ['45 lb', '45#', ' 45 lbs ', '45 pounds', '45lb'])
      expect(read(text, '26 in, 2 lb')).toBeCloseTo((26 / 45) * inch, 12);
    expect(woodPounds(Number(read('45 lb', '26 in, 2 lb')), '26 in, 2 lb')).toBeCloseTo(45, 9);
    expect(read('0 lb', '26 in, 2 lb')).toBe('A wooden shaft\u2019s pounds, such as 45 lb, were expected.');
    expect(read('900 lb', '26 in, 2 lb')).toBe('A wooden shaft\u2019s pounds, such as 45 lb, were expected.');
  });

  it('asks for the wood tester where pounds are typed without it, and for the unit where it is missing', () => {
    expect(read('45 lb', '28 in, 880 g')).toContain('26 in span and 2 lb');
    expect(read('45', '26 in, 2 lb')).toBe('45 reads like a wooden shaft\u2019s pounds: type 45 lb.');
  });

  // A shaft's printed number is usually its deflection in thousandths of an inch: common practice.
  it('says what a shaft\u2019s printed number usually means', () => {
    expect(read('500', '28 in, 880 g')).toBe('500 on a shaft usually means 0.500 in over 28 in with 880 g: type 0.5.');
    expect(read('700', '28 in, 880 g', { ...units, deflection: 'mm' })).toBe(
      '700 on a shaft usually means 0.700 in over 28 in with 880 g: type 0.7 in.',
    );
    expect(read('1000', '26 in, 2 lb')).toContain('choose that tester and type 1.');
  });

  it('reads a deflection as every other measure', () => {
    expect([read('', '28 in, 880 g'), read('0.5', '28 in, 880 g'), read('12.7 mm', '26 in, 2 lb')]).toEqual([
      null,
      expect.closeTo(0.0127, 12),
      expect.closeTo(0.0127, 12),
    ]);
    expect(read('9', '28 in, 880 g')).toBe('A spine deflection between 0.1 and 4 in was expected.');
  });
});
