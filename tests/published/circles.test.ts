import { describe, expect, it } from 'vitest';
import {
  chanceInside,
  circleHolding,
  confidenceEllipse,
  expectedMeanRadius,
  roundCircle,
  smallGroups,
  spreadFromExtremeSpread,
  spreadFromFigureOfMerit,
} from '../../core/group/index.ts';
import published from '../../fixtures/published/circles.json';
import small from '../../fixtures/published/smallGroups.json';

const centred = { x: 0, y: 0 };

describe('circles of round and oval scatter (computed independently)', () => {
  it('round: half, 90, 95 and 99 in 100', () => {
    const { r50, r90, r95, r99 } = published.round;
    expect([0.5, 0.9, 0.95, 0.99].map((share) => +roundCircle(share).toFixed(6))).toEqual([r50, r90, r95, r99]);
  });

  it('has nine ovals to go through', () => expect(published.ovalR50).toHaveLength(9));

  it.each(published.ovalR50)('half of an oval of axes 1 to $ratio', ({ ratio, r50 }) => {
    expect(circleHolding(0.5, { spread: [1, ratio], offset: centred })).toBeCloseTo(r50, 4.99);
    expect(circleHolding(0.5, { spread: [ratio, 1], offset: centred })).toBeCloseTo(r50, 4.99);
  });

  it('95 in 100 of an oval of 2 to 1', () => {
    expect(circleHolding(0.95, { spread: [1, 0.5], offset: centred })).toBeCloseTo(published.ovalR95.r95, 5);
  });

  it('a round scatter one spread off the centre, whichever way', () => {
    for (const offset of [
      { x: 1, y: 0 },
      { x: -0.6, y: 0.8 },
    ]) {
      expect(circleHolding(0.5, { spread: [1, 1], offset })).toBeCloseTo(published.offset.r50, 6);
      expect(circleHolding(0.95, { spread: [1, 1], offset })).toBeCloseTo(published.offset.r95, 6);
    }
  });

  it('an oval off the centre: chance inside 5, and the circle of half', () => {
    const { radius, chance, r50 } = published.biased;
    const scatter = { spread: [3, 2], offset: { x: 1, y: 2 } } as const;
    expect(chanceInside(radius, scatter)).toBeCloseTo(chance, 11);
    expect(circleHolding(0.5, scatter)).toBeCloseTo(r50, 8);
  });
});

describe('the squared distance of a place known to .005 (JCGM 101:2008, 9.4; from memory, exact values computed independently)', () => {
  it.each(published.squaredDistance.rows)('$x1 off: the 95 % interval $low to $high holds 95 in 100', ({ x1, low, high }) => {
    const scatter = { spread: [0.005, 0.005], offset: { x: x1, y: 0 } } as const;
    const inside = (square: number): number => chanceInside(Math.sqrt(square * 1e-6), scatter);
    // The ends are known to six figures.
    expect(inside(high) - inside(low)).toBeCloseTo(0.95, 5);
  });

  it.each(published.squaredDistance.rows)('$x1 off: mean $mean and standard deviation $sd', ({ x1, mean, sd }) => {
    const scatter = { spread: [0.005, 0.005], offset: { x: x1, y: 0 } } as const;
    // Mean and second moment by Simpson's rule over the tail: E y = ∫ P(> y) dy, E y² = ∫ 2 y P(> y) dy, with y = r².
    const most = x1 + 0.05;
    const steps = 2000;
    let [first, second] = [0, 0];
    for (let i = 0; i <= steps; i++) {
      const r = (most * i) / steps;
      const weight = (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2) * (1 - chanceInside(r, scatter)) * 2 * r;
      first += weight;
      second += 2 * r * r * weight;
    }
    const unit = most / steps / 3;
    expect(first * unit * 1e6).toBeCloseTo(mean, 3);
    expect(Math.sqrt(second * unit - (first * unit) ** 2) * 1e6).toBeCloseTo(sd, 2.5);
  });
});

describe('the oval of a difference (Johnson and Wichern, 6th edition, example 6.3)', () => {
  it('has half axes 1.15 and .65', () => {
    const { n, first, second, halfAxes, printed } = published.soapEllipse;
    const [xx = NaN, xy = NaN, yy = NaN] = first.map((value, i) => (value + (second[i] ?? NaN)) / 2);
    const [a = NaN, b = NaN] = n;
    const ellipse = confidenceEllipse({ xx, xy, yy }, 1 / a + 1 / b, a + b - 2, 0.05);
    expect([ellipse.long, ellipse.short].map((half) => +half.toFixed(2))).toEqual(printed);
    expect(ellipse.long).toBeCloseTo(halfAxes[0] ?? NaN, 5);
    expect(ellipse.short).toBeCloseTo(halfAxes[1] ?? NaN, 5);
    // The eigenvector of [2 1; 1 5] that belongs to (7 + √13)/2, worked out by hand.
    expect(Math.tan(ellipse.direction)).toBeCloseTo((3 + Math.sqrt(13)) / 2, 12);
  });
});

describe('what small round groups show', () => {
  it('the table runs from 2 to 20 and agrees with the other one at ten sizes (computed independently)', () => {
    expect(smallGroups.map(({ n }) => n)).toEqual(Array.from({ length: 19 }, (_, i) => i + 2));
    expect(small.rows).toHaveLength(10);
    for (const row of small.rows) {
      const ours = smallGroups.find(({ n }) => n === row.n);
      expect(ours?.extremeSpread).toBeCloseTo(row.extremeSpread, 5);
      expect(ours?.range).toBeCloseTo(row.d2, 6);
      expect(expectedMeanRadius(row.n)).toBeCloseTo(row.meanRadius, 6);
    }
  });

  it('the range factors are those of the control-chart table (Montgomery, from memory)', () => {
    expect(small.controlChart.length).toBeGreaterThan(5);
    for (const { n, d2 } of small.controlChart)
      expect(smallGroups.find((row) => row.n === n)?.range.toFixed(3)).toBe(d2.toFixed(3));
  });

  it('an extreme spread at its 2.5 or 97.5 % tail has an end of its interval within 3 % of the true spread (computed independently)', () => {
    expect(published.extremeSpreadTails).toHaveLength(10);
    for (const { n, low, high } of published.extremeSpreadTails) {
      expect(Math.abs((spreadFromExtremeSpread(low, n)?.spreadInterval[1] ?? NaN) - 1)).toBeLessThan(0.03);
      expect(Math.abs((spreadFromExtremeSpread(high, n)?.spreadInterval[0] ?? NaN) - 1)).toBeLessThan(0.03);
    }
  });

  it('for two shots, whose law is known, the interval is exact: σ² in ES²/2 over chi-square with 2 degrees of freedom', () => {
    const [low = NaN, high = NaN] = spreadFromExtremeSpread(0.1, 2)?.spreadInterval ?? [];
    expect(low).toBeCloseTo(0.1 / Math.sqrt(-4 * Math.log(0.025)), 6);
    expect(high).toBeCloseTo(0.1 / Math.sqrt(-4 * Math.log(0.975)), 5);
  });

  it('above 20 shots neither figure is read', () => {
    expect(spreadFromExtremeSpread(0.1, 21)).toBeNull();
    expect(spreadFromFigureOfMerit(0.1, 21)).toBeNull();
  });
});
