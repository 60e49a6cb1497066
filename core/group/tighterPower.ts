import { fQuantileUpper, fUpperTail } from './distributions.ts';
import { leastWhole } from './search.ts';

const MOST = 1e6;

function expectGroups(n1: number, n2: number): readonly [number, number] {
  if (!(n1 >= 2 && n2 >= 2)) throw new RangeError('At least two shots in each group are needed.');
  return [2 * (n1 - 1), 2 * (n2 - 1)];
}

/** The value that F falls short of with probability p. */
const lowerQuantile = (p: number, df1: number, df2: number): number => 1 / fQuantileUpper(p, df2, df1);

/**
 * Chance that an unchanged bow shows a new group at most so large, beside the old one.
 *
 * @equation P(F ≤ q²) with 2 (n1 - 1) and 2 (n2 - 1) degrees of freedom
 * @param seenRatio - q, new spread over old as seen, > 0 [-]
 * @param n1 - n1, shots in the new group, ≥ 2 [-]
 * @param n2 - n2, shots in the old, ≥ 2 [-]
 * @returns the chance [-]
 * @validity round normal groups; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example chanceOfRatio(1, 6, 6) // 0.5
 */
export function chanceOfRatio(seenRatio: number, n1: number, n2: number): number {
  const [df1, df2] = expectGroups(n1, n2);
  if (!(seenRatio > 0)) throw new RangeError('A ratio above 0 is needed.');
  return fUpperTail(seenRatio ** -2, df2, df1);
}

/**
 * Chance that a truly tighter group is found to be one, by the best test there is for round groups.
 *
 * @equation P(F < F_α/r²), F_α the lower α point, with 2 (n1 - 1) and 2 (n2 - 1) degrees of freedom
 * @param ratio - r, true new spread over old, > 0 [-]
 * @param n1 - n1, shots in the new group, ≥ 2 [-]
 * @param n2 - n2, shots in the old, ≥ 2 [-]
 * @param alpha - α, one-sided, false alarms allowed [-]
 * @returns power [-]
 * @validity round normal groups; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example powerForTighter(1, 6, 6, 0.05) // 0.05
 */
export function powerForTighter(ratio: number, n1: number, n2: number, alpha: number): number {
  const [df1, df2] = expectGroups(n1, n2);
  return chanceOfRatio(Math.sqrt(lowerQuantile(alpha, df1, df2)) / ratio, n1, n2);
}

/**
 * The mildest tightening that groups of these sizes find with a wanted chance.
 *
 * @equation r = √(F_α/F_power), lower points with 2 (n1 - 1) and 2 (n2 - 1) degrees of freedom
 * @param n1 - n1, shots in the new group, ≥ 2 [-]
 * @param n2 - n2, shots in the old, ≥ 2 [-]
 * @param power - the wanted chance, above α [-]
 * @param alpha - α, one-sided [-]
 * @returns r, true new spread over old, below 1 [-]
 * @validity round normal groups; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example Math.round(100 * ratioFound(6, 6, 0.8, 0.05)) // 44
 */
export function ratioFound(n1: number, n2: number, power: number, alpha: number): number {
  const [df1, df2] = expectGroups(n1, n2);
  return Math.sqrt(lowerQuantile(alpha, df1, df2) / lowerQuantile(power, df1, df2));
}

/**
 * Arrows needed in each of two groups to find a change of spread.
 *
 * @equation the least n whose power reaches the wanted one; about 1 + (z_α + z_β)²/(2 ln² r)
 * @param ratio - r, one true spread over the other, > 0 and not 1 [-]
 * @param power - the wanted chance of finding it, above α [-]
 * @param alpha - α, one-sided [-]
 * @returns n in each group, at least 2 and at most a million [-]
 * @validity round normal groups; a ratio and its inverse need the same; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example arrowsForTighter(0.8, 0.8, 0.05) // 64
 */
export function arrowsForTighter(ratio: number, power: number, alpha: number): number {
  if (!(ratio > 0 && ratio !== 1)) throw new RangeError('A ratio above 0 that is not 1 is needed.');
  if (!(alpha > 0 && power > alpha && power < 1)) throw new RangeError('0 < alpha < power < 1 is needed.');
  return leastWhole(2, MOST, (n) => powerForTighter(Math.min(ratio, 1 / ratio), n, n, alpha) >= power);
}
