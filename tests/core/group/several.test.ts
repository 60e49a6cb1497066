import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { severalCentres, shiftOfGroups, wilksTest, type Point } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, factor, group, moved, place300, scaled, turned } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

describe('whether several groups have one centre', () => {
  it('is for two groups the shift test, to the last digits', () => {
    fc.assert(
      fc.property(group(), group(), (a, b) => {
        const [several, two] = [valueOf(severalCentres([a, b])), valueOf(shiftOfGroups(a, b))];
        expect(several.f / two.f).toBeCloseTo(1, 9);
        expect(several.df[0]).toBeCloseTo(two.df[0], 9);
        expect(several.df[1] / two.df[1]).toBeCloseTo(1, 9);
        expect(several.verdict === 'differ').toBe(two.verdict === 'real');
      }),
      { numRuns: 60 },
    );
  });

  it('is for round groups of one size and spread the plain one-way test with 2 (g - 1) and 2 (N - g) degrees of freedom', () => {
    const square = millimetres([
      [10, 0],
      [0, 10],
      [-10, 0],
      [0, -10],
    ]);
    const groups = [0, 0.01, 0.03].map((x) => moved(square, { x, y: x / 2 }));
    const { f, df, p, plain, weighted } = valueOf(severalCentres(groups));
    // By hand: centres 0, 10, 30 mm along x and half of that along y; Σ n (x̄ - 13.33)² = 4 · 466.67, times 1.25; s² = 200/3.
    expect(plain.f).toBeCloseTo((4 * 466.6666666667 * 1.25) / 4 / (200 / 3), 8);
    expect(plain.df).toEqual([4, 18]);
    expect(f).toBeCloseTo(plain.f, 10);
    expect(df[0]).toBeCloseTo(4, 10);
    expect(df[1]).toBeCloseTo(18, 10);
    // The weighted test, which thinks less of centres far apart, may hold it back.
    expect(p).toBeGreaterThanOrEqual(plain.p * (1 - 1e-12));
    expect(p).toBeLessThanOrEqual(Math.max(plain.p * (1 + 1e-12), weighted.p));
  });

  it('weighs groups that lie on lines as the analysis of variance of Welch does (scipy 1.17.1, f_oneway with unequal variances)', () => {
    const groups = [
      [12.1, 9.8, 15.3, 11, 8.7, 13.9],
      [14.2, 30.5, 22.8, 5.1, 27.3, 18],
      [19.9, 21.3, 18.7, 22.2, 20.4, 24.1],
    ].map((row) => millimetres(row.map((x) => [x, 0])));
    const { weighted, shape } = valueOf(severalCentres(groups));
    expect(shape).toBe(1);
    expect(weighted.f).toBeCloseTo(24.770346038614214, 9);
    expect(weighted.df[0]).toBeCloseTo(2, 12);
    expect(weighted.p / 0.00023846298888173677).toBeCloseTo(1, 9);
  });

  it.each([
    ['round', [0.02, 0.02]],
    ['ovals of 5 to 1', [0.05, 0.01]],
  ] as const)('is not misled by a loose group of three beside five tight ones of twelve: %s', (_, [sx, sy]) => {
    const random = randomFrom(22);
    const draws = 4000;
    const alarms = Array.from({ length: draws }, () =>
      valueOf(
        severalCentres([
          ...Array.from({ length: 5 }, () => normalShots(random, 12, [sx, sy])),
          normalShots(random, 3, [3 * sx, 3 * sy]),
        ]),
      ),
    ).filter(({ verdict }) => verdict === 'differ').length;
    // Without the weights .085 and .095 (60,000 draws).
    expect(alarms / draws).toBeLessThan(0.078);
  });

  it('does not depend on the order of the groups, on where they lie, on the turn of the face or on the unit', () => {
    fc.assert(
      fc.property(fc.array(group(2, 80), { minLength: 3, maxLength: 5 }), place300, angle, factor, (groups, by, turn, size) => {
        const before = valueOf(severalCentres(groups));
        const changed: ((points: Point[]) => Point[])[] = [(g) => moved(g, by), (g) => turned(g, turn), (g) => scaled(g, size)];
        for (const others of [groups.toReversed(), ...changed.map((change) => groups.map(change))]) {
          const after = valueOf(severalCentres(others));
          expect(after.p).toBeCloseTo(before.p, 7);
          expect(after.plain.p).toBeCloseTo(before.plain.p, 7);
        }
      }),
      { numRuns: 40 },
    );
  });

  it.each([
    ['round', [0.02, 0.02], 4, 6],
    ['ovals of 5 to 1', [0.05, 0.01], 4, 6],
    ['threes', [0.02, 0.02], 3, 3],
  ] as const)('accuses same centres at most a little above 5 times in 100: %s', (_, spread, count, n) => {
    const random = randomFrom(21);
    const draws = 1500;
    const alarms = Array.from({ length: draws }, () =>
      valueOf(severalCentres(Array.from({ length: count }, () => normalShots(random, n, spread)))),
    ).filter(({ verdict }) => verdict === 'differ').length;
    expect(alarms / draws).toBeGreaterThan(0.01);
    expect(alarms / draws).toBeLessThan(0.05 + 4 * Math.sqrt((0.05 * 0.95) / draws));
  });

  it('is told of one group in four that lies five spreads off', () => {
    const random = randomFrom(3);
    const groups = [0, 0, 0.1, 0].map((x) => normalShots(random, 6, [0.02, 0.02], { x, y: 0 }));
    expect(valueOf(severalCentres(groups)).verdict).toBe('differ');
  });

  it('is refused with a sentence, and is never not a number', () => {
    const hole = millimetres([
      [1, 1],
      [1, 1],
    ]);
    expect(refusalOf(severalCentres([hole]))).toBe('too-few-groups');
    expect(refusalOf(severalCentres([hole, hole]))).toBe('one-hole');
    expect(refusalOf(severalCentres([hole, hole.slice(1)]))).toBe('one-shot');
    expect(
      refusalOf(
        severalCentres([
          hole,
          millimetres([
            [1, 1],
            [4000, 1],
          ]),
        ]),
      ),
    ).toBe('bad-position');
    fc.assert(
      fc.property(fc.array(anyShots(), { maxLength: 4 }), (groups) => {
        const result = severalCentres(groups);
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(result.problem.sentence).toMatch(/\.$/);
      }),
    );
  });

  it("has no Wilks' test for shots on one line", () => {
    const line = [0, 1, 3].map((x) => ({ x: x / 100, y: x / 50 }));
    expect(wilksTest([line, moved(line, { x: 0.1, y: 0.2 })])).toBeNull();
  });
});
