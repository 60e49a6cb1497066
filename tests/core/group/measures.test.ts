import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupMeasures } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, factor, group, mirrored, moved, place300, scaled, turned } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

describe('the figures of a group', () => {
  it('are those worked out by hand for four shots', () => {
    const measures = valueOf(
      groupMeasures(
        millimetres([
          [0, 0],
          [30, 0],
          [0, 40],
          [30, 40],
        ]),
      ),
    );
    expect(measures.n).toBe(4);
    expect(measures.centre.x).toBeCloseTo(0.015, 15);
    expect(measures.centre.y).toBeCloseTo(0.02, 15);
    expect(measures.covariance.xx).toBeCloseTo(0.0003, 15);
    expect(measures.covariance.yy).toBeCloseTo((4 * 0.02 ** 2) / 3, 15);
    expect(measures.covariance.xy).toBeCloseTo(0, 15);
    expect(measures.meanRadius).toBeCloseTo(0.025, 15);
    expect(measures.extremeSpread).toBeCloseTo(0.05, 15);
    expect(measures.degreesOfFreedom).toBe(6);
    expect(measures.roundness.ratio).toBeCloseTo(0.75, 12);
    // t with 3 degrees of freedom, 97.5 %: 3.182 (printed tables of t).
    expect(measures.axisHalf.x).toBeCloseTo((3.182 * Math.sqrt(0.0003)) / 2, 5);
  });

  it('for two shots put the spread at half their distance over c4, and say nothing of the shape', () => {
    const measures = valueOf(
      groupMeasures(
        millimetres([
          [0, 0],
          [0, 20],
        ]),
      ),
    );
    // c4 of two degrees of freedom is √π/2 (Montgomery, appendix VI).
    expect(measures.spread).toBeCloseTo(0.01 / (Math.sqrt(Math.PI) / 2), 14);
    expect(measures.roundness).toEqual({ ratio: 0, p: 1 });
  });

  it('do not change when the shots are put in another order', () => {
    fc.assert(
      fc.property(group(), (points) => {
        const [there, back] = [points, points.toReversed()].map((shots) => numbersIn(valueOf(groupMeasures(shots))));
        there?.forEach((value, i) => expect(back?.[i]).toBeCloseTo(value, 12));
      }),
    );
  });

  it('move with the group and otherwise stay', () => {
    fc.assert(
      fc.property(group(), place300, (points, by) => {
        const [before, after] = [valueOf(groupMeasures(points)), valueOf(groupMeasures(moved(points, by)))];
        expect(after.centre.x).toBeCloseTo(before.centre.x + by.x, 12);
        expect(after.centre.y).toBeCloseTo(before.centre.y + by.y, 12);
        const centreless = (measures: typeof before): number[] => numbersIn({ ...measures, centre: null, roundness: null });
        // The root of a rounding: two shots have no short axis at all.
        expect(after.roundness.ratio).toBeCloseTo(before.roundness.ratio, 6);
        centreless(before).forEach((value, i) => expect(centreless(after)[i]).toBeCloseTo(value, 9));
      }),
    );
  });

  it('that have no direction stay when the group is turned or mirrored', () => {
    fc.assert(
      fc.property(group(), angle, (points, by) => {
        const before = valueOf(groupMeasures(points));
        for (const other of [turned(points, by), mirrored(points)]) {
          const after = valueOf(groupMeasures(other));
          for (const key of ['spread', 'meanRadius', 'meanRadiusOfMany', 'extremeSpread', 'centreRadius'] as const)
            expect(after[key]).toBeCloseTo(before[key], 12);
          expect(after.roundness.ratio).toBeCloseTo(before.roundness.ratio, 6);
          expect(after.covariance.xx + after.covariance.yy).toBeCloseTo(before.covariance.xx + before.covariance.yy, 12);
        }
      }),
    );
  });

  it('scale with the group, so that they mean the same in any unit', () => {
    fc.assert(
      fc.property(group(), factor, (points, by) => {
        const [before, after] = [valueOf(groupMeasures(points)), valueOf(groupMeasures(scaled(points, by)))];
        for (const key of ['spread', 'meanRadius', 'meanRadiusOfMany', 'extremeSpread', 'centreRadius'] as const) {
          expect(after[key] / before[key]).toBeCloseTo(by, 9);
        }
        expect(after.covariance.xy).toBeCloseTo(before.covariance.xy * by * by, 12);
        expect(after.roundness.p).toBeCloseTo(before.roundness.p, 9);
      }),
    );
  });

  it('keep the mean radius at or below the extreme spread, and the spread and the mean radius of many inside their intervals', () => {
    fc.assert(
      fc.property(group(), (points) => {
        const { meanRadius, extremeSpread, spread, spreadInterval, meanRadiusOfMany, meanRadiusInterval } = valueOf(
          groupMeasures(points),
        );
        expect(meanRadius).toBeLessThanOrEqual(extremeSpread);
        expect(spreadInterval[0]).toBeLessThan(spread);
        expect(spread).toBeLessThan(spreadInterval[1]);
        expect(meanRadiusInterval[0]).toBeLessThan(meanRadiusOfMany);
        expect(meanRadiusOfMany).toBeLessThan(meanRadiusInterval[1]);
      }),
    );
  });

  it('see an oval of 5 to 1 in twelve shots', () => {
    expect(valueOf(groupMeasures(normalShots(randomFrom(3), 12, [0.05, 0.01]))).roundness.p).toBeLessThan(0.05);
  });

  it('of 100,000 shots are numbers, with a spread within a hundredth of the true one', () => {
    const measures = valueOf(groupMeasures(normalShots(randomFrom(4), 100_000, [0.02, 0.02])));
    expect(numbersIn(measures).every(Number.isFinite)).toBe(true);
    expect(measures.spread / 0.02).toBeCloseTo(1, 2);
    expect(measures.spreadInterval[1] / measures.spreadInterval[0]).toBeLessThan(1.01);
  });
});

describe('groups that have no figures are refused with a sentence', () => {
  it.each([
    ['no shots', [], 'no-shots', 'at least two shots'],
    ['one shot', [[1, 1]], 'one-shot', 'one more shot'],
    [
      'one hole',
      [
        [1, 1],
        [1, 1],
        [1, 1],
      ],
      'one-hole',
      'shoot more',
    ],
    [
      'a place that is not a number',
      [
        [1, 1],
        [NaN, 1],
      ],
      'bad-position',
      'Shot 2',
    ],
    [
      'an infinite place',
      [
        [-Infinity, 1],
        [2, 1],
      ],
      'bad-position',
      'Shot 1',
    ],
    [
      'millimetres taken for metres',
      [
        [10, 12],
        [4000, 3],
      ],
      'bad-position',
      'within 3 m',
    ],
  ])('%s', (_, rows, code, words) => {
    const result = groupMeasures(millimetres(rows));
    expect(refusalOf(result)).toBe(code);
    expect(result.ok ? '' : result.problem.sentence).toContain(words);
  });

  it('and whatever the shots, no figure is ever not a number', () => {
    fc.assert(
      fc.property(anyShots(), (points) => {
        const result = groupMeasures(points);
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(result.problem.sentence).toMatch(/\.$/);
      }),
      { numRuns: 300 },
    );
  });
});
