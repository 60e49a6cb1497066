import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { momentsOf, shapeFactor, shiftOfGroups, welchTest, type Point } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, factor, group, mirrored, moved, place300, scaled, turned } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, roundMoments, valueOf } from './shots.ts';

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
/** A perfectly round group: the corners of a regular polygon, with a spread of one axis of exactly one centimetre. */
const polygon = (n: number, x = 0): Point[] => {
  const radius = 0.01 * Math.sqrt((2 * (n - 1)) / n);
  return Array.from({ length: n }, (_, i) => ({
    x: x + radius * Math.cos((2 * Math.PI * i) / n),
    y: radius * Math.sin((2 * Math.PI * i) / n),
  }));
};

describe('the verdict on a shift', () => {
  it('is real for two tight groups far apart, on the axis they are apart on', () => {
    const shift = valueOf(shiftOfGroups(polygon(6), polygon(6, 0.1)));
    expect(shift.verdict).toBe('real');
    expect(shift.axisReal).toEqual({ x: true, y: false });
    expect(shift.size).toBeCloseTo(0.1, 12);
    expect(shift.direction).toBeCloseTo(0, 12);
    expect(shift.more).toBeNull();
  });

  it('cannot tell a shift of one spread with six and six, and asks for the 15 more that make the 21 of the table', () => {
    // 21 arrows each find one spread with 80 % (table of arrows needed, computed independently).
    const shift = valueOf(shiftOfGroups(polygon(6), polygon(6, 0.01), { matters: 0.01 }));
    expect(shift.verdict).toBe('cannot tell');
    expect(shift.more).toBe(15);
  });

  it('asks for enough to settle a shift that stays half as large as matters: 49 arrows each, 43 more than six', () => {
    // The circle must shrink to half a spread: 4/n · F with 2 and 4 (n - 1) degrees of freedom is .504² for 48 and .498² for 49 (scipy 1.17).
    expect(valueOf(shiftOfGroups(polygon(6), polygon(6, 0.005), { matters: 0.01 })).more).toBe(43);
  });

  it('asks for more where less must be seen, and for the same when both halves are exchanged', () => {
    const more = (matters: number): number => valueOf(shiftOfGroups(polygon(6), polygon(6), { matters })).more ?? NaN;
    expect(more(0.005)).toBeGreaterThan(more(0.01));
    const [there, back] = [shiftOfGroups(polygon(4), polygon(9, 0.005)), shiftOfGroups(polygon(9, 0.005), polygon(4))].map(
      valueOf,
    );
    expect(there?.more).toBe(back?.more);
  });

  it('shows no sign of a shift with sixty and sixty on one centre, and says how large one could be', () => {
    const shift = valueOf(shiftOfGroups(polygon(60), polygon(60)));
    expect(shift.verdict).toBe('no sign');
    // √(2 · 2 s²/60 · F), F = 3.0340833 for 2 and 236 degrees of freedom (computed independently, scipy 1.17).
    expect(shift.largest).toBeCloseTo(0.01 * Math.sqrt((4 / 60) * 3.0340833), 7);
  });

  it('is real exactly when p is below 5 %, and then the circle leaves out nought', () => {
    fc.assert(
      fc.property(group(), group(), (a, b) => {
        const shift = valueOf(shiftOfGroups(a, b));
        expect(shift.verdict === 'real').toBe(shift.p < 0.05);
        if (Math.abs(shift.p - 0.05) > 1e-9) expect(shift.size > shift.radius).toBe(shift.p < 0.05);
        if (shift.axisReal.x || shift.axisReal.y) expect(shift.verdict).toBe('real');
        if (shift.verdict === 'no sign') expect(shift.largest).toBeLessThanOrEqual(shift.matters);
        expect(shift.more === null).toBe(shift.verdict !== 'cannot tell');
      }),
    );
  });

  it('is stricter at one in a hundred', () => {
    fc.assert(
      fc.property(group(), group(), (a, b) => {
        const [usual, strict] = [valueOf(shiftOfGroups(a, b)), valueOf(shiftOfGroups(a, b, { alpha: 0.01 }))];
        expect(strict.radius).toBeGreaterThan(usual.radius);
        if (strict.verdict === 'real') expect(usual.verdict).toBe('real');
      }),
    );
    expect(() => shiftOfGroups(polygon(3), polygon(3), { alpha: 1 })).toThrow(RangeError);
  });
});

