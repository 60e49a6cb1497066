import { describe, expect, it } from 'vitest';
import { heightsApart, type HeightApart } from '../../../core/compare/index.ts';
import { exampleBundle, type Bundle } from '../../../core/model/index.ts';

const DISTANCES = [18, 30, 40, 50, 60, 70];
const other: Bundle = {
  ...exampleBundle,
  setup: { ...exampleBundle.setup, id: '20000000-0000-4000-8000-000000000001', name: 'Other' },
};
const measured = (bundle: Bundle, arrowSpeed: number): Bundle => ({
  ...bundle,
  setup: { ...bundle.setup, settings: { ...bundle.setup.settings, arrowSpeed } },
});
const between = (one: Bundle, another: Bundle, distances = DISTANCES): readonly HeightApart[] => {
  const apart = heightsApart(one, another, distances);
  if (!apart.ok) throw new Error(apart.problem.sentence);
  return apart.value;
};

describe('the height at which two arrows strike', () => {
  it('is the same for the same arrow, without a band: what is not known of it is the same twice', () => {
    const heights = between(exampleBundle, other);
    expect(heights.map(({ distance }) => distance)).toEqual(DISTANCES);
    for (const height of heights) for (const end of ['value', 'low', 'high'] as const) expect(height[end]).toBeCloseTo(0, 6);
  });

  it('follows the flat flight without air for a faster arrow: g x²/2 (1/v1² − 1/v2²), less a little for drag', () => {
    const [v1, v2] = [55, 57];
    const heights = between(measured(exampleBundle, v1), measured(other, v2));
    // Computed independently: free fall over the two flight times; at 18 m drag changes it by a few per cent.
    const expected = ((9.80665 * 18 ** 2) / 2) * (1 / v1 ** 2 - 1 / v2 ** 2);
    expect((heights[0]?.value ?? 0) / expected).toBeGreaterThan(0.97);
    expect((heights[0]?.value ?? 0) / expected).toBeLessThan(1.08);
    for (const { value, low, high } of heights) {
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
    }
  });

  it('has the band of two readings of a chronograph: each moves it by 2 % of its own fall, added in squares', () => {
    const [v1, v2] = [55, 57];
    const [near] = between(measured(exampleBundle, v1), measured(other, v2), [10]);
    const fall = (v: number) => (9.80665 * 10 ** 2) / (2 * v ** 2);
    // Computed independently: d(g x²/2v²) = −2 (g x²/2v²) dv/v with dv/v = 1 %; drag is next to nothing at 10 m.
    const half = Math.hypot(0.02 * fall(v1), 0.02 * fall(v2));
    expect(((near?.high ?? 0) - (near?.low ?? 0)) / 2 / half).toBeGreaterThan(0.95);
    expect(((near?.high ?? 0) - (near?.low ?? 0)) / 2 / half).toBeLessThan(1.05);
  });

  it('is surer between two estimated speeds of one archer with one bow than with another archer', () => {
    const lighter: Bundle = { ...other, arrowSet: { ...other.arrowSet, weighed: 0.0195 } };
    const stranger: Bundle = { ...lighter, archer: { ...lighter.archer, id: '20000000-0000-4000-8000-000000000002' } };
    const width = (another: Bundle) => {
      const last = between(exampleBundle, another).at(-1);
      return (last?.high ?? 0) - (last?.low ?? 0);
    };
    expect(width(lighter)).toBeGreaterThan(0);
    expect(width(lighter)).toBeLessThan(width(stranger) / 3);
  });

  it('leaves out what one of the two does not reach', () => {
    expect(between(measured(exampleBundle, 20), other, [18, 30, 100]).map(({ distance }) => distance)).toEqual([18, 30]);
  });

  it('says which set-up lacks what', () => {
    const bare = { ...other, arrowSet: { ...other.arrowSet, weighed: null, linearDensity: null } };
    const apart = heightsApart(exampleBundle, bare, DISTANCES);
    expect(apart.ok).toBe(false);
    expect(!apart.ok && apart.problem.sentence).toContain('Other: ');
  });
});
