import { fQuantileUpper, noncentralFUpperTail } from '../group/index.ts';
import { leastWhole } from '../group/search.ts';

const ALPHA = 0.05;
const POWER = 0.8;
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

/**
 * About how many more arrows settle whether a centre lies off the aim.
 *
 * @equation the least m ≥ 1 for which, with N = n + m: a distance of max(size, matters) is found with 80 %, and one that stays as seen is settled: √(2 F/N) ≤ max(size, matters - size)
 * @param n - n, shots so far, ≥ 2 [-]
 * @param sizeInSigma - distance as seen, per spread of one axis, ≥ 0 [-]
 * @param mattersInSigma - the smallest distance that matters, per spread of one axis, > 0 [-]
 * @returns m, at least 1, at most a million [-]
 * @validity round normal shots; a plan, not a promise; an argument outside throws RangeError
 * @source own derivation
 * @example moreOnAim(6, 1, 1) // 6
 */
export function moreOnAim(n: number, sizeInSigma: number, mattersInSigma: number): number {
  if (!(n >= 2 && sizeInSigma >= 0 && mattersInSigma > 0)) throw new RangeError('Shots and a distance that matters are needed.');
  const sought = Math.max(sizeInSigma, mattersInSigma);
  const settled = Math.max(sizeInSigma, mattersInSigma - sizeInSigma);
  return leastWhole(1, MOST, (m) => {
    const df = 2 * (n + m - 1);
    const critical = fQuantileUpper(ALPHA, 2, df);
    if (2 * critical > (n + m) * settled ** 2) return false;
    return noncentralFUpperTail(critical, 2, df, (n + m) * sought ** 2) >= POWER;
  });
}
