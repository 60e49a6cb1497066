import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { againstUsual, arrowsOnAim, earlierAlike, endPairs, moreOnAim, shotAlike } from '../../../core/questions/index.ts';
import { counted, type Shot } from '../../../core/model/index.ts';
import { groupOn, roundShots } from './build.ts';

describe('arrows for the aim', () => {
  // Computed independently: one centre of round shots, α 5 %, noncentral F with 2 and 2 (n - 1) degrees of freedom.
  const table = [
    [0.25, 156, 204],
    [0.5, 41, 53],
    [0.75, 19, 25],
    [1, 12, 15],
    [1.25, 8, 10],
    [1.5, 6, 8],
    [2, 5, 5],
    [3, 3, 4],
  ] as const;

  it('are those of the table of one-sample power, for 80 and 90 in 100', () => {
    expect(table.map(([d]) => [d, arrowsOnAim(d, 0.8), arrowsOnAim(d, 0.9)])).toEqual(table);
  });

  it('still wanted grow fewer as shots come in, and never fall below one', () => {
    const wanted = [2, 6, 12, 40].map((n) => moreOnAim(n, 1, 1));
    expect(wanted).toEqual([10, 6, 1, 1]);
  });
});

describe('a spread against the usual one', () => {
  /** Four shots on a cross whose variance of one axis is 2 a²/3. */
  const cross = (a: number, count: number) =>
    Array.from({ length: count }, (_, i) => ({
      x: a * Math.cos((2 * Math.PI * i) / count),
      y: a * Math.sin((2 * Math.PI * i) / count),
    }));

  // Printed tables of F: F_0.025(10, 10) = 3.717.
  it('is wider just above the printed point of F, and cannot be told just below it', () => {
    const six = (ratio: number) => {
      // Six shots on a circle of radius a: SS = 6 a², s² = 6 a²/10.
      const a = Math.sqrt((ratio * 10) / 6);
      const found = againstUsual(cross(a, 6), { variance: 1, degreesOfFreedom: 10 });
      if (!found.ok) throw new Error(found.problem.sentence);
      return found.value;
    };
    expect(six(3.72).verdict).toBe('looser');
    expect(six(3.71).verdict).toBe('cannot tell');
    expect(six(1 / 3.72).verdict).toBe('tighter');
    expect(six(1).ratio).toBeCloseTo(1, 12);
    expect(six(1).interval[0]).toBeCloseTo(1 / Math.sqrt(3.717), 3);
    expect(six(1).interval[1]).toBeCloseTo(Math.sqrt(3.717), 3);
  });
});

describe('the history of a group', () => {
  const group = groupOn(90, roundShots(1, 6, 0.02));

  it('is what was shot before it alike, oldest first, without what shows no spread', () => {
    const early = [5, 3, 40].map((day) => groupOn(day, roundShots(day, 6, 0.02)));
    const later = groupOn(95, roundShots(2, 6, 0.02));
    const bare = groupOn(10, roundShots(3, 6, 0.02), { fletching: 'bare' });
    const far = groupOn(11, roundShots(4, 6, 0.02));
    const elsewhere = { ...far, context: { ...far.context, distance: 50 } };
    const hole = groupOn(12, [
      { x: 0.01, y: 0 },
      { x: 0.01, y: 0 },
    ]);
    const found = earlierAlike(group, [...early, later, bare, elsewhere, hole, group]);
    expect(found.map(({ context }) => context.shotAt.at.slice(0, 10))).toEqual(['2026-01-03', '2026-01-05', '2026-02-09']);
    expect(shotAlike(group, elsewhere)).toBe(false);
  });
});

describe('two groups end by end', () => {
  const shots = fc.array(
    fc.record({ x: fc.constant(0), y: fc.constant(0), end: fc.option(fc.integer({ min: 1, max: 90 }), { freq: 60 }) }),
    { minLength: 1, maxLength: 120 },
  );
  const ids = (list: readonly { id?: number }[]) => list.map(({ id = -1 }) => id).sort((x, y) => x - y);

  it('keep every shot once, and leave no side of a look empty', () => {
    fc.assert(
      fc.property(shots, shots, (a, b) => {
        const [reference, moved] = [counted(groupOn(1, a)), counted(groupOn(2, b))];
        const pairs = endPairs(reference, moved);
        expect(pairs.length).toBeGreaterThan(0);
        expect(pairs.length).toBeLessThanOrEqual(60);
        expect(ids(pairs.flatMap((pair) => pair.reference as readonly Shot[]))).toEqual(ids(reference));
        expect(ids(pairs.flatMap((pair) => pair.moved as readonly Shot[]))).toEqual(ids(moved));
        for (const pair of pairs) expect(Math.min(pair.reference.length, pair.moved.length)).toBeGreaterThan(0);
      }),
    );
  });
});
