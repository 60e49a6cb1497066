import betainc from '@stdlib/math-base-special-betainc';
import chiSquareQuantileOf from '@stdlib/stats-base-dists-chisquare-quantile';
import fQuantileOf from '@stdlib/stats-base-dists-f-quantile';
import tQuantileOf from '@stdlib/stats-base-dists-t-quantile';

const expectPositive = (name: string, value: number): void => {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} must be positive and finite.`);
};
const expectProbability = (name: string, value: number): void => {
  if (!(value > 0 && value < 1)) throw new RangeError(`${name} must lie between 0 and 1.`);
};

/**
 * Upper tail of the beta distribution, exact for tails far below the rounding of 1 - p.
 *
 * @equation P(B > x) = 1 - I_x(a, b), by whichever of x and 1 - x is the smaller
 * @param x - x, where the tail begins, 0 to 1 [-]
 * @param rest - 1 - x, passed in since it may be far smaller than the rounding of x [-]
 * @param a - a, first shape parameter, > 0 [-]
 * @param b - b, second shape parameter, > 0 [-]
 * @returns P(B > x) [-]
 * @validity a, b up to 1e6 to eleven digits; smaller than 1e-307 comes out as 0
 * @source johnson-kotz-balakrishnan-1995
 * @example betaUpperTail(0.25, 0.75, 1, 1) // 0.75
 */
export function betaUpperTail(x: number, rest: number, a: number, b: number): number {
  return x < rest ? betainc(x, a, b, true, true) : betainc(rest, b, a, true, false);
}

/**
 * Upper tail of the F distribution.
 *
 * @equation P(F > f) = I_{ν2/(ν2 + ν1 f)}(ν2/2, ν1/2); for ν1 = 2 it is (1 + 2 f/ν2)^(-ν2/2)
 * @param f - f, observed ratio; below 0 counts as 0 [-]
 * @param df1 - ν1, numerator degrees of freedom, > 0, may be fractional [-]
 * @param df2 - ν2, denominator degrees of freedom, > 0, may be fractional [-]
 * @returns P(F > f) [-]
 * @validity ν up to 1e6; tails below 1e-307 come out as 0; a NaN or a ν that is not positive throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example fUpperTail(19, 2, 2) // 0.05
 */
export function fUpperTail(f: number, df1: number, df2: number): number {
  expectPositive('df1', df1);
  expectPositive('df2', df2);
  if (Number.isNaN(f)) throw new RangeError('f must be a number.');
  if (f <= 0) return 1;
  if (f === Infinity) return 0;
  if (df1 === 2) return Math.exp((-df2 / 2) * Math.log1p((2 * f) / df2));
  const sum = df2 + df1 * f;
  return betaUpperTail((df1 * f) / sum, df2 / sum, df1 / 2, df2 / 2);
}

/**
 * The value that an F ratio passes with a given small probability.
 *
 * @equation f with P(F > f) = α; for ν1 = 2 it is (ν2/2)(α^(-2/ν2) - 1); else 1 over the lower quantile of F(ν2, ν1), which keeps small α exact
 * @param alpha - α, upper tail, between 0 and 1 [-]
 * @param df1 - ν1, numerator degrees of freedom, > 0, may be fractional [-]
 * @param df2 - ν2, denominator degrees of freedom, > 0, may be fractional [-]
 * @returns f [-]
 * @validity α from 1e-12, ν up to 1e6; an α or a ν outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example fQuantileUpper(0.05, 2, 2) // 19
 */
export function fQuantileUpper(alpha: number, df1: number, df2: number): number {
  expectProbability('alpha', alpha);
  expectPositive('df1', df1);
  expectPositive('df2', df2);
  if (df1 === 2) return (df2 / 2) * Math.expm1((-2 * Math.log(alpha)) / df2);
  return 1 / fQuantileOf(alpha, df2, df1);
}

/**
 * Quantile of Student's t.
 *
 * @equation t with P(T ≤ t) = p
 * @param p - p, lower tail, between 0 and 1 [-]
 * @param df - ν, degrees of freedom, > 0, may be fractional [-]
 * @returns t [-]
 * @validity a p or a ν outside its range throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example tQuantile(0.75, 1) // 1
 */
export function tQuantile(p: number, df: number): number {
  expectProbability('p', p);
  expectPositive('df', df);
  return tQuantileOf(p, df);
}

/**
 * Chance that Student's t falls at least this far from 0 on either side.
 *
 * @equation P(|T| > |t|) = I_{ν/(ν + t²)}(ν/2, 1/2)
 * @param t - t, either sign [-]
 * @param df - ν, degrees of freedom, > 0, may be fractional [-]
 * @returns two-sided tail [-]
 * @validity tails below 1e-307 come out as 0; a NaN or a ν that is not positive throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example tTwoSided(1, 1) // 0.5
 */
export function tTwoSided(t: number, df: number): number {
  return fUpperTail(t * t, 1, df);
}

/** Above this the library's upper quantile goes wrong (2e-4 at 1900 degrees of freedom); the series below is good to 1e-10 from here on. */
const SERIES_FROM = 1000;

/**
 * Quantile of chi-square.
 *
 * @equation x with P(χ² ≤ x) = p; for ν = 2 it is -2 ln(1 - p); above ν = 1000 the Cornish-Fisher series in z to the order ν^(-2)
 * @param p - p, lower tail, between 0 and 1 [-]
 * @param df - ν, degrees of freedom, > 0, may be fractional [-]
 * @returns x [-]
 * @validity ten digits for p from 1e-4 to 0.9999; a p or a ν outside its range throws RangeError
 * @source goldberg-levine-1946
 * @example chiSquareQuantile(0.95, 2) // 5.991464547107979
 */
export function chiSquareQuantile(p: number, df: number): number {
  expectProbability('p', p);
  expectPositive('df', df);
  if (df === 2) return -2 * Math.log1p(-p);
  if (df <= SERIES_FROM) return chiSquareQuantileOf(p, df);
  const z = tQuantileOf(p, 1e12);
  const root = Math.sqrt(2 * df);
  return (
    df +
    z * root +
    (2 / 3) * (z * z - 1) +
    (z ** 3 - 7 * z) / (9 * root) -
    (6 * z ** 4 + 14 * z * z - 32) / (405 * df) +
    (9 * z ** 5 + 256 * z ** 3 - 433 * z) / (4860 * Math.SQRT2 * df ** 1.5) +
    (12 * z ** 6 - 243 * z ** 4 - 923 * z * z + 1472) / (25515 * df * df)
  );
}
