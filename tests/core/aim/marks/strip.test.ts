import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitMarks, type FittedMarks, readingAt, strip, type StripRow } from '../../../../core/aim/index.ts';
import { drawTruths } from '../../../../core/aim/marks/posterior.ts';
import { randomFrom } from '../../../../fixtures/random.ts';
import { refusalOf, valueOf } from '../../group/shots.ts';
import { distances, millimetreScale, targetPriors, trueReading, type Truth, truths } from './anyMarks.ts';

const truth: Truth = { speed: 57, eyeHeight: 0.115, k: 0.0024, sightRadius: 0.845, zero: 12 };
const fitOf = (at: readonly number[], of = truth, scale: FittedMarks['scale'] = millimetreScale) =>
  valueOf(
    fitMarks(
      at.map((distance) => ({ distance, reading: trueReading(of, distance) })),
      scale,
      targetPriors,
    ),
  );
const stripOf = (fit: FittedMarks, seed = 1, draws = 2000): StripRow[] => valueOf(strip(fit, 10, 90, 1, draws, randomFrom(seed)));

describe('A sight strip', () => {
  it('has a row for every metre, its ends about its middle, and the middle of the fit', () => {
    const fit = fitOf([18, 50]);
    const rows = stripOf(fit);
    expect(rows.map(({ distance }) => distance)).toEqual(Array.from({ length: 81 }, (_, i) => 10 + i));
    for (const { distance, reading } of rows) {
      const { value, low, high } = reading ?? { value: NaN, low: NaN, high: NaN };
      expect(value).toBe(readingAt(fit, distance)?.value);
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
    }
  });

  it('is the same for the same seed, and nearly the same for another', () => {
    const fit = fitOf([18, 30, 50, 70]);
    expect(stripOf(fit)).toEqual(stripOf(fit));
    const other = stripOf(fit, 2);
    stripOf(fit).forEach(({ reading }, i) => {
      const half = (reading?.high ?? NaN) - (reading?.value ?? NaN);
      expect(Math.abs((other[i]?.reading?.high ?? NaN) - (reading?.high ?? NaN))).toBeLessThan(0.2 * half);
    });
  });

  // Two ways to one interval: to first order from the covariance, and by drawing truths through the whole model.
  it('has the intervals of the fit where little is unknown', () => {
    fc.assert(
      fc.property(truths, distances, (drawn, at) => {
        const fit = fitOf(at, drawn);
        for (const { distance, reading } of stripOf(fit).filter((_, i) => i % 16 === 0)) {
          const straight = readingAt(fit, distance) ?? { low: NaN, high: NaN };
          const ratio = ((reading?.high ?? NaN) - (reading?.low ?? NaN)) / (straight.high - straight.low);
          expect(Math.abs(ratio - 1)).toBeLessThan(0.2);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('ends where one possible arrow in forty no longer carries', () => {
    const slow: Truth = { ...truth, speed: 31, k: 0.004 };
    const priors = { ...targetPriors, speed: { value: 31, low: 28, high: 34 }, k: { value: 0.004, low: 0.003, high: 0.005 } };
    const marks = [18, 30].map((distance) => ({ distance, reading: trueReading(slow, distance) }));
    const rows = stripOf(valueOf(fitMarks(marks, millimetreScale, priors)));
    const last = rows.findLastIndex(({ reading }) => reading !== null);
    expect(rows[last]?.distance).toBeGreaterThan(60);
    expect(rows[last]?.distance).toBeLessThan(90);
    for (const { reading, bar } of rows.slice(last + 1)) expect([reading, bar]).toEqual([null, 'off']);
    for (const { reading } of rows.slice(0, last))
      expect(Object.values(reading ?? { none: NaN }).every(Number.isFinite)).toBe(true);
  });

  it('says where the bar ends: on it, in doubt, off it', () => {
    const fit = fitOf([18, 50], truth, { ...millimetreScale, lowest: 0, highest: 95 });
    const bars = stripOf(fit).map(({ bar }) => bar);
    expect([...new Set(bars)]).toEqual(['on', 'in doubt', 'off']);
  });

  it('is refused without distances or draws', () => {
    const fit = fitOf([18, 50]);
    const refused = (from: number, to: number, step: number, draws: number) =>
      refusalOf(strip(fit, from, to, step, draws, randomFrom(1)));
    expect(refused(90, 10, 1, 2000)).toBe('distances');
    expect(refused(10, 90, 0, 2000)).toBe('distances');
    expect(refused(10, 90, 0.01, 2000)).toBe('distances');
    expect(refused(NaN, 90, 1, 2000)).toBe('distances');
    expect(refused(10, 90, 1, 3)).toBe('draws');
  });
});

describe('Truths drawn behind marks', () => {
  it('are as many as were asked, pass near every mark, and scatter as the fit says', () => {
    const fit = fitOf([18, 30, 50, 70]);
    const drawn = drawTruths(fit, 4000, randomFrom(3));
    const all = drawn.flatMap((one) => Array.from({ length: one.times }, () => one));
    expect(all).toHaveLength(4000);
    // Few are drawn more than once: the law that proposes them is near the true one.
    expect(drawn.length).toBeGreaterThan(2500);
    const speeds = all.map(({ speed }) => speed);
    const mean = speeds.reduce((sum, speed) => sum + speed, 0) / 4000;
    const sd = Math.sqrt(speeds.reduce((sum, speed) => sum + (speed - mean) ** 2, 0) / 3999);
    expect(Math.abs(mean - fit.figures.speed.value)).toBeLessThan(0.1 * fit.figures.speed.sd);
    expect(sd / fit.figures.speed.sd).toBeGreaterThan(0.93);
    expect(sd / fit.figures.speed.sd).toBeLessThan(1.07);
  });

  it('refuses a number of draws that is none', () => {
    expect(() => drawTruths(fitOf([18, 50]), 0, randomFrom(1))).toThrow(RangeError);
    expect(() => drawTruths(fitOf([18, 50]), NaN, randomFrom(1))).toThrow(RangeError);
    expect(() => drawTruths(fitOf([18, 50]), 5, () => NaN)).toThrow(RangeError);
  });
});
