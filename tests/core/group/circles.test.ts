import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  centreEllipse,
  chanceInside,
  circleHolding,
  covarianceEllipse,
  figureOfMerit,
  groupCircles,
  groupMeasures,
  lengthOfSpread,
  roundCircle,
  type Scatter,
} from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, factor, group, mirrored, moved, place300, scaled, turned } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

const scatter: fc.Arbitrary<Scatter> = fc
  .record({ a: fc.integer({ min: 1, max: 60 }), b: fc.integer({ min: 1, max: 60 }), offset: place300 })
  .map(({ a, b, offset }) => ({ spread: [a / 1000, b / 1000], offset }));

describe('the chance inside a circle', () => {
  it('grows with the circle, from 0 to 1', () => {
    fc.assert(
      fc.property(scatter, factor, (law, r) => {
        const chances = [0, r / 20, r / 10, r / 5, 5].map((radius) => chanceInside(radius, law));
        expect(chances[0]).toBe(0);
        chances.slice(1).forEach((chance, i) => expect(chance).toBeGreaterThanOrEqual((chances[i] ?? NaN) - 1e-13));
        expect(chances[4]).toBe(1);
      }),
    );
  });

  it('is the same for a mirrored scatter, for axes that are swapped, and in any unit', () => {
    fc.assert(
      fc.property(scatter, factor, (law, by) => {
        const { spread, offset } = law;
        const chance = chanceInside(0.1, law);
        expect(chanceInside(0.1, { spread, offset: { x: -offset.x, y: offset.y } })).toBeCloseTo(chance, 12);
        expect(chanceInside(0.1, { spread: [spread[1], spread[0]], offset: { x: offset.y, y: offset.x } })).toBeCloseTo(
          chance,
          12,
        );
        const other: Scatter = { spread: [spread[0] * by, spread[1] * by], offset: { x: offset.x * by, y: offset.y * by } };
        expect(chanceInside(0.1 * by, other)).toBeCloseTo(chance, 12);
      }),
    );
  });

  it('of round centred scatter is the closed form, known spread or estimated', () => {
    for (const r of [0.01, 0.7, 3, 12]) {
      const round = { spread: [1, 1], offset: { x: 0, y: 0 } } as const;
      expect(chanceInside(r, round)).toBeCloseTo(1 - Math.exp((-r * r) / 2), 13);
      for (const nu of [2, 5.5, 22])
        expect(chanceInside(r, { ...round, degreesOfFreedom: nu })).toBeCloseTo(1 - (1 + (r * r) / nu) ** (-nu / 2), 11);
    }
  });

  it('of a needle is that of a normal law on a line: 68.27 in 100 within one spread (printed tables)', () => {
    expect(chanceInside(1, { spread: [1, 1e-9], offset: { x: 0, y: 0 } })).toBeCloseTo(0.6827, 4);
  });

  it('comes back from the circle that holds it', () => {
    fc.assert(
      fc.property(scatter, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (law, share) => {
        expect(chanceInside(circleHolding(share, law), law)).toBeCloseTo(share, 11);
      }),
    );
  });

  it('is the share of 20,000 drawn arrows, within four standard errors', () => {
    const law: Scatter = { spread: [0.05, 0.02], offset: { x: 0.03, y: -0.04 } };
    const inside = normalShots(randomFrom(5), 20_000, law.spread, law.offset).filter(({ x, y }) => Math.hypot(x, y) < 0.06);
    const chance = chanceInside(0.06, law);
    expect(Math.abs(inside.length / 20_000 - chance)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / 20_000));
  });

  it('is not asked of a spread of nought, a radius below nought or a share outside 0 to 1', () => {
    const round = { spread: [1, 1], offset: { x: 0, y: 0 } } as const;
    expect(() => chanceInside(1, { ...round, spread: [0, 1] })).toThrow(RangeError);
    expect(() => chanceInside(-1, round)).toThrow(RangeError);
    expect(() => chanceInside(1, { ...round, offset: { x: NaN, y: 0 } })).toThrow(RangeError);
    expect(() => roundCircle(1)).toThrow(RangeError);
    expect(() => lengthOfSpread(1, 0, 2)).toThrow(RangeError);
  });
});

