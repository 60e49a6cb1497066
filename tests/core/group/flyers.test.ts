import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flyersOf, flyerShare } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, group, moved, place300, scaled, turned } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

const shots = millimetres([
  [-9, 6],
  [4, 11],
  [-14, -3],
  [2, -8],
  [-6, 15],
  [60, 1],
]);
const past = { spread: 0.012, df: 22 };

describe('A flyer', () => {
  it('is judged by the archer’s history, and beside it by the group itself (p computed independently with SciPy 1.17)', () => {
    const found = valueOf(flyersOf(shots, past));
    expect(found.by).toBe('history');
    expect(found.shots.map(({ p }) => p)).toEqual(
      [
        0.3906989583949498, 0.7858609796362769, 0.17633539194502895, 0.537100141349366, 0.334354295852001, 0.00028484361142980914,
      ].map((p) => expect.closeTo(p, 10)),
    );
    expect(found.beside.map(({ p }) => p)).toEqual(
      [
        0.7504560459346554, 0.9329661274797412, 0.565864514837765, 0.8313122472560872, 0.7123150211750902, 0.00044919422674001975,
      ].map((p) => expect.closeTo(p, 10)),
    );
    expect(found.shots.map(({ flyer }) => flyer)).toEqual([false, false, false, false, false, true]);
    expect(found.all.n).toBe(6);
    expect(found.without?.n).toBe(5);
    expect(found.without?.spread ?? NaN).toBeLessThan(found.all.spread);
  });

  it('is never dropped: every shot is in the list and in the first figures, whatever is found', () => {
    fc.assert(
      fc.property(anyShots(), fc.boolean(), (points, known) => {
        const result = flyersOf(points, known ? past : null);
        if (!result.ok) return;
        const { shots: judged, all, without, by } = result.value;
        expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        expect(judged).toHaveLength(points.length);
        expect(all.n).toBe(points.length);
        expect(by).toBe(known ? 'history' : 'these shots');
        const flyers = judged.filter(({ flyer }) => flyer).length;
        if (without !== null) expect(without.n).toBe(points.length - flyers);
        if (flyers === 0) expect(without).toBeNull();
      }),
    );
  });

  it('hides behind a second one in its own group, but not from history', () => {
    const two = millimetres([
      [-9, 6],
      [4, 11],
      [-14, -3],
      [2, -8],
      [70, 1],
      [72, -3],
    ]);
    expect(valueOf(flyersOf(two, null)).shots.some(({ flyer }) => flyer)).toBe(false);
    expect(
      valueOf(flyersOf(two, past))
        .shots.filter(({ flyer }) => flyer)
        .map(({ index }) => index),
    ).toEqual([4, 5]);
  });

  it('stays one when the group is moved or turned, and when history is in the same unit', () => {
    fc.assert(
      fc.property(group(3), place300, angle, (points, by, turn) => {
        const p = (where: typeof points, spread: number) =>
          valueOf(flyersOf(where, { spread, df: 22 })).shots.map((shot) => shot.p);
        const plain = p(points, 0.05);
        expect(p(moved(points, by), 0.05)).toEqual(plain.map((value) => expect.closeTo(value, 8)));
        expect(p(turned(points, turn), 0.05)).toEqual(plain.map((value) => expect.closeTo(value, 8)));
        expect(p(scaled(points, 0.5), 0.025)).toEqual(plain.map((value) => expect.closeTo(value, 8)));
      }),
    );
  });

  it('is cried in about 5 of 100 clean groups of six by their own spread (seeded, 2000 groups)', () => {
    const random = randomFrom(31);
    let cried = 0;
    for (let i = 0; i < 2000; i++) {
      if (valueOf(flyersOf(scaled(normalShots(random, 6), 0.01), null)).shots.some(({ flyer }) => flyer)) cried++;
    }
    expect(cried / 2000).toBeGreaterThan(0.03);
    expect(cried / 2000).toBeLessThan(0.07);
  });

  it('cannot be told of two shots, of one hole, or by a history without a spread', () => {
    expect(refusalOf(flyersOf(shots.slice(0, 2), past))).toBe('too-few');
    expect(refusalOf(flyersOf(shots.slice(0, 1), past))).toBe('one-shot');
    expect(refusalOf(flyersOf([], null))).toBe('no-shots');
    expect(refusalOf(flyersOf([...shots, { x: NaN, y: 0 }], null))).toBe('bad-position');
    expect(refusalOf(flyersOf(shots, { spread: 0, df: 22 }))).toBe('bad-history');
    expect(refusalOf(flyersOf(shots, { spread: 0.01, df: NaN }))).toBe('bad-history');
    expect(() => flyersOf(shots, past, 0)).toThrow(RangeError);
  });
});

describe('The share of squares that makes a flyer', () => {
  it('agrees with the table at 5 and 1 % (computed independently)', () => {
    const five = [
      [3, 0.65556],
      [4, 0.66615],
      [5, 0.62765],
      [6, 0.58155],
      [8, 0.49946],
      [10, 0.4359],
      [12, 0.38677],
    ] as const;
    const one = [
      [3, 0.66444],
      [6, 0.66496],
      [12, 0.46555],
    ] as const;
    for (const [n, share] of five) expect(flyerShare(n, 0.05)).toBeCloseTo(share, 5);
    for (const [n, share] of one) expect(flyerShare(n, 0.01)).toBeCloseTo(share, 5);
  });

  it('is what the judgement by the group itself goes by', () => {
    fc.assert(
      fc.property(group(3), (points) => {
        const { beside } = valueOf(flyersOf(points, null));
        const squares = beside.reduce((sum, { distance }) => sum + distance ** 2, 0);
        const limit = flyerShare(points.length, 0.05);
        for (const { distance, flyer } of beside) {
          const share = distance ** 2 / squares;
          if (Math.abs(share - limit) > 1e-9) expect(flyer).toBe(share > limit);
        }
      }),
    );
    expect(() => flyerShare(2, 0.05)).toThrow(RangeError);
    expect(() => flyerShare(5, 0.6)).toThrow(RangeError);
  });
});
