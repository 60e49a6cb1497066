import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arrowModel,
  arrowsDiffer,
  endsForDifference,
  endsForLooseArrow,
  endsForOddArrow,
  looseArrows,
  oddArrows,
  spatialMedian,
  type EndShot,
  type Point,
} from '../../../core/group/index.ts';
import { normalPair, randomFrom, type Random } from '../../../fixtures/random.ts';
import { normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

/** x and y [mm], arrow, end: arrow 4 planted 90 mm right and 10 mm high, four arrows missing from ends. */
const rows: readonly (readonly [number, number, number, number])[] = [
  [5, -2, 1, 1],
  [0, -26, 3, 1],
  [86, -18, 4, 1],
  [6, 19, 5, 1],
  [-5, -20, 6, 1],
  [20, -9, 1, 2],
  [12, -35, 2, 2],
  [9, -2, 3, 2],
  [73, -15, 4, 2],
  [-28, -42, 5, 2],
  [-27, -21, 6, 2],
  [-10, -19, 1, 3],
  [18, -28, 2, 3],
  [-35, -35, 3, 3],
  [104, -12, 4, 3],
  [-11, -42, 1, 4],
  [0, -48, 2, 4],
  [41, -48, 3, 4],
  [109, -4, 4, 4],
  [8, -34, 5, 4],
  [22, -31, 6, 4],
  [0, -38, 1, 5],
  [52, -71, 2, 5],
  [42, -38, 3, 5],
  [102, 10, 4, 5],
  [40, -64, 5, 5],
];
const planted = rows.map(([x, y, arrow, end]) => ({ x: x / 1000, y: y / 1000, arrow, end }));

/** All arrows in all ends; each end lies somewhere of its own. */
function sets(random: Random, arrows: number, ends: number, off: Readonly<Record<number, Point>> = {}): EndShot[] {
  return Array.from({ length: ends }, (_, end) => {
    const [level = { x: 0, y: 0 }] = normalShots(random, 1, [2, 2]);
    return normalShots(random, arrows, [1, 1], level).map(({ x, y }, i) => {
      const by = off[i + 1] ?? { x: 0, y: 0 };
      return { x: (x + by.x) / 100, y: (y + by.y) / 100, arrow: i + 1, end };
    });
  }).flat();
}

describe('An odd arrow', () => {
  it('is found where arrows are missing from ends, with the figures of plain least squares (computed independently with NumPy and SciPy)', () => {
    const found = valueOf(oddArrows(planted));
    expect(found.odd.map(({ arrow }) => arrow)).toEqual([4]);
    const [odd] = found.odd;
    expect(odd?.offset.x).toBeCloseTo(0.08784, 10);
    expect(odd?.offset.y).toBeCloseTo(0.0225136, 10);
    expect((odd?.p ?? NaN) / 7.651526845460689e-10).toBeCloseTo(1, 6);
    expect(found.spread).toBeCloseTo(0.01940411739631114, 10);
    expect(found.differ.f).toBeCloseTo(9.196759341684581, 8);
    expect(found.differ.p / 6.19750568389966e-7).toBeCloseTo(1, 6);
    expect(found.differ.wilks?.lambda).toBeCloseTo(0.13773985310732417, 9);
    expect(found.differ.wilks?.p).toBeCloseTo(0.00024631908295297245, 10);
    expect([found.arrows, found.ends, found.unnumbered]).toEqual([6, 5, 0]);
    expect(found.offsets[0]?.arrow).toBe(4);
    expect(found.next?.arrow).not.toBe(4);
  });

  it('does not depend on the order of shots, where the ends lay, or what the arrows are called', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
        const shots = sets(randomFrom(seed), 5, 4, { 2: { x: 3, y: 0 } });
        const plain = valueOf(oddArrows(shots));
        const other = valueOf(
          oddArrows(
            shots.toReversed().map(({ x, y, arrow, end }) => ({
              x: -x + end * 0.05,
              y: y + end * 0.03,
              arrow: (arrow ?? 0) * 7,
              end: 50 - end,
            })),
          ),
        );
        expect(other.odd.map(({ arrow }) => arrow / 7)).toEqual(plain.odd.map(({ arrow }) => arrow));
        expect(other.offsets.map(({ p }) => p)).toEqual(plain.offsets.map(({ p }) => expect.closeTo(p, 9)));
        expect(other.offsets[0]?.offset.x).toBeCloseTo(-(plain.offsets[0]?.offset.x ?? NaN), 9);
      }),
      { numRuns: 40 },
    );
  });

  it('is not looked for among the last three, so that a set of three accuses one at most', () => {
    const found = valueOf(oddArrows(sets(randomFrom(3), 4, 6, { 1: { x: 30, y: 0 }, 2: { x: 0, y: 30 } })));
    expect(found.odd).toHaveLength(1);
    expect(valueOf(oddArrows(sets(randomFrom(4), 3, 6, { 2: { x: 20, y: 0 } }))).odd.map(({ arrow }) => arrow)).toEqual([2]);
  });

  it('is shown in so many more ends where it cannot be shown yet', () => {
    const found = valueOf(oddArrows(sets(randomFrom(11), 6, 3, { 5: { x: 1, y: 0 } })));
    expect(found.odd).toEqual([]);
    expect(found.next?.ends).toBeGreaterThan(0);
  });

  it('leaves a good arrow alone: beside one that is two spreads off, and in sets of ovals, at most 8 % are accused (seeded, 300 sets each)', () => {
    const random = randomFrom(77);
    const accused = (stretch: number, off: Readonly<Record<number, Point>>, arrows: number): number => {
      let count = 0;
      for (let i = 0; i < 300; i++) {
        const shots = sets(random, arrows, 6, off).map((shot) => ({ ...shot, y: shot.y * stretch }));
        if (valueOf(oddArrows(shots)).odd.some(({ arrow }) => off[arrow] === undefined)) count++;
      }
      return count / 300;
    };
    for (const arrows of [3, 6, 12]) expect(accused(1, { 1: { x: 2, y: 0 } }, arrows)).toBeLessThanOrEqual(0.08);
    expect(accused(0.5, {}, 6)).toBeLessThanOrEqual(0.08);
  });

  it('leaves a good arrow alone where one wild loose or a second odd arrow could deceive it (seeded, 400 sets each)', () => {
    const random = randomFrom(78);
    const student = (): number =>
      Math.sqrt(3 / [1, 2].flatMap(() => normalPair(random)).reduce((sum, u, i) => sum + (i < 3 ? u * u : 0), 0));
    const share = (accused: () => boolean): number => Array.from({ length: 400 }, accused).filter(Boolean).length / 400;
    // Student's law with 3 degrees of freedom: by the mean alone 15 % of such sets accuse one (4000 sets).
    const tails = share(() => {
      const wild = sets(random, 12, 4).map((shot) => {
        const [[x, y], by] = [normalPair(random), student()];
        return { ...shot, x: (by * x) / 100, y: (by * y) / 100 };
      });
      return valueOf(oddArrows(wild)).odd.length > 0;
    });
    expect(tails).toBeLessThanOrEqual(0.1);
    // And 10 % where two of six strike apart along the long axis of ovals.
    const two = share(() => {
      const shots = sets(random, 6, 6, { 1: { x: 1, y: 0 }, 2: { x: 1, y: 0 } }).map((shot) => ({ ...shot, y: shot.y / 2 }));
      return valueOf(oddArrows(shots)).odd.some(({ arrow }) => (arrow ?? 0) > 2);
    });
    expect(two).toBeLessThanOrEqual(0.1);
  });

  it('is not made of one wild shot, and is found beside another on the same side', () => {
    const random = randomFrom(79);
    const good = sets(random, 6, 6).map((shot) => ({ ...shot, x: shot.x / 10, y: shot.y / 10 }));
    const wild = good.map((shot) => (shot.arrow === 2 && shot.end === 3 ? { ...shot, x: shot.x + 0.012 } : shot));
    expect(valueOf(oddArrows(wild)).odd).toEqual([]);
    const pair = good.map((shot) => (shot.arrow === 2 || shot.arrow === 5 ? { ...shot, x: shot.x + 0.012 } : shot));
    expect(
      valueOf(oddArrows(pair))
        .odd.map(({ arrow }) => arrow)
        .sort((a, b) => a - b),
    ).toEqual([2, 5]);
  });

  it('is measured from a middle that is where geometry puts it', () => {
    // Of four corners of a convex figure the crossing of the diagonals; of a triangle with 120 degrees or more that corner (closed solutions).
    const corners = [
      [0, 0],
      [6, 0],
      [8, 8],
      [0, 4],
    ].map(([x = NaN, y = NaN]) => ({ x, y }));
    const middle = spatialMedian(corners);
    expect([middle.x, middle.y]).toEqual([expect.closeTo(2.4, 8), expect.closeTo(2.4, 8)]);
    expect(
      spatialMedian([
        { x: -5, y: 0 },
        { x: 0, y: 0.5 },
        { x: 7, y: 0 },
      ]),
    ).toEqual({ x: 0, y: 0.5 });
    // Equal sides: the centroid. Twice the same place: that place.
    const even = spatialMedian(
      [0, 1, 2].map((i) => ({ x: Math.cos((2 * Math.PI * i) / 3), y: Math.sin((2 * Math.PI * i) / 3) })),
    );
    expect(Math.hypot(even.x, even.y)).toBeLessThan(1e-9);
    expect(
      spatialMedian([
        { x: 1, y: 1 },
        { x: 1, y: 1 },
        { x: 3, y: 0 },
      ]),
    ).toEqual({ x: 1, y: 1 });
  });

  it('is refused with what is missing', () => {
    const one = { x: 0, y: 0, arrow: 1, end: 1 };
    expect(refusalOf(oddArrows([one]))).toBe('too-few-arrows');
    expect(refusalOf(oddArrows([{ ...one, x: NaN }]))).toBe('bad-position');
    expect(refusalOf(oddArrows([...planted, { ...one }]))).toBe('twice');
    expect(refusalOf(oddArrows(planted.filter(({ end }) => end === 1)))).toBe('too-few-ends');
    expect(refusalOf(oddArrows(planted.map((shot) => ({ ...shot, end: shot.arrow }))))).toBe('twice');
    expect(
      refusalOf(oddArrows([1, 2, 3, 4].flatMap((arrow) => [1, 2].map((end) => ({ x: arrow / 10, y: 0, arrow, end }))))),
    ).toBe('one-hole');
    const apart = [1, 2, 3, 4].flatMap((arrow) =>
      [1, 2].map((end) => ({ x: arrow / 10, y: end / 20, arrow, end: end + 9 * Number(arrow > 2) })),
    );
    expect(refusalOf(oddArrows(apart))).toBe('not-compared');
    expect(refusalOf(oddArrows(Array.from({ length: 101 }, (_, i) => ({ ...one, arrow: i + 1 }))))).toBe('too-many-arrows');
    expect(() => arrowsDiffer(arrowModel([one, { ...one, arrow: 2 }]) as never)).toThrow(RangeError);
  });

  it('gives numbers for any ends, and counts shots without a number', () => {
    const shot = fc.record({
      x: fc.integer({ min: -90, max: 90 }).map((v) => v / 1000),
      y: fc.integer({ min: -90, max: 90 }).map((v) => v / 1000),
      arrow: fc.oneof(fc.integer({ min: 1, max: 5 }), fc.constant(null)),
      end: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(fc.uniqueArray(shot, { maxLength: 24, selector: ({ arrow, end, x }) => `${arrow ?? x} ${end}` }), (shots) => {
        for (const result of [oddArrows(shots), looseArrows(shots)]) {
          if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
          else expect(result.problem.sentence).toMatch(/^[A-Z].*\.$/);
        }
        const odd = oddArrows(shots);
        if (odd.ok) expect(odd.value.unnumbered).toBe(shots.filter(({ arrow }) => arrow === null).length);
      }),
    );
  });
});

