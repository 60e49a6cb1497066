import { describe, expect, it } from 'vitest';
import { fitAt, lackOfFit, weightedFit, type WeightedPoint } from '../../core/group/index.ts';
import nist from '../../fixtures/published/nistStatistics.json' with { type: 'json' };
import { valueOf } from '../core/group/shots.ts';

const { norris, pontius } = nist;
const line = norris.x.map((x, i): WeightedPoint => ({ x, y: norris.y[i] ?? NaN, weight: 1 }));
const parabola = pontius.deflection.map((y, i): WeightedPoint => ({
  x: pontius.loadStep * (1 + (i % pontius.steps)),
  y,
  weight: 1,
}));

/** Nine digits of a certified value. */
const expectDigits = (got: number | undefined, certified: number | undefined): void =>
  expect((got ?? NaN) / (certified ?? NaN)).toBeCloseTo(1, 8);

describe('The fit of a walk-back line', () => {
  it('has the certified line of Norris (NIST StRD): coefficients, their errors and the residual', () => {
    expect(line).toHaveLength(36);
    const fit = valueOf(weightedFit(line, 1));
    expectDigits(fit.coefficients[0], norris.intercept);
    expectDigits(fit.coefficients[1], norris.slope);
    fit.errors.forEach((error, i) => expectDigits(error, norris.errors[i]));
    expectDigits(Math.sqrt(fit.variance), norris.residualSd);
    expect(fit.df).toBe(34);
  });

  it('finds no bend in Norris, and where one more point falls (computed independently)', () => {
    const bent = valueOf(weightedFit(line, 2));
    expect((bent.coefficients[2] ?? NaN) / (bent.errors[2] ?? NaN)).toBeCloseTo(norris.computed.curvatureT, 5);
    const [y, low, high] = norris.computed.prediction95At500 as [number, number, number];
    const at = fitAt(valueOf(weightedFit(line, 1)), 500, 1);
    expect(at.y).toBeCloseTo(y, 8);
    expect(at.y - at.pointHalf).toBeCloseTo(low, 8);
    expect(at.y + at.pointHalf).toBeCloseTo(high, 8);
  });

  it('has the certified parabola of Pontius (NIST StRD), whose loads run to three millions', () => {
    expect(parabola).toHaveLength(40);
    const fit = valueOf(weightedFit(parabola, 2));
    fit.coefficients.forEach((b, i) => expectDigits(b, pontius.coefficients[i]));
    fit.errors.forEach((error, i) => expectDigits(error, pontius.errors[i]));
    expectDigits(Math.sqrt(fit.variance), pontius.residualSd);
    expect((fit.coefficients[2] ?? NaN) / (fit.errors[2] ?? NaN)).toBeCloseTo(pontius.computed.curvatureT, 6);
    const [y, low, high] = pontius.computed.prediction95AtMillion as [number, number, number];
    const at = fitAt(fit, 1e6, 1);
    expect([at.y, at.y - at.pointHalf, at.y + at.pointHalf]).toEqual([y, low, high].map((v) => expect.closeTo(v, 11)));
  });

  it('tells by the repeats of Pontius that a line misses and a parabola does not (computed independently)', () => {
    const straight = lackOfFit(parabola, valueOf(weightedFit(parabola, 1)));
    const bent = lackOfFit(parabola, valueOf(weightedFit(parabola, 2)));
    expect(straight?.df).toEqual(pontius.computed.lackOfFitLine.slice(0, 2));
    expect(straight?.f).toBeCloseTo(pontius.computed.lackOfFitLine[2] ?? NaN, 4);
    expect(bent?.df).toEqual(pontius.computed.lackOfFitParabola.slice(0, 2));
    expect(bent?.f).toBeCloseTo(pontius.computed.lackOfFitParabola[2] ?? NaN, 4);
    expect(bent?.p).toBeCloseTo(pontius.computed.lackOfFitParabola[3] ?? NaN, 4);
  });
});
