import { describe, expect, it } from 'vitest';
import {
  fQuantileUpper,
  oneSampleT2,
  sampleOfRows,
  twoSampleT2KrishnamoorthyYu,
  twoSampleT2Pooled,
  type Sample,
} from '../../core/group/index.ts';
import published from '../../fixtures/published/hotelling.json';
import { millimetres, valueOf } from '../core/group/shots.ts';

interface TwoSummaries {
  n: number[];
  mean: number[][];
  covariance: number[][][];
}
const summaries = ({ n, mean, covariance }: TwoSummaries): [Sample, Sample] => {
  const at = (i: number): Sample => ({ n: n[i] ?? NaN, mean: mean[i] ?? [], covariance: covariance[i] ?? [] });
  return [at(0), at(1)];
};

describe('one-sample T2 (Johnson and Wichern, 6th edition)', () => {
  it('example 5.1: three observations of two figures', () => {
    const { rows, expected, computed } = published.example51;
    const test = valueOf(oneSampleT2(sampleOfRows(rows), expected));
    expect(test.t2).toBeCloseTo(computed.t2, 12);
    expect(test.df).toEqual([2, 1]);
    expect(test.p).toBeCloseTo(computed.p, 11);
  });

  it('example 5.1 comes out the same from places on a face', () => {
    const { rows, expected, computed } = published.example51;
    const test = valueOf(
      oneSampleT2(
        millimetres(rows),
        expected.map((value) => value / 1000),
      ),
    );
    expect(test.t2).toBeCloseTo(computed.t2, 11);
  });

  it('example 5.2: sweat of twenty women, three figures; the book prints 9.74', () => {
    const { rows, expected, printed, computed } = published.sweat;
    const test = valueOf(oneSampleT2(sampleOfRows(rows), expected));
    expect(test.t2.toFixed(2)).toBe(printed.t2.toFixed(2));
    expect(test.t2).toBeCloseTo(computed.t2, 9);
    expect(test.f).toBeCloseTo(computed.f, 10);
    expect(test.p).toBeCloseTo(computed.p, 11);
  });

  it('example 6.1: paired differences of two laboratories; the book prints 13.6', () => {
    const { rows, printed, computed } = published.effluent;
    expect(rows).toHaveLength(11);
    const differences = rows.map(([a = NaN, b = NaN, c = NaN, d = NaN]) => [a - c, b - d]);
    const test = valueOf(oneSampleT2(sampleOfRows(differences), [0, 0]));
    expect(test.t2.toFixed(1)).toBe(printed.t2.toFixed(1));
    expect(test.t2).toBeCloseTo(computed.t2, 9);
    expect(test.p).toBeCloseTo(computed.p, 11);
  });
});

describe('two-sample T2 with one covariance (Johnson and Wichern, 6th edition)', () => {
  it('example 6.3: the half axes 1.15 and .65 of the 95 % ellipse are exactly the differences with p = .05', () => {
    const { n, covariance, printed, computed } = published.soap;
    // Eigenvectors of the pooled covariance [2 1; 1 5], worked out by hand: its eigenvalues are (7 ± √13)/2.
    const eigenvalue = (7 + Math.sqrt(13)) / 2;
    const length = Math.hypot(1, eigenvalue - 2);
    const along: [number, number] = [1 / length, (eigenvalue - 2) / length];
    const across: [number, number] = [-along[1], along[0]];
    for (const [i, [ex, ey]] of [along, across].entries()) {
      const half = computed.halfAxes[i] ?? NaN;
      expect(Math.abs(half - (printed.halfAxes[i] ?? NaN))).toBeLessThan(0.005);
      const test = valueOf(
        twoSampleT2Pooled(
          ...summaries({
            n,
            covariance,
            mean: [
              [0, 0],
              [half * ex, half * ey],
            ],
          }),
        ),
      );
      expect(test.df).toEqual([2, 97]);
      // The half axes are known to five decimals.
      expect(test.p).toBeCloseTo(0.05, 5);
    }
  });

  it('example 6.4: electricity of 45 and 55 homes', () => {
    const test = valueOf(twoSampleT2Pooled(...summaries(published.electricity)));
    expect(test.t2).toBeCloseTo(published.electricity.computed.t2Pooled, 8);
    expect(test.df).toEqual([2, 97]);
  });

  it('James 1954, as in Seber example 3.7', () => {
    const test = valueOf(twoSampleT2Pooled(...summaries(published.james)));
    expect(test.t2).toBeCloseTo(published.james.computed.t2Pooled, 9);
    expect(test.p).toBeCloseTo(published.james.computed.pPooled, 7);
  });
});

describe('two-sample T2 with two covariances, by Krishnamoorthy and Yu 2004', () => {
  // ν counts by n - 1; Johnson and Wichern print 77.6 since they divide by n.
  const nuOf = (df: readonly [number, number]): number => df[1] + df[0] - 1;

  it('electricity of 45 and 55 homes: Johnson and Wichern print T2 15.66 and the critical value 6.32', () => {
    const { printed, computed } = published.electricity;
    const test = valueOf(twoSampleT2KrishnamoorthyYu(...summaries(published.electricity)));
    const nu = nuOf(test.df);
    const critical = ((2 * nu) / (nu - 1)) * fQuantileUpper(0.05, 2, nu - 1);
    expect(test.t2.toFixed(2)).toBe(printed.t2Unequal.toFixed(2));
    expect(test.t2).toBeCloseTo(computed.t2Unequal, 8);
    expect(nu).toBeCloseTo(computed.nu, 8);
    expect(critical.toFixed(2)).toBe(printed.critical5.toFixed(2));
    expect(critical).toBeCloseTo(computed.critical5, 9);
    expect(test.p).toBeCloseTo(computed.p, 13);
  });

  it('James 1954, as in Seber example 3.7 (computed independently)', () => {
    const { computed } = published.james;
    const test = valueOf(twoSampleT2KrishnamoorthyYu(...summaries(published.james)));
    expect(test.t2).toBeCloseTo(computed.t2Unequal, 11);
    expect(nuOf(test.df)).toBeCloseTo(computed.nu, 10);
    expect(test.p).toBeCloseTo(computed.p, 11);
  });
});