describe('A loose arrow', () => {
  it('has the ratio and p of its own squares against those without it (computed independently with NumPy and SciPy)', () => {
    const first = valueOf(looseArrows(planted)).arrows.find(({ arrow }) => arrow === 1);
    expect(first?.ratio).toBeCloseTo(0.8942928689803512, 9);
    expect(first?.p).toBeCloseTo(0.6086608267063696, 9);
  });

  it('is found when it scatters six times as much, and no other is blamed', () => {
    const random = randomFrom(12);
    const shots = sets(random, 6, 10).map((shot) => ({ ...shot }));
    const wild = normalShots(random, 10, [6, 6]);
    const loose = shots.map((shot) => (shot.arrow === 3 ? { ...shot, x: shot.x + (wild[shot.end]?.x ?? 0) / 100 } : shot));
    expect(valueOf(looseArrows(loose)).loose?.arrow).toBe(3);
  });

  it('keeps to 5 % in round sets (seeded, 300 sets)', () => {
    const random = randomFrom(13);
    let blamed = 0;
    for (let i = 0; i < 300; i++) if (valueOf(looseArrows(sets(random, 6, 6))).loose !== null) blamed++;
    expect(blamed / 300).toBeLessThanOrEqual(0.08);
    expect(refusalOf(looseArrows(sets(random, 4, 1)))).toBe('too-few-ends');
  });
});

