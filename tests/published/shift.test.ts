import { describe, expect, it } from 'vitest';
import {
  arrowsForShift,
  axisTest,
  momentsOf,
  shapeFactor,
  shiftOfGroups,
  smallestShiftFound,
  welchTest,
  type Moments,
} from '../../core/group/index.ts';
import published from '../../fixtures/published/shift.json';
import { randomFrom } from '../../fixtures/random.ts';
import { millimetres, normalShots, valueOf } from '../core/group/shots.ts';

describe('shape-corrected Welch against vectors computed independently', () => {
  it('has vectors to go through', () => expect(published.vectors).toHaveLength(2));

  it.each(published.vectors)('$title', ({ reference, moved, shape, nu, f, p, radius }) => {
    const shift = valueOf(shiftOfGroups(millimetres(reference), millimetres(moved)));
    expect(shift.shape).toBeCloseTo(shape, 7);
    expect(shift.df[0]).toBeCloseTo(1 / shape, 7);
    expect(shift.df[1]).toBeCloseTo(nu, 7);
    expect(shift.f).toBeCloseTo(f, 7);
    expect(shift.p / p).toBeCloseTo(1, 6);
    expect(shift.radius * 1000).toBeCloseTo(radius, 6);
    expect(shift.oncein * shift.p).toBeCloseTo(1, 12);
  });

  it.each(published.welchAxes)('$axis of the first vector by itself, by the t test of Welch', ({ axis, half, p }) => {
    const { reference = [], moved = [] } = published.vectors[0] ?? {};
    const shift = valueOf(shiftOfGroups(millimetres(reference), millimetres(moved)));
    const which = axis === 'x' ? 'x' : 'y';
    expect(shift.half[which] * 1000).toBeCloseTo(half, 10);
    expect(shift.axisReal[which]).toBe(p < 0.05);
    const test = axisTest(momentsOf(millimetres(reference)), momentsOf(millimetres(moved)), which, 0.05);
    expect((test?.p ?? NaN) / p).toBeCloseTo(1, 10);
  });

  it('without the correction the tall oval would have p .44876', () => {
    const oval = published.vectors[1];
    if (oval === undefined) throw new Error('The second vector is missing.');
    const test = welchTest(momentsOf(millimetres(oval.reference)), momentsOf(millimetres(oval.moved)), 0.5);
    expect(test.p).toBeCloseTo(published.circularWelchOfTheOval, 5);
  });
});

describe('arrows needed in each of two round groups (computed independently)', () => {
  const cells = Object.entries(published.arrowsNeeded).flatMap(([power, row]) =>
    Object.entries(row).map(([shift, arrows]) => ({ power: Number(power) / 100, shift: Number(shift), arrows })),
  );

  it('has sixteen cells', () => expect(cells).toHaveLength(16));

  it.each(cells)('$shift spreads, found $power of the time: $arrows each', ({ power, shift, arrows }) =>
    expect(arrowsForShift(shift, power, 0.05)).toBe(arrows),
  );

  it.each(published.smallestFound80)('%d arrows each find %d spreads 80 % of the time', (n = NaN, shift = NaN) =>
    expect(Math.abs(smallestShiftFound(n, n, 0.8) - shift)).toBeLessThanOrEqual(0.005),
  );
});

describe('false alarms and power by seeded draws (shares computed independently from 60,000 draws)', () => {
  const draws = 20_000;
  const sharePassed = (seed: number, draw: (random: () => number) => [Moments, Moments]): number => {
    const random = randomFrom(seed);
    let found = 0;
    for (let i = 0; i < draws; i++) {
      const [first, second] = draw(random);
      if (welchTest(first, second, shapeFactor([first, second])).p < 0.05) found++;
    }
    return found / draws;
  };
  /** Four standard errors of the difference of two counted shares. */
  const tolerance = (share: number): number => 4 * Math.sqrt(share * (1 - share) * (1 / draws + 1 / 60_000));

  it.each(published.falseAlarms)('$title: about $share of tests without any shift say real', ({ n, axes, share }) => {
    const [n1 = NaN, n2 = NaN] = n;
    const seen = sharePassed(20_261, (random) => [
      momentsOf(normalShots(random, n1, axes[0])),
      momentsOf(normalShots(random, n2, axes[1])),
    ]);
    expect(Math.abs(seen - share)).toBeLessThan(tolerance(share));
  });

  it(`${published.power.title}: found ${published.power.share} of the time`, () => {
    const { n, shift, share } = published.power;
    const [n1 = NaN, n2 = NaN] = n;
    const seen = sharePassed(20_262, (random) => [
      momentsOf(normalShots(random, n1)),
      momentsOf(normalShots(random, n2, [1, 1], { x: shift * Math.SQRT1_2, y: shift * Math.SQRT1_2 })),
    ]);
    expect(Math.abs(seen - share)).toBeLessThan(tolerance(share));
  });
});
