import { describe, expect, it } from 'vitest';
import { spreadPerMetre } from '../../../../core/aim/index.ts';
import { exampleFletched } from '../../../../core/model/example.ts';
import type { ShotGroup } from '../../../../core/model/index.ts';
import { normalPair, randomFrom } from '../../../../fixtures/random.ts';

const group = (distance: number, heights: readonly number[], patch: Partial<ShotGroup> = {}): ShotGroup => ({
  ...exampleFletched,
  context: { ...exampleFletched.context, distance },
  shots: heights.map((y, id) => ({ id, x: 0.05 * (id % 2), y, arrow: null, end: null, leftOut: null })),
  ...patch,
});
const near = group(20, [0.01, 0.02, 0.03, 0.04, 0.05, 0.06]);
const far = group(40, [0, 0.02, -0.02, 0.04, -0.04, 0.06, -0.06]);
const s = spreadPerMetre([near, far]);

describe('The scatter up and down of an archer', () => {
  // By hand: (17.5 cm²/(20 m)² + 112 cm²/(40 m)²)/(5 + 6) = 1.034091 × 10⁻⁶ rad².
  it('is pooled over groups as an angle', () => {
    expect(s).toBeCloseTo(1.016_903e-3, 9);
  });

  it('does not care for where a group lies, nor for scatter from side to side', () => {
    const lifted = group(20, [0.21, 0.22, 0.23, 0.24, 0.25, 0.26]);
    const wide = { ...far, shots: far.shots.map((shot) => ({ ...shot, x: 10 * shot.x })) };
    expect(spreadPerMetre([lifted, wide])).toBeCloseTo(s ?? NaN, 12);
  });

  it('counts only fletched shots that nobody left out, and no group in one hole', () => {
    const wild = { id: 99, x: 0, y: 0.9, arrow: null, end: null, leftOut: 'slipped off the rest' };
    const others = [group(30, [0.5, -0.5, 0.5], { fletching: 'bare' }), group(18, [0.1]), group(18, [])];
    const hole = { ...near, shots: near.shots.map((shot) => ({ ...shot, x: 0, y: 0 })) };
    expect(spreadPerMetre([{ ...near, shots: [...near.shots, wild] }, far, ...others, hole])).toBe(s);
  });

  it('cannot be told from fewer than eleven shots of one group', () => {
    expect(spreadPerMetre([])).toBeNull();
    expect(spreadPerMetre([near])).toBeNull();
    expect(
      spreadPerMetre([
        group(
          20,
          [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11].map((y) => y / 100),
        ),
      ]),
    ).not.toBeNull();
  });

  // Computed independently: arrows drawn from a known scatter.
  it('finds the scatter that arrows were drawn with', () => {
    const random = randomFrom(5);
    const groups = [18, 30, 50, 70].flatMap((distance) =>
      Array.from({ length: 10 }, () =>
        group(
          distance,
          Array.from({ length: 6 }, () => 0.0025 * distance * normalPair(random)[0]),
        ),
      ),
    );
    expect((spreadPerMetre(groups) ?? NaN) / 0.0025).toBeGreaterThan(0.9);
    expect((spreadPerMetre(groups) ?? NaN) / 0.0025).toBeLessThan(1.1);
  });
});
