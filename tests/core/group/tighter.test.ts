import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arrowsForTighter,
  arrowsToTell,
  chanceOfRatio,
  helmertRadii,
  powerForTighter,
  ratioFound,
  ratioTold,
  tighterGroup,
  type Point,
} from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, factor, group, mirrored, moved, place300, scaled, turned } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

const old = millimetres([
  [-9, 6],
  [4, 11],
  [-14, -3],
  [2, -8],
  [-6, 15],
  [9, 1],
]);
const fresh = millimetres([
  [3, -4],
  [4, 2],
  [2, 5],
  [-3, -1],
  [1, 0],
]);

describe('a tighter group', () => {
  it('is told by the t test of Helmert lengths, with the interval that it allows (computed independently with SciPy 1.17)', () => {
    const found = valueOf(tighterGroup(old, fresh));
    expect(found.n).toEqual([6, 5]);
    expect(found.verdict).toBe('tighter');
    expect(found.roundRatio).toBeCloseTo(0.3505816438246363, 12);
    expect(found.ratio).toBeCloseTo(0.3158392593413425, 12);
    expect(found.p).toBeCloseTo(0.00021895737581495688, 12);
    expect(found.interval[0]).toBeCloseTo(0.12755467347481675, 9);
    expect(found.interval[1]).toBeCloseTo(0.5162681633323557, 9);
    expect(found.roundInterval[0]).toBeCloseTo(0.17855956882162372, 9);
    expect(found.roundInterval[1]).toBeCloseTo(0.726569521487278, 9);
    expect(found.chance).toBeCloseTo(0.003345064826323907, 10);
    // What F would find; the deciding test finds less (five and six of 60,000 draws each: 0.19).
    expect(ratioFound(5, 6, 0.8, 0.025)).toBeCloseTo(0.36450647283512766, 9);
    expect(found.finds).toBeLessThan(0.25);
    expect(found.finds).toBeGreaterThan(0.15);
    expect(found.arrows).toBeNull();
  });

  it('is looser when the groups change places', () => {
    expect(valueOf(tighterGroup(fresh, old)).verdict).toBe('looser');
  });

  it('cannot be told from six and six at four fifths of the spread, and would take ninety each', () => {
    const six = normalShots(randomFrom(3), 6).map(small);
    const found = valueOf(tighterGroup(six, scaled(six, 0.8)));
    expect(found.verdict).toBe('cannot tell');
    expect(found.ratio).toBeCloseTo(0.8, 12);
    // F needs 81 each, two-sided (SciPy 1.17); the deciding test 4 (4/π - 1) times as many degrees of freedom, 89, and one more for its t.
    expect(arrowsForTighter(0.8, 0.8, 0.025)).toBe(81);
    expect(found.arrows).toBe(90);
  });

  it('has an interval that leaves out 1 exactly when the verdict is not "cannot tell"', () => {
    fc.assert(
      fc.property(group(3), group(3), (a, b) => {
        const { interval, verdict, ratio, p, arrows } = valueOf(tighterGroup(a, b));
        if (Math.abs(p - 0.05) < 1e-9) return;
        const [low, high] = interval;
        expect(low <= 1 && (high === null || high >= 1)).toBe(verdict === 'cannot tell');
        expect(low <= ratio && (high === null || ratio <= high)).toBe(true);
        if (verdict !== 'cannot tell') expect(arrows).toBeNull();
      }),
    );
  });

  it('stands in the geometric middle of its interval where the two groups scatter alike', () => {
    fc.assert(
      fc.property(group(9), factor, (points, times) => {
        const { ratio, interval } = valueOf(tighterGroup(points, scaled(points, times)));
        const [low, high] = interval;
        expect(ratio).toBeCloseTo(times, 9);
        // Scaled shots scatter more or less by so much, which the pooled error shares out: only shots unscaled are just in the middle.
        const same = valueOf(tighterGroup(points, points)).interval;
        if (same[1] !== null) expect(same[0] * same[1]).toBeCloseTo(1, 9);
        expect(low < ratio && (high === null || ratio < high)).toBe(true);
      }),
    );
  });

  it('is the same wherever both groups lie, however they are turned or mirrored, and in any unit', () => {
    fc.assert(
      fc.property(group(3), group(3), place300, angle, factor, (a, b, by, turn, unit) => {
        const plain = valueOf(tighterGroup(a, b));
        for (const change of [
          (points: readonly Point[]) => moved(points, by),
          (points: readonly Point[]) => turned(points, turn),
          mirrored,
          (points: readonly Point[]) => scaled(points, unit),
        ]) {
          const other = valueOf(tighterGroup(change(a), change(b)));
          expect(other.ratio).toBeCloseTo(plain.ratio, 6);
          expect(other.p).toBeCloseTo(plain.p, 6);
        }
      }),
    );
  });

  it('gives numbers or a refusal for any shots, and says what is missing', () => {
    fc.assert(
      fc.property(anyShots(), anyShots(), (a, b) => {
        const result = tighterGroup(a, b);
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(['too-few', 'one-hole', 'bad-position']).toContain(result.problem.code);
      }),
    );
    expect(refusalOf(tighterGroup(old.slice(0, 2), fresh))).toBe('too-few');
    expect(refusalOf(tighterGroup(old, [fresh[0], fresh[0], fresh[0]] as Point[]))).toBe('one-hole');
    expect(refusalOf(tighterGroup(old, [...fresh, { x: NaN, y: 0 }]))).toBe('bad-position');
    expect(() => tighterGroup(old, fresh, 1)).toThrow(RangeError);
  });

  it('keeps its false alarms near 5 % for round shots and for ovals of two to one (3000 seeded pairs)', () => {
    const random = randomFrom(20);
    for (const spread of [
      [1, 1],
      [1, 0.5],
    ]) {
      let alarms = 0;
      for (let i = 0; i < 3000; i++) {
        const [a, b] = [normalShots(random, 6, spread), normalShots(random, 6, spread)];
        if (valueOf(tighterGroup(a.map(small), b.map(small))).verdict !== 'cannot tell') alarms++;
      }
      expect(alarms / 3000).toBeGreaterThan(0.035);
      expect(alarms / 3000).toBeLessThan(0.065);
    }
  });
});

