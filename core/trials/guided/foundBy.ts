import { fQuantileUpper, noncentralFUpperTail } from '../../group/index.ts';

const POWER = 0.8;
const ALPHA = 0.05;

/**
 * How many standard errors of its own a difference of one figure must have to be found four times in five.
 *
 * @equation δ with P(F' > F_0.05) = 0.8, F' noncentral with 1 and ν degrees of freedom and λ = δ², by halving
 * @param df - ν, degrees of freedom of the scatter, ≥ 1 [-]
 * @returns δ [-]
 * @validity normal errors; two-sided t at 5 %. Too few degrees of freedom throw RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example Math.round(100 * errorsFound(10)) // 311
 */
export function errorsFound(df: number): number {
  if (!(df >= 1)) throw new RangeError('At least one degree of freedom is needed.');
  const critical = fQuantileUpper(ALPHA, 1, df);
  const power = (delta: number): number => noncentralFUpperTail(critical, 1, df, delta * delta);
  let [low, high] = [0, 4];
  while (power(high) < POWER) [low, high] = [high, 2 * high];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (power(middle) < POWER) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
