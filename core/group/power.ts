import { fQuantileUpper } from './distributions.ts';
import { noncentralFUpperTail } from './noncentralF.ts';
import { leastWhole } from './search.ts';

/** Beyond this many arrows the need grows as one over the square of the shift, to five digits. */
const MOST = 1e6;

function expectPlan(power: number, alpha: number): void {
  if (!(alpha > 0 && power > alpha && power <= 0.9999)) throw new RangeError('0 < alpha < power <= 0.9999 is needed.');
}

/**
 * Chance that a shift between two round groups of one spread is found.
 *
 * @equation P(F' > F_α) with 2 and 2 (n1 + n2 - 2) degrees of freedom and λ = d² n1 n2/(n1 + n2)
 * @param shiftInSigma - d, true shift per spread of one axis, ≥ 0 [-]
 * @param n1 - n1, shots in one group, ≥ 2 [-]
 * @param n2 - n2, shots in the other, ≥ 2 [-]
 * @param alpha - α, false alarms allowed [-]
 * @returns power [-]
 * @validity round normal groups with one spread; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example powerForShift(0, 6, 6, 0.05) // 0.05
 */
export function powerForShift(shiftInSigma: number, n1: number, n2: number, alpha: number): number {
  if (!(n1 >= 2 && n2 >= 2)) throw new RangeError('At least two shots in each group are needed.');
  const df2 = 2 * (n1 + n2 - 2);
  return noncentralFUpperTail(fQuantileUpper(alpha, 2, df2), 2, df2, (shiftInSigma ** 2 * n1 * n2) / (n1 + n2));
}

/**
 * Arrows needed in each of two groups to find a shift.
 *
 * @equation the least n for which the power with n + n arrows reaches the wanted one
 * @param shiftInSigma - d, true shift per spread of one axis, > 0 [-]
 * @param power - the wanted chance of finding it, above α, at most 0.9999 [-]
 * @param alpha - α, false alarms allowed [-]
 * @returns n in each group, at least 2 [-]
 * @validity round normal groups with one spread; beyond a million arrows good to five digits; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example arrowsForShift(1, 0.8, 0.05) // 21
 */
export function arrowsForShift(shiftInSigma: number, power: number, alpha: number): number {
  expectPlan(power, alpha);
  if (!(shiftInSigma > 0)) throw new RangeError('A shift above 0 is needed.');
  const needed = (d: number): number => leastWhole(2, MOST, (n) => powerForShift(d, n, n, alpha) >= power);
  const plain = needed(shiftInSigma);
  if (plain < MOST) return plain;
  const within = Math.max(shiftInSigma, 0.01);
  return Math.ceil(needed(within) * (within / shiftInSigma) ** 2);
}

/**
 * The smallest shift that groups of these sizes find with a wanted chance.
 *
 * @equation d with P(F' > F_α) = power, by halving
 * @param n1 - n1, shots in one group, ≥ 2 [-]
 * @param n2 - n2, shots in the other, ≥ 2 [-]
 * @param power - the wanted chance of finding it, above α, at most 0.9999 [-]
 * @param alpha - α, false alarms allowed; 0.05 when left out [-]
 * @returns d, shift per spread of one axis [-]
 * @validity round normal groups with one spread; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example Math.round(100 * smallestShiftFound(6, 6, 0.8)) // 194
 */
export function smallestShiftFound(n1: number, n2: number, power: number, alpha = 0.05): number {
  expectPlan(power, alpha);
  let low = 0;
  let high = 1;
  while (powerForShift(high, n1, n2, alpha) < power) {
    low = high;
    high *= 2;
  }
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (powerForShift(middle, n1, n2, alpha) < power) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
