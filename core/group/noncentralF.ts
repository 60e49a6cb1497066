import gammaln from '@stdlib/math-base-special-gammaln';
import { betaUpperTail, fUpperTail } from './distributions.ts';

/**
 * Upper tail of the noncentral F distribution: the chance that a test finds what is there.
 *
 * @equation P(F' > f) = Σ_j Pois(j; λ/2) Q_j, Q_j = P(Beta(ν1/2 + j, ν2/2) > x), x = ν1 f/(ν2 + ν1 f), Q_{j+1} = Q_j + x^a (1 - x)^b Γ(a + b)/(Γ(a + 1) Γ(b)), a = ν1/2 + j, b = ν2/2
 * @param f - f, where the tail begins, ≥ 0 [-]
 * @param df1 - ν1, numerator degrees of freedom, > 0, may be fractional [-]
 * @param df2 - ν2, denominator degrees of freedom, > 0, may be fractional [-]
 * @param lambda - λ, noncentrality, ≥ 0 and finite [-]
 * @returns P(F' > f) [-]
 * @validity every term is positive, so nothing cancels; ten digits for ν2 up to 1e5, six up to 1e9. An argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example noncentralFUpperTail(19, 2, 2, 0) // 0.05
 */
export function noncentralFUpperTail(f: number, df1: number, df2: number, lambda: number): number {
  if (!(lambda >= 0 && Number.isFinite(lambda))) throw new RangeError('lambda must be 0 or more, and finite.');
  if (lambda === 0 || f <= 0 || f === Infinity) return fUpperTail(f, df1, df2);
  const mean = lambda / 2;
  const sum = df2 + df1 * f;
  const x = (df1 * f) / sum;
  const rest = df2 / sum;
  const b = df2 / 2;
  // Ten standard deviations either side of the Poisson mean leave out less than the last bit.
  const width = 10 * Math.sqrt(mean) + 20;
  const first = Math.max(0, Math.floor(mean - width));
  let a = df1 / 2 + first;
  let tail = betaUpperTail(x, rest, a, b);
  let step = Math.exp(
    a * Math.log(x) + b * (x < rest ? Math.log1p(-x) : Math.log(rest)) + gammaln(a + b) - gammaln(a + 1) - gammaln(b),
  );
  let weight = Math.exp(first * Math.log(mean) - mean - gammaln(first + 1));
  let power = 0;
  for (let j = first; j <= mean + width; j++) {
    power += weight * Math.min(1, tail);
    tail += step;
    step *= (x * (a + b)) / (a + 1);
    a += 1;
    weight *= mean / (j + 1);
  }
  return Math.min(1, power);
}
