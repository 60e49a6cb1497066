import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shiftOfGroups, type Point } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { anyShots, moved } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, polygon, refusalOf, valueOf } from './shots.ts';

const hole = millimetres([
  [5, 5],
  [5, 5],
  [5, 5],
]);
const six = millimetres([
  [-9, 6],
  [4, 11],
  [-14, -3],
  [2, -8],
  [-6, 15],
  [9, 1],
]);

describe('groups that are hard to judge', () => {
  it.each([
    ['no shots in the first', [], six, 'no-shots', 'reference group'],
    ['no shots in the second', six, [], 'no-shots', 'other group'],
    ['one shot', six, six.slice(0, 1), 'one-shot', 'at least one more'],
    ['both in one hole', hole, moved(hole, { x: 0.01, y: 0 }), 'one-hole', 'shoot more'],
    [
      'a place that is not a number',
      six,
      millimetres([
        [1, 2],
        [3, NaN],
      ]),
      'bad-position',
      'Shot 2 of the other group',
    ],
    [
      'an absurd place',
      millimetres([
        [1e6, 2],
        [3, 4],
      ]),
      six,
      'bad-position',
      'Shot 1 of the reference group',
    ],
  ] as const)('%s: refused with a sentence that says what to do', (_, a, b, code, words) => {
    const result = shiftOfGroups(a, b);
    expect(refusalOf(result)).toBe(code);
    expect(result.ok ? '' : result.problem.sentence).toContain(words);
  });

  it.each([0, -1, NaN, Infinity, 2])('a smallest shift that matters of %d m is refused', (matters) =>
    expect(refusalOf(shiftOfGroups(six, polygon(6), { matters }))).toBe('bad-matters'),
  );

  it('one group in one hole is judged by the other alone', () => {
    const shift = valueOf(shiftOfGroups(hole, polygon(6, 0.1)));
    expect(shift.verdict).toBe('real');
    // v1 = 0: ν = (n2 - 1)/c, by hand.
    expect(shift.df).toEqual([2, 10]);
  });

  it('one group in one hole and two shots in the other show no shape, and are judged as a line', () => {
    const shift = valueOf(
      shiftOfGroups(
        hole,
        millimetres([
          [0, 0],
          [3, 4],
        ]),
      ),
    );
    expect(shift.shape).toBe(1);
    expect(numbersIn(shift).every(Number.isFinite)).toBe(true);
  });

  it('two and two shots are judged, with a wide circle', () => {
    const shift = valueOf(
      shiftOfGroups(
        millimetres([
          [0, 0],
          [10, 0],
        ]),
        millimetres([
          [0, 8],
          [6, 0],
        ]),
      ),
    );
    expect(shift.verdict).toBe('cannot tell');
    expect(shift.radius).toBeGreaterThan(shift.spread);
  });

  it('an axis without any spread takes the width of the circle instead of none', () => {
    const level = (x: number): Point[] =>
      millimetres([
        [x, 0],
        [x + 5, 0],
        [x + 9, 0],
      ]);
    const shift = valueOf(shiftOfGroups(level(0), level(100)));
    expect(shift.half.y).toBe(shift.radius);
    expect(shift.axisReal).toEqual({ x: true, y: false });
  });

  it('needles have no Hotelling test when they are lines, and a plain one when they are nearly so', () => {
    const needle = (x: number, width: number): Point[] =>
      Array.from({ length: 8 }, (_, i) => ({ x: x + i / 100, y: i / 100 + (i % 2) * width }));
    expect(valueOf(shiftOfGroups(needle(0, 0), needle(0.1, 0))).hotelling).toBeNull();
    expect(valueOf(shiftOfGroups(needle(0, 0.001), needle(0.1, 0.001))).hotelling?.p).toBeLessThan(0.05);
  });

  it('100,000 and 100,000 shots give numbers, and a p too small for one gives "once in" a number all the same', () => {
    const random = randomFrom(5);
    const shift = valueOf(
      shiftOfGroups(normalShots(random, 100_000, [0.01, 0.01]), normalShots(random, 100_000, [0.01, 0.01], { x: 0.05, y: 0 })),
    );
    expect(shift.size).toBeCloseTo(0.05, 3);
    expect(shift.verdict).toBe('real');
    expect(numbersIn(shift).every(Number.isFinite)).toBe(true);
    expect(shift.p).toBeGreaterThan(0);
  });

  it('whatever the shots, no figure is ever not a number', () => {
    fc.assert(
      fc.property(anyShots(), anyShots(), (a, b) => {
        const result = shiftOfGroups(a, b);
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(result.problem.sentence).toMatch(/\.$/);
      }),
      { numRuns: 400 },
    );
  });
});
