import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  oneSampleT2,
  sampleOfRows,
  twoSampleT2KrishnamoorthyYu,
  twoSampleT2Pooled,
  type Point,
} from '../../../core/group/index.ts';
import { group, turned } from './arbitraries.ts';
import { millimetres, refusalOf, valueOf } from './shots.ts';

const tests = [twoSampleT2Pooled, twoSampleT2KrishnamoorthyYu] as const;
const sheared = (points: readonly Point[]): Point[] => points.map(({ x, y }) => ({ x: 3 * x + y, y: 0.2 * y }));

describe('the tests of Hotelling', () => {
  it('give the same T2 under any linear change of both axes', () => {
    fc.assert(
      fc.property(group(6), group(6), (a, b) => {
        for (const test of tests) {
          const [plain, other] = [test(a, b), test(sheared(a), sheared(b))];
          fc.pre(plain.ok && other.ok && plain.value.t2 <= 1e4);
          expect(valueOf(other).t2).toBeCloseTo(valueOf(plain).t2, 6);
          expect(valueOf(other).df[1]).toBeCloseTo(valueOf(plain).df[1], 6);
        }
      }),
    );
  });

  it('agree with each other for two groups of one size and one covariance', () => {
    fc.assert(
      fc.property(group(6), (a) => {
        const b = turned(a, Math.PI).map(({ x, y }) => ({ x: x + 0.01, y }));
        const [pooled, apart] = tests.map((test) => test(a, b));
        if (pooled === undefined || apart === undefined) throw new Error('Two tests were expected.');
        expect(valueOf(apart).t2 / valueOf(pooled).t2).toBeCloseTo(1, 9);
      }),
    );
  });

  it('of one figure are the square of Student’s t', () => {
    // (4, 6, 8, 10) against 5: mean 7, s² 20/3, t = 2/√(20/12), by hand.
    const test = valueOf(oneSampleT2(sampleOfRows([[4], [6], [8], [10]]), [5]));
    expect(test.t2).toBeCloseTo(4 / (20 / 12), 12);
    expect(test.df).toEqual([1, 3]);
  });

  it('refuse too few shots, shots on a line and places that are none', () => {
    const fine = millimetres([
      [0, 0],
      [3, 1],
      [1, 4],
    ]);
    const line = millimetres([
      [0, 0],
      [1, 1],
      [2, 2],
    ]);
    const none = millimetres([
      [0, 0],
      [NaN, 1],
      [1, 4],
    ]);
    for (const test of tests) {
      expect(refusalOf(test(fine, fine.slice(0, 2)))).toBe('too-few');
      expect(refusalOf(test([], fine))).toBe('too-few');
      expect(refusalOf(test(line, line))).toBe('on-a-line');
      expect(refusalOf(test(fine, none))).toBe('on-a-line');
    }
    // Squares too small to hold their digits: a line along x, and a line along y that is as good as none.
    const six = [0, 1, 2, 3, 4, 5];
    const flat = six.map((step) => ({ x: step * 2e-7, y: 0 }));
    const nearlyNothing = six.map((step) => ({ x: 0, y: step * 2.2667780475267014e-162 }));
    for (const test of tests) expect(refusalOf(test(flat, nearlyNothing))).toBe('on-a-line');
    expect(refusalOf(oneSampleT2(fine.slice(0, 2), [0, 0]))).toBe('too-few');
    expect(refusalOf(oneSampleT2(line, [0, 0]))).toBe('on-a-line');
    expect(() => oneSampleT2(fine, [0, 0, 0])).not.toThrow(TypeError);
  });

  it('take a mean of the wrong length for a mistake of the program', () => {
    expect(() =>
      oneSampleT2(
        millimetres([
          [0, 0],
          [3, 1],
          [1, 4],
          [2, 2],
        ]),
        [0, 0, 0],
      ),
    ).toThrow(RangeError);
  });
});
