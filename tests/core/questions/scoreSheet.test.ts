import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { face, scoreShot } from '../../../core/group/index.ts';
import type { ArrowScore, FaceId } from '../../../core/model/index.ts';
import { readScores, scoreLines, sheetReading, sheetTotal } from '../../../core/questions/index.ts';

const SHAFT = 0.0029;
const value = fc.oneof(fc.integer({ min: 0, max: 10 }), fc.constant('X' as const));

/** A sheet of arrows at the even quantiles of a round normal spread: r = σ √(-2 ln(1 - p)), the law of Rayleigh. */
function sheetOf(spread: number, count: number, id: FaceId, writesX: boolean): ArrowScore[] {
  return Array.from({ length: count }, (_, i) => {
    const radius = spread * Math.sqrt(-2 * Math.log(1 - (i + 0.5) / count));
    const { points, inner } = scoreShot({ x: radius, y: 0 }, SHAFT, face(id));
    return writesX && inner ? 'X' : points;
  });
}

describe('a score sheet', () => {
  it('is read as it is written, and written as it is read', () => {
    fc.assert(
      fc.property(fc.array(fc.array(value, { minLength: 1, maxLength: 12 }), { minLength: 1, maxLength: 20 }), (ends) => {
        const read = readScores(scoreLines(ends), '122');
        expect(read.ok && read.value).toEqual(ends);
      }),
    );
  });

  it('names line and value of what it cannot read', () => {
    for (const [text, face122, sentence] of [
      ['X 10 9\n8 11 7', '122', /^Line 2 holds “11”: X, 10 down to 1, or M/],
      ['9 4', '40-triple', /^Line 1 holds “4”: X, 10 down to 6, or M/],
      ['9 4.5', '122', /“4\.5”/],
      [Array.from({ length: 25 }, () => '9').join(' '), '122', /^Line 1 holds 25 values: at most 24/],
      ['\n \n', '122', /^Values were expected/],
    ] as const) {
      const read = readScores(text, face122);
      expect(read.ok ? null : read.problem.sentence).toMatch(sentence);
    }
  });

  it('adds up: an X is a ten, M is nought', () => {
    expect(sheetTotal([['X', 10, 9], [0]])).toEqual({ arrows: 4, total: 29, tens: 2, inner: 1, misses: 1 });
  });

  it('gives back a known spread, with and without X, within its interval', () => {
    for (const writesX of [true, false]) {
      for (const spread of [0.02, 0.03, 0.05]) {
        const read = sheetReading([sheetOf(spread, 400, '40', writesX)], '40', 18, SHAFT);
        if (!read.ok) throw new Error(read.problem.sentence);
        expect(read.value.spread.value / spread).toBeCloseTo(1, 1);
        expect(read.value.spread.interval[0]).toBeLessThan(spread);
        expect(read.value.spread.interval[1]).toBeGreaterThan(spread);
        // R50 and R95 of a round normal law: 1.177410 and 2.447747 spreads (the law of Rayleigh).
        expect(read.value.r50.value / read.value.spread.value).toBeCloseTo(1.17741, 5);
        expect(read.value.r95.value / read.value.spread.value).toBeCloseTo(2.447747, 5);
      }
    }
  });

  it('tells the spread closer where the inner ten is written', () => {
    const width = (writesX: boolean) => {
      const read = sheetReading([sheetOf(0.012, 60, '40', writesX)], '40', 18, SHAFT);
      return read.ok ? read.value.spread.interval[1] - read.value.spread.interval[0] : Infinity;
    };
    expect(width(true)).toBeLessThan(width(false));
  });

  it('says of one far miss that it stands apart, and what the sheet tells without it', () => {
    const sheet = sheetOf(0.02, 24, '40', true);
    const [plain, missed] = [sheet, [...sheet, 0]].map((scores) => sheetReading([scores], '40', 18, SHAFT));
    if (plain?.ok !== true || missed?.ok !== true) throw new Error('Two readings were expected.');
    expect(plain.value.apart).toBeNull();
    expect(missed.value.apart?.points).toBe(0);
    expect(missed.value.apart?.meanRadius).toEqual(plain.value.meanRadius);
    expect(missed.value.meanRadius.value).toBeGreaterThan(plain.value.meanRadius.value);
  });

  it('says a bound where every arrow struck the innermost zone', () => {
    const read = sheetReading([['X', 'X', 'X', 'X', 'X', 'X']], '122', 70, SHAFT);
    expect(read.ok ? null : read.problem.code).toBe('all-inside');
  });
});
