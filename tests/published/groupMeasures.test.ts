import { describe, expect, it } from 'vitest';
import { axisVariance, c4, groupMeasures, momentsOf, type GroupMeasures, type Point } from '../../core/group/index.ts';
import nist from '../../fixtures/published/nistStatistics.json';
import small from '../../fixtures/published/smallGroups.json';
import { randomFrom } from '../../fixtures/random.ts';
import { normalShots, valueOf } from '../core/group/shots.ts';

const alongX = (values: readonly number[]): Point[] => values.map((x) => ({ x, y: 0 }));
/** Digits on which two figures agree. */
const digits = (value: number, certified: number): number => -Math.log10(Math.max(Math.abs(value / certified - 1), 1e-16));

describe('mean and spread against certified values (NIST Statistical Reference Datasets)', () => {
  it.each(nist.univariate)('$name: mean and standard deviation to 12 digits', ({ values, mean, sd }) => {
    const moments = momentsOf(alongX(values));
    expect(digits(moments.centre.x, mean)).toBeGreaterThan(14);
    expect(digits(Math.sqrt(moments.covariance.xx), sd)).toBeGreaterThan(12);
  });

  // The figures themselves lose digits as they are stored: about 15, 9 and 8 are left of the deviations.
  it.each(nist.alternating)('$name: a spread of .1 far from nought', ({ first, low, high, pairs, mean, sd }) => {
    const values = [first, ...Array.from({ length: pairs }, () => [low, high]).flat()];
    expect(values).toHaveLength(1001);
    const moments = momentsOf(alongX(values));
    expect(digits(moments.centre.x, mean)).toBeGreaterThan(14);
    expect(digits(Math.sqrt(moments.covariance.xx), sd)).toBeGreaterThan(8);
  });

  it('Norris: the line through 36 points by its variances and covariance', () => {
    const { x, y, intercept, slope, residualSd } = nist.norris;
    expect(x).toHaveLength(36);
    const { centre, covariance } = momentsOf(x.map((value, i) => ({ x: value, y: y[i] ?? NaN })));
    const ours = covariance.xy / covariance.xx;
    expect(digits(ours, slope)).toBeGreaterThan(12);
    expect(digits(centre.y - ours * centre.x, intercept)).toBeGreaterThan(10);
    const residual = Math.sqrt(((covariance.yy - covariance.xy * ours) * 35) / 34);
    // A difference of two figures alike to six digits keeps nine.
    expect(digits(residual, residualSd)).toBeGreaterThan(8);
  });

  it('SiRstv: F of five instruments by their means and variances', () => {
    const { y, perGroup, f } = nist.sirstv;
    const groups = Array.from({ length: 5 }, (_, i) => momentsOf(alongX(y.slice(i * perGroup, (i + 1) * perGroup))));
    const between = perGroup * momentsOf(alongX(groups.map((group) => group.centre.x))).covariance.xx;
    const within = groups.reduce((sum, group) => sum + group.covariance.xx, 0) / groups.length;
    expect(digits(between / within, f)).toBeGreaterThan(10);
  });
});

describe('small round groups against Table 1 (computed independently) and control-chart factors (Montgomery, from memory)', () => {
  it('has rows to go through', () => expect(small.rows.length).toBeGreaterThan(8));

  it.each(small.rows)('c4 of $n shots, which have 2(n - 1) degrees of freedom', ({ n, c4: figure }) => {
    expect(c4(2 * (n - 1))).toBeCloseTo(figure, 8);
  });

  it.each(small.controlChart)(
    'c4 of samples of $n, which have n - 1, as in the tables of control charts',
    ({ n, c4: figure }) => {
      expect(Math.abs(c4(n - 1) - figure)).toBeLessThanOrEqual(0.5e-4);
    },
  );

  it.each(small.centreCircle)('95 % circle of the centre of $n shots is $perS of s', ({ n, perS }) => {
    const shots = normalShots(randomFrom(n), n, [0.01, 0.01]);
    const ratio = valueOf(groupMeasures(shots)).centreRadius / Math.sqrt(axisVariance(momentsOf(shots)));
    expect(ratio).toBeCloseTo(perS, 6);
  });
});

describe('the same table by seeded draws, spread of one axis one centimetre', () => {
  const draws = 4000;
  const unit = 0.01;
  const drawn = new Map<number, GroupMeasures[]>();
  const groupsOf = (n: number): GroupMeasures[] => {
    const random = randomFrom(1000 + n);
    const groups =
      drawn.get(n) ?? Array.from({ length: draws }, () => valueOf(groupMeasures(normalShots(random, n, [unit, unit]))));
    drawn.set(n, groups);
    return groups;
  };
  /** Four standard errors: a right program would fail one such check in 16,000; with a fixed seed it fails never or always. */
  const expectMean = (values: readonly number[], expected: number): void => {
    const { centre, covariance } = momentsOf(alongX(values));
    expect(Math.abs(centre.x - expected)).toBeLessThan(4 * Math.sqrt(covariance.xx / draws));
  };
  const few = small.rows.filter(({ n }) => [2, 3, 6, 12].includes(n));

  it('has four sizes to go through', () => expect(few).toHaveLength(4));

  it.each(few)(
    'mean radius of $n shots about their own centre, extreme spread, and a spread without bias',
    ({ n, meanRadius, extremeSpread }) => {
      const groups = groupsOf(n);
      expectMean(
        groups.map((group) => group.meanRadius / unit),
        meanRadius,
      );
      expectMean(
        groups.map((group) => group.extremeSpread / unit),
        extremeSpread,
      );
      expectMean(
        groups.map((group) => group.spread / unit),
        1,
      );
    },
  );

  it.each(few)(
    '95 times in 100 the interval of $n shots holds the true spread, and the circle and the axes the true centre',
    ({ n }) => {
      const groups = groupsOf(n);
      const expectHeld = (holds: (group: GroupMeasures) => boolean): void =>
        expectMean(
          groups.map((group) => (holds(group) ? 1 : 0)),
          0.95,
        );
      expectHeld(({ spreadInterval: [low, high] }) => low <= unit && unit <= high);
      expectHeld(
        ({ meanRadiusInterval: [low, high] }) => low <= unit * Math.sqrt(Math.PI / 2) && unit * Math.sqrt(Math.PI / 2) <= high,
      );
      expectHeld(({ centre, centreRadius }) => Math.hypot(centre.x, centre.y) <= centreRadius);
      expectHeld(({ centre, axisHalf }) => Math.abs(centre.x) <= axisHalf.x);
      expectHeld(({ centre, axisHalf }) => Math.abs(centre.y) <= axisHalf.y);
    },
  );
});
