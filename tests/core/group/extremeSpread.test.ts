import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convexHull, extremeSpread, type Point } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, group, moved, place300, turned } from './arbitraries.ts';
import { normalShots } from './shots.ts';

/** The plain way: every pair. */
function everyPair(points: readonly Point[]): number {
  let farthest = 0;
  for (const a of points) for (const b of points) farthest = Math.max(farthest, Math.hypot(a.x - b.x, a.y - b.y));
  return farthest;
}

describe('the two shots farthest apart', () => {
  it('are found as trying every pair finds them, on lines, in one hole and apart', () => {
    fc.assert(
      fc.property(fc.oneof(anyShots(), group()), (points) => {
        expect(extremeSpread(points)).toBeCloseTo(everyPair(points), 14);
      }),
      { numRuns: 300 },
    );
  });

  it('are found as trying every pair finds them in turned groups, where parallel edges are nearly parallel', () => {
    fc.assert(
      fc.property(anyShots(), angle, (points, by) => {
        const seen = turned(points, by);
        expect(extremeSpread(seen)).toBeCloseTo(everyPair(seen), 14);
      }),
      { numRuns: 300 },
    );
  });

  it('are found as trying every pair finds them among a thousand normal shots', () => {
    const points = normalShots(randomFrom(7), 1000, [0.05, 0.02]);
    expect(extremeSpread(points)).toBe(everyPair(points));
  });

  it('stay as far apart when the group is moved', () => {
    fc.assert(
      fc.property(group(), place300, (points, by) => {
        expect(extremeSpread(moved(points, by))).toBeCloseTo(extremeSpread(points), 14);
      }),
    );
  });

  it('are opposite corners of a square, whose sides are parallel', () => {
    const square = [0, 1, 2, 3].map((i) => ({ x: i % 2, y: i > 1 ? 1 : 0 }));
    expect(extremeSpread(square)).toBe(Math.SQRT2);
    expect(convexHull(square)).toHaveLength(4);
  });

  it('are two planted shots among 100,000', () => {
    const points = normalShots(randomFrom(8), 100_000, [0.01, 0.01]);
    points[31_415] = { x: -0.3, y: 0 };
    points[92_653] = { x: 0, y: 0.4 };
    expect(extremeSpread(points)).toBe(0.5);
  });

  it('are nought apart when there are fewer than two', () => {
    expect(extremeSpread([])).toBe(0);
    expect(extremeSpread([{ x: 1, y: 2 }])).toBe(0);
  });
});
