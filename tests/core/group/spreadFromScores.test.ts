import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  face,
  regionsOfScores,
  scoreShot,
  spreadFromRegions,
  type RegionCount,
  type ScoreCount,
} from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

const shaft = 0.003;
const target = face('122');
const read = (counts: readonly ScoreCount[]) => spreadFromRegions(valueOf(regionsOfScores(counts, shaft, target)));
const zone = (inner: number, outer: number, count: number): RegionCount => ({ count, parts: [{ inner, outer, share: 1 }] });

describe('the spread behind a score sheet', () => {
  it('of arrows inside and outside one circle is that which puts the seen share inside', () => {
    // 1 - e^(-R²/2σ²) = 3/4, so σ = R/√(4 ln 2).
    const { spread } = valueOf(spreadFromRegions([zone(0, 0.1, 30), zone(0.1, Infinity, 10)]));
    expect(spread).toBeCloseTo(0.1 / Math.sqrt(4 * Math.LN2), 8);
  });

  it('of very thin rings is that of the distances themselves: σ² = Σ r²/2n', () => {
    const radii = [0.02, 0.03, 0.05, 0.08, 0.11];
    const { spread } = valueOf(spreadFromRegions(radii.map((r) => zone(r - 1e-6, r + 1e-6, 2))));
    expect(spread).toBeCloseTo(Math.sqrt(radii.reduce((sum, r) => sum + r * r, 0) / 10), 6);
  });

  it('does not ask how the pieces of a ring are cut, or in which order they stand', () => {
    const rings = [zone(0, 0.05, 5), zone(0.05, 0.1, 9), zone(0.1, Infinity, 2)];
    const cut = [
      ...rings.slice(1),
      {
        count: 5,
        parts: [
          { inner: 0, outer: 0.02, share: 1 },
          { inner: 0.02, outer: 0.05, share: 1 },
        ],
      },
    ];
    expect(valueOf(spreadFromRegions(cut)).spread).toBeCloseTo(valueOf(spreadFromRegions(rings)).spread, 7);
    const sectors = [
      ...rings.slice(0, 1),
      zone(0.1, Infinity, 2),
      { count: 9, parts: [{ inner: 0.05, outer: 0.1, share: 0.25 }] },
    ];
    expect(valueOf(spreadFromRegions(sectors)).spread).toBeCloseTo(valueOf(spreadFromRegions(rings)).spread, 7);
  });

  it('scales with the target', () => {
    const rings = (by: number) => [zone(0, 0.05 * by, 5), zone(0.05 * by, 0.1 * by, 9), zone(0.1 * by, Infinity, 2)];
    const [one, three] = [valueOf(spreadFromRegions(rings(1))), valueOf(spreadFromRegions(rings(3)))];
    expect(three.spread / one.spread).toBeCloseTo(3, 6);
    expect(three.interval[1] / one.interval[1]).toBeCloseTo(3, 6);
  });

  it('comes back from drawn arrows scored by the rule, in its interval about 95 times in 100', () => {
    const random = randomFrom(41);
    const draws = 300;
    const held = Array.from({ length: draws }, () => {
      const scores = normalShots(random, 36, [0.08, 0.08]).map((shot) => scoreShot(shot, shaft, target).points);
      const counts = Array.from({ length: 11 }, (_, points) => ({ points, count: scores.filter((s) => s === points).length }));
      const { interval } = valueOf(read(counts));
      return interval[0] <= 0.08 && 0.08 <= interval[1];
    }).filter(Boolean).length;
    expect(Math.abs(held / draws - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / draws));
  });

  it('of arrows all in the ten is a bound and no figure', () => {
    const result = read([{ points: 10, count: 12 }]);
    expect(refusalOf(result)).toBe('all-inside');
    // (1 - e^(-64²/2σ²))^12 = .05: σ = 64/√(-2 ln(1 - .05^(1/12))) = 36.8 mm, worked out by hand.
    expect(result.ok ? '' : result.problem.sentence).toContain('below 37 mm');
  });

  it('is refused for misses alone, for no arrows, and for points or counts that cannot be', () => {
    expect(refusalOf(read([{ points: 0, count: 6 }]))).toBe('all-outside');
    expect(refusalOf(read([]))).toBe('no-shots');
    expect(refusalOf(read([{ points: 9, count: 0 }]))).toBe('no-shots');
    for (const bad of [
      { points: 11, count: 1 },
      { points: 9, count: -1 },
      { points: 9, count: 1.5 },
    ])
      expect(refusalOf(regionsOfScores([bad], shaft, target))).toBe('bad-score');
    expect(refusalOf(regionsOfScores([{ points: 3, count: 1 }], shaft, face('80-six')))).toBe('bad-score');
    expect(refusalOf(spreadFromRegions([zone(0.2, 0.1, 3)]))).toBe('bad-region');
    expect(refusalOf(spreadFromRegions([zone(0, NaN, 3)]))).toBe('bad-region');
  });

  it('whatever the sheet, is numbers or a sentence', () => {
    const sheet = fc.array(fc.record({ points: fc.integer({ min: 0, max: 10 }), count: fc.integer({ min: 0, max: 40 }) }), {
      maxLength: 6,
    });
    fc.assert(
      fc.property(sheet, (counts) => {
        const result = read(counts);
        if (result.ok) {
          const { spread, interval } = result.value;
          expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
          expect(interval[0]).toBeLessThan(spread);
          expect(interval[1]).toBeGreaterThan(spread);
        } else expect(result.problem.sentence).toMatch(/\.$/);
      }),
      { numRuns: 200 },
    );
  });
});