const small = ({ x, y }: Point): Point => ({ x: x / 100, y: y / 100 });

describe('what the deciding test is said to find', () => {
  it('is found four times in five (2000 seeded pairs each, standard error 0.009)', () => {
    const random = randomFrom(24);
    for (const [n1, n2, alpha] of [
      [6, 6, 0.05],
      [12, 12, 0.05],
      [12, 12, 0.025],
      [12, 6, 0.05],
      [6, 12, 0.05],
    ] as const) {
      const ratio = ratioTold(n1, n2, 0.8, alpha, 2) ?? NaN;
      let seen = 0;
      for (let i = 0; i < 2000; i++) {
        const [before, after] = [normalShots(random, n2).map(small), normalShots(random, n1, [ratio, ratio]).map(small)];
        if (valueOf(tighterGroup(before, after, alpha)).verdict === 'tighter') seen++;
      }
      expect([n1, n2, alpha, seen / 2000 > 0.765, seen / 2000 < 0.835]).toEqual([n1, n2, alpha, true, true]);
    }
  });

  it('is nothing with four and four, which see one ten times as wide less than four times in five (60,000 draws: .73 at most)', () => {
    expect(ratioTold(3, 3, 0.8, 0.05, 2)).toBeNull();
    expect(ratioTold(4, 4, 0.8, 0.05, 2)).toBeNull();
    expect(ratioTold(5, 5, 0.8, 0.025, 2)).toBeNull();
  });

  it('comes near what F finds as the groups grow, by 4 (4/π - 1) times the arrows (variance of the logarithms, closed form)', () => {
    const many = arrowsToTell(0.97, 0.8, 0.05, 2) / arrowsForTighter(0.97, 0.8, 0.025);
    expect(many / (4 * (4 / Math.PI - 1))).toBeCloseTo(1, 2);
    expect(arrowsToTell(1.25, 0.8, 0.05, 2)).toBe(arrowsToTell(0.8, 0.8, 0.05, 2));
    expect(() => ratioTold(2, 6, 0.8, 0.05, 2)).toThrow(RangeError);
    expect(() => ratioTold(6, 6, 0.8, 0.7, 2)).toThrow(RangeError);
    expect(() => arrowsToTell(1, 0.8, 0.05, 2)).toThrow(RangeError);
  });

  it('is milder with more arrows, and takes a grosser difference where only heights count', () => {
    fc.assert(
      fc.property(fc.integer({ min: 7, max: 60 }), (n) => {
        const [some, more, heights] = [
          ratioTold(n, n, 0.8, 0.05, 2),
          ratioTold(n + 1, n + 1, 0.8, 0.05, 2),
          ratioTold(n, n, 0.8, 0.05, 1),
        ];
        expect(more).toBeGreaterThan(some ?? NaN);
        expect(heights).toBeLessThan(some ?? NaN);
      }),
    );
  });
});

