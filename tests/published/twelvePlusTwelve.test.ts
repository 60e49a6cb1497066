import { describe, expect, it } from 'vitest';
import { groupMeasures, oneSampleT2, sampleOfRows, shapeFactor, shiftOfGroups } from '../../core/group/index.ts';
import { momentsOf } from '../../core/group/moments.ts';
import published from '../../fixtures/published/twelvePlusTwelve.json';
import { millimetres, valueOf } from '../core/group/shots.ts';

const { a, b, oneSample, paired } = published;

describe('two groups of twelve with a correlation of .99: a needle (fuel-additive example, statsmodels test data)', () => {
  it('holds twelve and twelve', () => expect([a.length, b.length]).toEqual([12, 12]));

  it('all 24 against a mean of 21 and 21', () => {
    const test = valueOf(oneSampleT2(sampleOfRows([...a, ...b]), oneSample.expected));
    expect(test.t2 / oneSample.t2).toBeCloseTo(1, 11);
    expect(test.f / oneSample.f).toBeCloseTo(1, 11);
    expect(test.df).toEqual(oneSample.df);
    expect(test.p / oneSample.p).toBeCloseTo(1, 10);
  });

  it('paired differences against none', () => {
    const differences = a.map(([x = NaN, y = NaN], i) => [x - (b[i]?.[0] ?? NaN), y - (b[i]?.[1] ?? NaN)]);
    const test = valueOf(oneSampleT2(sampleOfRows(differences), [0, 0]));
    expect(test.t2).toBeCloseTo(paired.t2, 10);
    expect(test.f).toBeCloseTo(paired.f, 11);
    expect(test.df).toEqual(paired.df);
    expect(test.p).toBeCloseTo(paired.p, 11);
  });

  it('is not taken for round, and its shift is judged with the degrees of freedom of a line', () => {
    const [first, second] = [millimetres(a), millimetres(b)];
    expect(valueOf(groupMeasures(first)).roundness.p).toBeLessThan(1e-6);
    expect(shapeFactor([momentsOf(first), momentsOf(second)])).toBeGreaterThan(0.95);
    const shift = valueOf(shiftOfGroups(first, second));
    expect(shift.df[0]).toBeLessThan(1.06);
    expect(shift.hotelling).not.toBeNull();
  });
});