describe('the circles of a group', () => {
  it('lie inside their intervals and grow with the share', () => {
    fc.assert(
      fc.property(group(), (points) => {
        const { r50, r95, oval, meanRadius } = valueOf(groupCircles(points));
        for (const { value, interval } of [r50, r95, meanRadius.ofMany, ...(oval === null ? [] : [oval.r50, oval.r95])]) {
          expect(value).toBeGreaterThan(interval[0]);
          expect(value).toBeLessThan(interval[1]);
        }
        expect(r95.value).toBeGreaterThan(r50.value);
      }),
    );
  });

  // Round normal shots: R50 √(2 ln 2), mean radius √(π/2), R95 √(2 ln 20) spreads of one axis (the Rayleigh law, closed forms).
  it('stand in the ratios of the Rayleigh law, figures and intervals alike, so that R50 < mean radius < R95 whatever the group', () => {
    fc.assert(
      fc.property(group(), (points) => {
        const { r50, r95, meanRadius } = valueOf(groupCircles(points));
        const { spread, spreadInterval } = valueOf(groupMeasures(points));
        for (const [{ value, interval }, perSpread] of [
          [r50, Math.sqrt(2 * Math.log(2))],
          [meanRadius.ofMany, Math.sqrt(Math.PI / 2)],
          [r95, Math.sqrt(2 * Math.log(20))],
        ] as const) {
          expect(value / spread).toBeCloseTo(perSpread, 9);
          expect(interval[0] / spreadInterval[0]).toBeCloseTo(perSpread, 9);
          expect(interval[1] / spreadInterval[1]).toBeCloseTo(perSpread, 9);
        }
        expect(r50.value).toBeLessThan(meanRadius.ofMany.value);
        expect(meanRadius.ofMany.value).toBeLessThan(r95.value);
      }),
    );
  });

  it('do not care where the group lies, how it is turned or mirrored, and scale with it', () => {
    fc.assert(
      fc.property(group(3), place300, angle, factor, (points, by, turn, size) => {
        const { r50, r95, meanRadius, oval } = valueOf(groupCircles(points));
        const before = numbersIn({ r50, r95, meanRadius, oval });
        for (const [other, times] of [
          [moved(points, by), 1] as const,
          [turned(points, turn), 1] as const,
          [mirrored(points), 1] as const,
          [scaled(points, size), size] as const,
        ]) {
          const after = valueOf(groupCircles(other));
          const figures = numbersIn({ r50: after.r50, r95: after.r95, meanRadius: after.meanRadius, oval: after.oval });
          figures.forEach((value, i) => expect(value / (times * (before[i] ?? NaN))).toBeCloseTo(1, 6));
        }
      }),
      { numRuns: 40 },
    );
  });

  it('of an exactly round group are the same with and without the oval', () => {
    const square = millimetres([
      [10, 0],
      [0, 10],
      [-10, 0],
      [0, -10],
    ]);
    const { r50, oval } = valueOf(groupCircles(square));
    expect(oval?.r50.value).toBeCloseTo(r50.value, 12);
    expect(oval?.r50.interval[0]).toBeCloseTo(r50.interval[0], 12);
  });

  it('of two shots have no oval, of 21 no extreme spread to read', () => {
    expect(valueOf(groupCircles(normalShots(randomFrom(1), 2, [0.02, 0.02]))).oval).toBeNull();
    expect(valueOf(groupCircles(normalShots(randomFrom(1), 21, [0.02, 0.02]))).extremeSpread).toBeNull();
  });

  it('whatever the shots, are numbers or a sentence', () => {
    fc.assert(
      fc.property(anyShots(), (points) => {
        for (const result of [groupCircles(points), centreEllipse(points)]) {
          if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
          else expect(result.problem.sentence).toMatch(/\.$/);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('are refused for one shot and for one hole', () => {
    expect(refusalOf(groupCircles(millimetres([[1, 1]])))).toBe('one-shot');
    expect(
      refusalOf(
        groupCircles(
          millimetres([
            [1, 1],
            [1, 1],
          ]),
        ),
      ),
    ).toBe('one-hole');
  });

  it('the figure of merit is half of width and height together', () => {
    expect(
      figureOfMerit(
        millimetres([
          [0, 0],
          [30, 5],
          [10, 20],
        ]),
      ),
    ).toBeCloseTo(0.025, 15);
  });
});

describe('the oval of a group', () => {
  it('turns with the group, and keeps its axes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -80, max: 90 }), fc.integer({ min: 2, max: 9 }), (degrees, ratio) => {
        const by = (degrees * Math.PI) / 180;
        const [c, s] = [Math.cos(by), Math.sin(by)];
        const oval = covarianceEllipse(
          { xx: ratio * ratio * c * c + s * s, xy: (ratio * ratio - 1) * c * s, yy: ratio * ratio * s * s + c * c },
          1,
        );
        expect(oval.long).toBeCloseTo(ratio, 10);
        expect(oval.short).toBeCloseTo(1, 9);
        expect(Math.sin(oval.direction - by)).toBeCloseTo(0, 9);
      }),
    );
  });

  it('of three shots is refused below three, and there it is wide: F with 1 degree of freedom is 199.5 (printed tables)', () => {
    const triangle = millimetres([
      [0, 0],
      [20, 0],
      [10, Math.sqrt(300)],
    ]);
    const { long, short } = valueOf(centreEllipse(triangle));
    // Equilateral: S = 100 on both axes; √(100 · 4 · 199.5 / 3).
    expect(long * 1000).toBeCloseTo(Math.sqrt((100 * 4 * 199.5) / 3), 8);
    expect(short * 1000).toBeCloseTo(Math.sqrt((100 * 4 * 199.5) / 3), 8);
    expect(refusalOf(centreEllipse(triangle.slice(0, 2)))).toBe('too-few');
  });
});
