import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  alongShift,
  dominance,
  dominantShape,
  momentsOf,
  shapeFactor,
  shiftTest,
  shiftTold,
  smallestShiftFound,
  tTwoSided,
  welchTest,
} from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { group, moved } from './arbitraries.ts';
import { normalShots, roundMoments } from './shots.ts';

describe('the default test of two centres', () => {
  it('is shape-corrected Welch, and never finds more than that but with three and three', () => {
    fc.assert(
      fc.property(group(2), group(2), (a, b) => {
        const [first, second] = [momentsOf(a), momentsOf(b)];
        const [test, plain] = [shiftTest(first, second), welchTest(first, second, shapeFactor([first, second]))];
        expect(test.f).toBe(plain.f);
        if (a.length === 3 && b.length === 3) expect(test.shape).toBe(0.5);
        else expect(test.p).toBeGreaterThanOrEqual(plain.p);
      }),
    );
  });

  it('asks along its line for just the distance at which that p is \u03b1', () => {
    fc.assert(
      fc.property(group(3), group(3), (a, b) => {
        const [first, second] = [momentsOf(a), momentsOf(b)];
        const asked = shiftTest(first, second).alongLine(0.05);
        const { weight, error, df } = alongShift(first, second);
        if (asked > 0) expect(weight * tTwoSided(asked / error, df)).toBeCloseTo(0.05, 8);
        else expect(weight).toBeLessThanOrEqual(0.05);
      }),
    );
  });

  it('is not told along a line of which three shots show little: without it one pair in ten would be called moved', () => {
    // A needle of three beside a tight needle of three that lies across it: .11 by Welch alone (100,000 draws, computed independently).
    const random = randomFrom(71);
    let [held, plain] = [0, 0];
    const draws = 4000;
    for (let i = 0; i < draws; i++) {
      const first = momentsOf(normalShots(random, 3, [1, 0.01]));
      const second = momentsOf(normalShots(random, 3, [0.03, 3]));
      if (shiftTest(first, second).p < 0.05) held++;
      if (welchTest(first, second, shapeFactor([first, second])).p < 0.05) plain++;
    }
    expect(plain / draws).toBeGreaterThan(0.09);
    // Standard error 0.004.
    expect(held / draws).toBeLessThan(0.075);
  });
});

describe('what the default test is said to find', () => {
  it('is found four times in five (2000 seeded pairs each, standard error 0.009)', () => {
    const random = randomFrom(72);
    for (const [n1, n2, alpha] of [
      [3, 3, 0.05],
      [6, 4, 0.05],
      [6, 3, 0.025],
      [6, 6, 0.025],
    ] as const) {
      const d = shiftTold(n1, n2, 0.8, alpha) ?? NaN;
      let found = 0;
      for (let i = 0; i < 2000; i++) {
        const pair = [momentsOf(normalShots(random, n1)), momentsOf(normalShots(random, n2, [1, 1], { x: d, y: 0 }))] as const;
        if (shiftTest(...pair).p < alpha) found++;
      }
      expect([n1, n2, alpha, found / 2000 > 0.765, found / 2000 < 0.835]).toEqual([n1, n2, alpha, true, true]);
    }
  });

  it('is more than the best test of round groups finds, the more so the fewer and the more unequal, and comes near it with many', () => {
    const more = (n1: number, n2: number): number => (shiftTold(n1, n2, 0.8, 0.05) ?? NaN) / smallestShiftFound(n1, n2, 0.8);
    expect(
      [more(12, 3), more(6, 3), more(3, 3), more(6, 6), more(72, 72)].every(
        (each, i, all) => each > 1 && each < (all[i - 1] ?? 2),
      ),
    ).toBe(true);
    expect(more(72, 72)).toBeLessThan(1.001);
    expect(shiftTold(2, 12, 0.8, 0.05)).toBeNull();
    expect(() => shiftTold(6, 6, 0.8, 0.1)).toThrow(RangeError);
  });
});

describe('the line of a shift', () => {
  it('is the t test of Welch for two groups of one size, with the degrees of freedom of both (by hand)', () => {
    const { error, df, p } = alongShift(roundMoments(5, 0, 2), roundMoments(5, 3, 2));
    expect(error).toBeCloseTo(Math.sqrt((2 * 4) / 5), 12);
    expect(df).toBeCloseTo(8, 12);
    expect(p).toBeCloseTo(tTwoSided(3 / error, 8), 12);
  });

  it('counts on three shots beside twelve more than they show: u = a (1 + 24/4) and a (1 + 24/121), by hand', () => {
    const share = (7 * 4) / 3 / ((7 * 4) / 3 + ((145 / 121) * 4) / 12);
    expect(alongShift(roundMoments(12, 0, 2), roundMoments(3, 3, 2)).df).toBeCloseTo(
      1 / ((1 - share) ** 2 / 11 + share ** 2 / 2),
      9,
    );
  });

  it('has nothing to say where the centres are one, nor of a shift across groups that are lines', () => {
    const level = { n: 4, centre: { x: 0, y: 0 }, covariance: { xx: 1, xy: 0, yy: 0 } };
    expect(alongShift(level, level).weight).toBe(0);
    expect(alongShift(level, { ...level, centre: { x: 0, y: 1 } })).toMatchObject({ weight: 0, p: 0 });
  });

  it('weighs fully for lines of which one outweighs the other, and not at all for groups that look round', () => {
    const line = (xx: number, x: number) => ({ n: 4, centre: { x, y: 0 }, covariance: { xx, xy: 0, yy: 0 } });
    expect(alongShift(line(1, 0), line(9, 2)).weight).toBe(1);
    expect(alongShift(roundMoments(6, 0, 2), roundMoments(6, 3, 2)).weight).toBe(0);
    expect(alongShift(line(1, 0), line(1, 2)).weight).toBeCloseTo(0.6, 12);
  });
});

describe('which group outweighs', () => {
  it('is 0 for centres that are all as sure, 0.8 for variances of 9 to 1 (by hand), and stays when groups are exchanged or moved', () => {
    expect(dominance([roundMoments(6, 0, 2), roundMoments(6, 5, 2)])).toBeCloseTo(0, 6);
    expect(dominance([roundMoments(6, 0, 1), roundMoments(6, 5, 3)])).toBeCloseTo(0.8, 12);
    fc.assert(
      fc.property(group(3), group(3), (a, b) => {
        const of = (x: typeof a, y: typeof a) => [momentsOf(x), momentsOf(y)];
        expect(dominance(of(b, a))).toBeCloseTo(dominance(of(a, b)), 9);
        expect(dominantShape(of(moved(b, { x: 0.1, y: 0 }), a))).toBeCloseTo(dominantShape(of(a, b)), 6);
      }),
    );
  });

  it('shows its own shape: that of one group is its shape factor, and two shots are a line', () => {
    fc.assert(
      fc.property(group(4), (a) => {
        const one = [momentsOf(a)];
        expect(dominantShape(one)).toBeCloseTo(shapeFactor(one), 9);
      }),
    );
    expect(dominantShape([roundMoments(2, 0, 1)])).toBe(1);
  });
});
