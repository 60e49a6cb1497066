import { fQuantileUpper, noncentralFUpperTail } from '../group/index.ts';
import { leastWhole } from '../group/search.ts';

const ALPHA = 0.05;
const MOST = 1e6;

/**
 * Arrows of one group that show how far its centre lies off the aim.
 *
 * @equation the least n with P(F' > F_0.05) ≥ power: 2 and 2 (n - 1) degrees of freedom, λ = n δ²
 * @param offsetInSigma - δ, true distance of the centre from the aim per spread of one axis, > 0 [-]
 * @param power - the wanted chance, above 0.05 and below 1 [-]
 * @returns n, at least 2, at most a million [-]
 * @validity round normal shots; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example arrowsOnAim(1, 0.8) // 12
 */
export function arrowsOnAim(offsetInSigma: number, power: number): number {
  if (!(offsetInSigma > 0 && power > ALPHA && power < 1)) throw new RangeError('An offset above 0 and a chance are needed.');
  return leastWhole(2, MOST, (n) => {
    const df = 2 * (n - 1);
    return noncentralFUpperTail(fQuantileUpper(ALPHA, 2, df), 2, df, n * offsetInSigma ** 2) >= power;
  });
}
