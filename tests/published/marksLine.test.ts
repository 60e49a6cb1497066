import { describe, expect, it } from 'vitest';
import { leastSquares, type SquaresFit } from '../../core/aim/index.ts';
import nist from '../../fixtures/published/nistStatistics.json' with { type: 'json' };

type Model = (parameters: readonly number[], x: number) => number;

function fitted(model: Model, x: readonly number[], y: readonly number[], start: readonly number[]): SquaresFit {
  const found = leastSquares({
    misses: (parameters) => x.map((each, i) => model(parameters, each) - (y[i] ?? NaN)),
    start,
    steps: start.map((value) => 1e-5 * Math.max(Math.abs(value), 1e-6)),
  });
  if (found === null) throw new Error('No fit was found.');
  return found;
}

/** s² of the residuals with as many degrees of freedom as points are over. */
const varianceOf = ({ sum, parameters }: SquaresFit, points: number): number => sum / (points - parameters.length);
const errorOf = (fit: SquaresFit, points: number, j: number): number =>
  Math.sqrt(varianceOf(fit, points) * (fit.covariance[j]?.[j] ?? NaN));
/** Standard error of a sum of parameters with the given shares. */
function errorAt(fit: SquaresFit, points: number, shares: readonly number[]): number {
  const sum = fit.covariance.reduce(
    (total, row, i) => total + row.reduce((t, c, j) => t + c * (shares[i] ?? 0) * (shares[j] ?? 0), 0),
    0,
  );
  return Math.sqrt(varianceOf(fit, points) * sum);
}
const expectDigits = (got: number | undefined, certified: number | undefined, digits: number): void =>
  expect((got ?? NaN) / (certified ?? NaN)).toBeCloseTo(1, digits);

const line: Model = ([a = NaN, b = NaN], x) => a + b * x;

describe('The least squares of the sight marks, on a straight line', () => {
  // JCGM 100:2008, H.3: calibration of a thermometer, corrections against t − 20 °C, read at 30 °C beyond the last point.
  it('has intercept, slope, correlation and the correction beyond the points of JCGM 100 H.3', () => {
    const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511].map((each) => each - 20);
    const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
    const fit = fitted(line, t, b, [0, 0]);
    const [intercept = NaN, slope = NaN] = fit.parameters;
    expect(intercept).toBeCloseTo(-0.1712, 4);
    expect(slope).toBeCloseTo(0.00218, 5);
    expect(errorOf(fit, 11, 0)).toBeCloseTo(0.0029, 4);
    expect(errorOf(fit, 11, 1)).toBeCloseTo(0.00067, 5);
    const [first, second] = fit.covariance;
    expect((first?.[1] ?? NaN) / Math.sqrt((first?.[0] ?? NaN) * (second?.[1] ?? NaN))).toBeCloseTo(-0.93, 3);
    expect(intercept + 10 * slope).toBeCloseTo(-0.1494, 4);
    expect(errorAt(fit, 11, [1, 10])).toBeCloseTo(0.0041, 4);
  });

  it('has the certified line of Norris (NIST StRD), and where one more point falls (computed independently)', () => {
    const { x, y, intercept, slope, errors, residualSd, computed } = nist.norris;
    expect(x).toHaveLength(36);
    const fit = fitted(line, x, y, [1, 0.5]);
    expectDigits(fit.parameters[0], intercept, 7);
    expectDigits(fit.parameters[1], slope, 9);
    errors.forEach((error, j) => expectDigits(errorOf(fit, 36, j), error, 8));
    expectDigits(Math.sqrt(varianceOf(fit, 36)), residualSd, 9);
    const [at = NaN, low = NaN, high = NaN] = computed.prediction95At500;
    expect(line(fit.parameters, 500)).toBeCloseTo(at, 6);
    // Half a prediction interval in standard deviations of a new point is Student's t with 34 degrees of freedom: 2.0322 (tables).
    const half = Math.hypot(errorAt(fit, 36, [1, 500]), Math.sqrt(varianceOf(fit, 36)));
    expect((high - low) / 2 / half).toBeCloseTo(2.0322, 4);
  });
});

describe('The least squares of the sight marks, on curves', () => {
  // NIST StRD, DanWood: y = b1 x^b2, both starts.
  it.each([[[1, 5]], [[0.7, 4]]])('has the certified power law of DanWood from %j', (start) => {
    const x = [1.309, 1.471, 1.49, 1.565, 1.611, 1.68];
    const y = [2.138, 3.421, 3.597, 4.34, 4.882, 5.66];
    const fit = fitted(([a = NaN, b = NaN], each) => a * each ** b, x, y, start);
    expectDigits(fit.parameters[0], 0.76886226176, 7);
    expectDigits(fit.parameters[1], 3.8604055871, 7);
    expectDigits(errorOf(fit, 6, 0), 0.01828197386, 6);
    expectDigits(errorOf(fit, 6, 1), 0.051726610913, 6);
    expectDigits(fit.sum, 4.3173084083e-3, 9);
  });

  // NIST StRD, Misra1a: y = b1 (1 − exp(−b2 x)), both starts.
  it.each([[[500, 1e-4]], [[250, 5e-4]]])('has the certified exponential of Misra1a from %j', (start) => {
    const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760];
    const y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78];
    const fit = fitted(([a = NaN, b = NaN], each) => a * -Math.expm1(-b * each), x, y, start);
    expectDigits(fit.parameters[0], 238.94212918, 6);
    expectDigits(fit.parameters[1], 5.5015643181e-4, 6);
    expectDigits(errorOf(fit, 14, 0), 2.7070075241, 5);
    expectDigits(errorOf(fit, 14, 1), 7.2668688436e-6, 5);
    expectDigits(fit.sum, 0.12455138894, 9);
  });
});
