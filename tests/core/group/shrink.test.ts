import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digamma, drawnSpread, groupMeasures, nextArrowCircle, priorFromGroups, trigamma } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { anyShots, group, moved, place300 } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

const prior = { variance: 0.0004, degreesOfFreedom: 9 };

describe('digamma and trigamma', () => {
  it('have their closed values at 1, ½ and ¼ (Abramowitz and Stegun 6.3 and 6.4, from memory)', () => {
    const euler = 0.5772156649015329;
    expect(digamma(1)).toBeCloseTo(-euler, 13);
    expect(digamma(0.5)).toBeCloseTo(-euler - 2 * Math.LN2, 12);
    expect(digamma(0.25)).toBeCloseTo(-euler - Math.PI / 2 - 3 * Math.LN2, 12);
    expect(trigamma(1)).toBeCloseTo(Math.PI ** 2 / 6, 12);
    expect(trigamma(0.5)).toBeCloseTo(Math.PI ** 2 / 2, 12);
    expect(() => digamma(0)).toThrow(RangeError);
  });

  it('step by 1/x and by 1/x²', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 60, noNaN: true }), (x) => {
        expect(digamma(x + 1) - digamma(x)).toBeCloseTo(1 / x, 11);
        expect(trigamma(x) - trigamma(x + 1)).toBeCloseTo(1 / (x * x), 10);
      }),
    );
  });
});

describe('the usual spread of past groups', () => {
  it('comes back from 300 groups drawn with it: 12 degrees of freedom about 20 mm', () => {
    const random = randomFrom(17);
    // ν0 s0²/χ²: the chi-square of 12 degrees of freedom is the sum of squares of six pairs of normal numbers.
    const groups = Array.from({ length: 300 }, () => {
      const chi = normalShots(random, 6).reduce((sum, { x, y }) => sum + x * x + y * y, 0);
      const spread = 0.02 * Math.sqrt(12 / chi);
      const { covariance, degreesOfFreedom } = valueOf(groupMeasures(normalShots(random, 6, [spread, spread])));
      return { variance: (covariance.xx + covariance.yy) / 2, degreesOfFreedom };
    });
    const usual = valueOf(priorFromGroups(groups));
    expect(usual.degreesOfFreedom).toBeGreaterThan(8);
    expect(usual.degreesOfFreedom).toBeLessThan(18);
    expect(Math.sqrt(usual.variance) / 0.02).toBeCloseTo(1, 1);
  });

  it('scales with the unit and not its weight', () => {
    const past = [60, 310, 141, 99].map((variance) => ({ variance, degreesOfFreedom: 4 }));
    const [a, b] = [past, past.map((g) => ({ ...g, variance: g.variance * 7 }))].map((groups) =>
      valueOf(priorFromGroups(groups)),
    );
    expect((b?.variance ?? NaN) / (a?.variance ?? NaN)).toBeCloseTo(7, 8);
    expect(b?.degreesOfFreedom).toBeCloseTo(a?.degreesOfFreedom ?? NaN, 6);
  });

  it('is refused for two groups and for one without spread', () => {
    const one = { variance: 1, degreesOfFreedom: 10 };
    expect(refusalOf(priorFromGroups([one, one]))).toBe('too-few-groups');
    expect(refusalOf(priorFromGroups([one, one, { ...one, variance: 0 }]))).toBe('bad-spread');
  });
});

describe('a spread drawn toward the past', () => {
  it('lies between past and shots, keeps the two apart, and knows more than either', () => {
    fc.assert(
      fc.property(group(2, 100), (points) => {
        const { variance } = prior;
        const drawn = valueOf(drawnSpread(points, prior));
        const { covariance } = valueOf(groupMeasures(points));
        const own = (covariance.xx + covariance.yy) / 2;
        // The centre's circle is that of s² = (ν0 s0² + SS)/ν, which is a mean of both.
        const pooled = (9 * variance + 2 * (points.length - 1) * own) / (9 + 2 * (points.length - 1));
        expect(pooled).toBeGreaterThanOrEqual(Math.min(own, variance) * (1 - 1e-12));
        expect(pooled).toBeLessThanOrEqual(Math.max(own, variance) * (1 + 1e-12));
        expect(drawn.degreesOfFreedom).toEqual({
          prior: 9,
          shots: 2 * (points.length - 1),
          together: 9 + 2 * (points.length - 1),
        });
        const [low, high] = drawn.together.interval;
        const [priorLow, priorHigh] = drawn.prior.interval;
        expect(high / low).toBeLessThan(priorHigh / priorLow);
        expect(drawn.nextArrow / drawn.centreRadius).toBeCloseTo(Math.sqrt(points.length + 1), 10);
      }),
    );
  });

  it('of a single shot is the past alone: F(2, 9) at 5 % is 4.26 (printed tables)', () => {
    const drawn = valueOf(drawnSpread(millimetres([[5, 5]]), prior));
    expect(drawn.shots).toBeNull();
    expect(drawn.centreRadius).toBeCloseTo(Math.sqrt(2 * 4.26 * prior.variance), 4);
    expect(drawn.together).toEqual(drawn.prior);
  });

  it('does not care where the group lies', () => {
    fc.assert(
      fc.property(group(), place300, (points, by) => {
        expect(valueOf(drawnSpread(moved(points, by), prior)).nextArrow).toBeCloseTo(
          valueOf(drawnSpread(points, prior)).nextArrow,
          10,
        );
      }),
    );
  });

  it('catches the next arrow 95 times in 100, for spreads that come from that past', () => {
    const random = randomFrom(23);
    const draws = 2000;
    const caught = Array.from({ length: draws }, () => {
      const chi = normalShots(random, 6).reduce((sum, { x, y }) => sum + x * x + y * y, 0);
      const spread = Math.sqrt((12 * prior.variance) / chi);
      const [next, ...shots] = normalShots(random, 4, [spread, spread]);
      const { nextArrow } = valueOf(drawnSpread(shots, { ...prior, degreesOfFreedom: 12 }));
      const centre = { x: shots.reduce((sum, p) => sum + p.x, 0) / 3, y: shots.reduce((sum, p) => sum + p.y, 0) / 3 };
      return Math.hypot((next?.x ?? NaN) - centre.x, (next?.y ?? NaN) - centre.y) < nextArrow;
    }).filter(Boolean).length;
    expect(Math.abs(caught / draws - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / draws));
  });

  it('is refused with a sentence, and is never not a number', () => {
    expect(refusalOf(drawnSpread([], prior))).toBe('no-shots');
    expect(refusalOf(drawnSpread(millimetres([[5, 5]]), { variance: 0, degreesOfFreedom: 9 }))).toBe('bad-prior');
    expect(refusalOf(drawnSpread(millimetres([[5, 5]]), { variance: 1, degreesOfFreedom: 25 }))).toBe('bad-prior');
    expect(() => nextArrowCircle(prior, 0, 0.95)).toThrow(RangeError);
    fc.assert(
      fc.property(anyShots(), (points) => {
        const result = drawnSpread(points, prior);
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(result.problem.sentence).toMatch(/\.$/);
      }),
    );
  });
});