describe('The plan for a numbered set', () => {
  it.each([
    [6, 0.8, [70, 32, 18, 12, 9, 5, 3]],
    [6, 0.9, [87, 39, 23, 15, 11, 6, 4]],
    [12, 0.8, [71, 32, 18, 12, 9, 5, 3]],
    [12, 0.9, [88, 39, 22, 15, 10, 6, 3]],
  ] as const)('for %i arrows and %d takes the ends of the table of offsets (computed independently)', (arrows, power, ends) => {
    const offsets = [0.5, 0.75, 1, 1.25, 1.5, 2, 3];
    expect(offsets.map((offset) => endsForOddArrow(arrows, offset, power))).toEqual(ends);
  });

  it('shows that arrows differ at all in 13, 6 and 2 ends of twelve, 23, 9 and 3 of six (computed independently)', () => {
    expect([0.3, 0.5, 1].map((q) => endsForDifference(12, q, 0.8))).toEqual([13, 6, 2]);
    expect([0.3, 0.5, 1].map((q) => endsForDifference(6, q, 0.8))).toEqual([23, 9, 3]);
  });

  it('shows an arrow of twice the spread among twelve in 8 ends (computed independently with SciPy)', () => {
    expect(endsForLooseArrow(12, 2, 0.8)).toBe(8);
  });

  it('gives none for what never shows, two ends for what always does, and refuses nonsense', () => {
    expect(endsForOddArrow(6, 0, 0.8)).toBeNull();
    expect(endsForOddArrow(6, 1e300, 0.8)).toBe(2);
    expect(() => endsForOddArrow(2, 1, 0.8)).toThrow(RangeError);
    expect(() => endsForOddArrow(6, NaN, 0.8)).toThrow(RangeError);
    expect(() => endsForDifference(6, 0, 0.8)).toThrow(RangeError);
    expect(() => endsForLooseArrow(6, 1, 0.8)).toThrow(RangeError);
    expect(() => endsForLooseArrow(6, 2, 1)).toThrow(RangeError);
  });
});