describe('a shift does not depend on how it is looked at', () => {
  const expectSame = (a: readonly number[], b: readonly number[]): void =>
    a.forEach((value, i) => expect(b[i]).toBeCloseTo(value, 8));
  const judged = (a: readonly Point[], b: readonly Point[]): number[] => {
    const { f, p, df, shape, size, radius, spread } = valueOf(shiftOfGroups(a, b));
    return [Math.sqrt(f), p, ...df, shape, size, radius, spread];
  };

  it('stays when both groups are moved, turned or mirrored together', () => {
    fc.assert(
      fc.property(group(), group(), place300, angle, (a, b, by, turn) => {
        expectSame(judged(moved(a, by), moved(b, by)), judged(a, b));
        expectSame(judged(turned(a, turn), turned(b, turn)), judged(a, b));
        expectSame(judged(mirrored(a), mirrored(b)), judged(a, b));
      }),
    );
  });

  it('turns with the groups, and a mirror changes the sign of the lateral shift only', () => {
    fc.assert(
      fc.property(group(), group(), angle, (a, b, turn) => {
        const [plain, round, mirror] = [
          shiftOfGroups(a, b),
          shiftOfGroups(turned(a, turn), turned(b, turn)),
          shiftOfGroups(mirrored(a), mirrored(b)),
        ].map(valueOf);
        if (plain === undefined || round === undefined || mirror === undefined) throw new Error('Three shifts were expected.');
        expect(round.dx).toBeCloseTo(plain.dx * Math.cos(turn) - plain.dy * Math.sin(turn), 10);
        expect(round.dy).toBeCloseTo(plain.dx * Math.sin(turn) + plain.dy * Math.cos(turn), 10);
        expect(mirror.dx).toBeCloseTo(-plain.dx, 12);
        expect([mirror.dy, mirror.half.x, mirror.half.y]).toEqual(
          [plain.dy, plain.half.x, plain.half.y].map((v) => expect.closeTo(v, 12)),
        );
        expect(mirror.axisReal).toEqual(plain.axisReal);
        if (plain.size > 1e-9) {
          expect(Math.cos(plain.direction)).toBeCloseTo(plain.dx / plain.size, 9);
          expect(Math.sin(plain.direction)).toBeCloseTo(plain.dy / plain.size, 9);
        }
      }),
    );
  });

  it('scales with the groups, so that the verdict is the same in any unit', () => {
    fc.assert(
      fc.property(group(), group(), factor, (a, b, by) => {
        const [before, after] = [valueOf(shiftOfGroups(a, b)), valueOf(shiftOfGroups(scaled(a, by), scaled(b, by)))];
        expectSame(
          [after.size / by, after.radius / by, after.half.x / by, after.half.y / by],
          [before.size, before.radius, before.half.x, before.half.y],
        );
        expectSame([after.p, after.shape, ...after.df], [before.p, before.shape, ...before.df]);
      }),
    );
  });

  it('stays when the shots are put in another order, and only turns round when the groups are exchanged', () => {
    fc.assert(
      fc.property(group(), group(), (a, b) => {
        expectSame(judged(a.toReversed(), b.toReversed()), judged(a, b));
        expectSame(judged(b, a), judged(a, b));
        expect(valueOf(shiftOfGroups(b, a)).dx).toBeCloseTo(-valueOf(shiftOfGroups(a, b)).dx, 12);
      }),
    );
  });

  it('keeps the T2 of Hotelling beside it under any turn and stretch of both groups', () => {
    fc.assert(
      fc.property(group(6), group(6), angle, factor, (a, b, turn, by) => {
        const plain = valueOf(shiftOfGroups(a, b)).hotelling;
        const other = valueOf(shiftOfGroups(scaled(turned(a, turn), by), scaled(turned(b, turn), by))).hotelling;
        if (plain === null || other === null || plain.t2 > 1e4) return;
        expect(other.t2).toBeCloseTo(plain.t2, 5);
        expect(other.p).toBeCloseTo(plain.p, 7);
      }),
    );
  });
});

describe('the shape of the groups', () => {
  it('between ½ and 1 grows with every oval: the degrees of freedom fall as groups become a needle', () => {
    const shapes = [1, 0.5, 0.2, 0].map((thin) => {
      const points = polygon(12).map(({ x, y }) => ({ x, y: y * thin }));
      return shapeFactor([momentsOf(points)]);
    });
    expect(shapes[0]).toBe(0.5);
    expect(shapes[3]).toBe(1);
    for (let i = 1; i < shapes.length; i++) expect(shapes[i]).toBeGreaterThan(shapes[i - 1] ?? NaN);
  });

  it('of ½ gives F with 2 and 4 (n - 1) degrees of freedom for equal round groups: the circular test', () => {
    // Equal spreads and sizes: ν = 2 · 2 (n - 1), F = n d²/(4 s²), by hand from the circular Welch formula.
    const test = welchTest(roundMoments(5, 0, 2), roundMoments(5, 3, 2), 0.5);
    expect(test.df).toEqual([2, 16]);
    expect(test.f).toBeCloseTo((5 * 9) / (4 * 4), 12);
    expect(test.p).toBeCloseTo((1 + (2 * test.f) / 16) ** -8, 12);
  });

  it('of 1 gives the t test of Welch for two needles on one line', () => {
    fc.assert(
      fc.property(group(3), group(3), (a, b) => {
        const flat = (points: readonly Point[]): Point[] => points.map(({ x }) => ({ x, y: 0 }));
        const [first, second] = [momentsOf(flat(a)), momentsOf(flat(b))];
        const [v1, v2] = [first.covariance.xx / first.n, second.covariance.xx / second.n];
        if (Math.min(v1, v2) < 1e-9) return;
        const test = welchTest(first, second, shapeFactor([first, second]));
        // Welch 1947: t² ~ F(1, ν).
        expect(test.df[0]).toBeCloseTo(1, 12);
        expect(test.f).toBeCloseTo((second.centre.x - first.centre.x) ** 2 / (v1 + v2), 9);
        expect(test.df[1]).toBeCloseTo((v1 + v2) ** 2 / (v1 ** 2 / (first.n - 1) + v2 ** 2 / (second.n - 1)), 9);
      }),
    );
  });
});

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
