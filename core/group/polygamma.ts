/** From here on the series are good to the last digits. */
const SERIES_FROM = 12;

/**
 * Digamma function, the slope of ln Γ.
 *
 * @equation ψ(x) = ψ(x + 1) - 1/x up to x ≥ 12, there ln x - 1/(2x) - 1/(12x²) + 1/(120x⁴) - 1/(252x⁶) + 1/(240x⁸) - 1/(132x¹⁰)
 * @param x - x, > 0 [-]
 * @returns ψ(x) [-]
 * @validity thirteen digits; an x that is not positive throws RangeError
 * @source abramowitz-stegun-1964
 * @example digamma(1) // -0.5772156649015329
 */
export function digamma(x: number): number {
  expectPositive(x);
  let [at, sum] = [x, 0];
  for (; at < SERIES_FROM; at += 1) sum -= 1 / at;
  const z = 1 / (at * at);
  return sum + Math.log(at) - 1 / (2 * at) - z * (1 / 12 - z * (1 / 120 - z * (1 / 252 - z * (1 / 240 - z / 132))));
}

/**
 * Trigamma function, the slope of digamma.
 *
 * @equation ψ'(x) = ψ'(x + 1) + 1/x² up to x ≥ 12, there 1/x + 1/(2x²) + 1/(6x³) - 1/(30x⁵) + 1/(42x⁷) - 1/(30x⁹) + 5/(66x¹¹)
 * @param x - x, > 0 [-]
 * @returns ψ'(x) [-]
 * @validity thirteen digits; an x that is not positive throws RangeError
 * @source abramowitz-stegun-1964
 * @example trigamma(1) // 1.6449340668482264
 */
export function trigamma(x: number): number {
  expectPositive(x);
  let [at, sum] = [x, 0];
  for (; at < SERIES_FROM; at += 1) sum += 1 / (at * at);
  const z = 1 / (at * at);
  return sum + (1 + 1 / (2 * at) + z * (1 / 6 - z * (1 / 30 - z * (1 / 42 - z * (1 / 30 - (5 * z) / 66))))) / at;
}

function expectPositive(x: number): void {
  if (!(x > 0 && x < Infinity)) throw new RangeError('A figure above 0 is needed.');
}