describe('Helmert lengths', () => {
  it('have squares that add up to the sum of squares about the centre', () => {
    fc.assert(
      fc.property(group(2), (points) => {
        const n = points.length;
        const [x, y] = [points.reduce((sum, p) => sum + p.x, 0) / n, points.reduce((sum, p) => sum + p.y, 0) / n];
        const squares = points.reduce((sum, p) => sum + (p.x - x) ** 2 + (p.y - y) ** 2, 0);
        expect(helmertRadii(points)).toHaveLength(n - 1);
        expect(helmertRadii(points).reduce((sum, r) => sum + r * r, 0)).toBeCloseTo(squares, 10);
      }),
    );
  });
});

describe('what it takes to find a tighter group', () => {
  it('agrees with the table of arrows in each group, 80 and 90 %, one-sided 5 % (computed independently with SciPy 1.17)', () => {
    const table = [
      [0.3, 4, 5],
      [0.4, 6, 7],
      [0.5, 8, 11],
      [0.6, 14, 18],
      [0.7, 26, 36],
      [0.75, 39, 54],
      [0.8, 64, 88],
      [0.9, 280, 388],
    ] as const;
    for (const [ratio, eighty, ninety] of table) {
      expect([ratio, arrowsForTighter(ratio, 0.8, 0.05), arrowsForTighter(ratio, 0.9, 0.05)]).toEqual([ratio, eighty, ninety]);
    }
  });

  it('is near the planning formula 1 + (1.645 + 0.842)²/(2 ln² r) where the groups are large (normal points from memory)', () => {
    for (const r of [0.8, 0.9, 0.95]) {
      const planned = 1 + (1.644854 + 0.841621) ** 2 / (2 * Math.log(r) ** 2);
      expect(Math.abs(arrowsForTighter(r, 0.8, 0.05) / planned - 1)).toBeLessThan(0.02);
    }
  });

  it('is less than it seems: an unchanged bow shows a ratio below 0.8 in 25, 15 and 3 of a hundred (computed independently)', () => {
    expect(chanceOfRatio(0.8, 6, 6)).toBeCloseTo(0.2465150712354784, 9);
    expect(chanceOfRatio(0.8, 12, 12)).toBeCloseTo(0.1513603185055334, 9);
    expect(chanceOfRatio(0.8, 36, 36)).toBeCloseTo(0.03196333760737597, 9);
  });

  it('finds exactly the ratio whose power is the wanted one', () => {
    expect(ratioFound(6, 6, 0.8, 0.05)).toBeCloseTo(0.44034923226911454, 9);
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 60 }), fc.integer({ min: 2, max: 60 }), (n1, n2) => {
        expect(powerForTighter(ratioFound(n1, n2, 0.8, 0.05), n1, n2, 0.05)).toBeCloseTo(0.8, 8);
        expect(powerForTighter(1, n1, n2, 0.05)).toBeCloseTo(0.05, 8);
      }),
    );
    expect(() => chanceOfRatio(0, 6, 6)).toThrow(RangeError);
    expect(() => powerForTighter(0.5, 1, 6, 0.05)).toThrow(RangeError);
    expect(() => arrowsForTighter(1, 0.8, 0.05)).toThrow(RangeError);
    expect(() => arrowsForTighter(0.5, 0.01, 0.05)).toThrow(RangeError);
  });
});
