import { axisVariance, type Covariance, type Moments } from './moments.ts';
import { ONE_HOLE } from './points.ts';

/** A round group, and one that is a line. */
const ROUND = 0.5;
const LINE = 1;
/** Each group by itself looks this much more oval than all together before that counts: chance alone does as much. */
const CHANCE = 0.1;
/** So few degrees of freedom do not show that ovals lie across each other. */
const FEW = 4;
const WEIGHT = 4;

const clipped = (c: number): number => Math.min(LINE, Math.max(ROUND, c));

/** The two unbiased parts of c, a2 over a1, of a covariance with μ ≥ 2 degrees of freedom, without their common factor. */
function parts({ xx, xy, yy }: Covariance, mu: number): readonly [a2: number, a1: number] {
  const trace = xx + yy;
  const traceOfSquare = xx * xx + 2 * xy * xy + yy * yy;
  return [mu * (traceOfSquare - (trace * trace) / mu), (mu + 1) * trace * trace - 2 * traceOfSquare];
}

/**
 * How far from round the pooled shape of groups is: the share by which their squared distances lose degrees of freedom.
 *
 * @equation P = Σ (n_i - 1) S_i/s_i² / μ, μ = Σ (n_i - 1), s_i² = tr S_i/2; a2 = μ²/((μ - 1)(μ + 2)) [tr P² - (tr P)²/μ], a1 = μ/((μ - 1)(μ + 2)) [(μ + 1)(tr P)² - 2 tr P²]; c = a2/a1, kept in ½ … 1. Ovals that lie across each other look round together: with e the same of each group by itself, c grows by 4 (1 - 4/μ) D (e - c - 0.1), if that is above 0, where D is 0 when the centres are all as sure and 1 when one group's v_i = s_i²/n_i outweighs all others: D² = (g Σ v_i²/(Σ v_i)² - 1)/(g - 1)
 * @param groups - moments of the groups; one that lies in one hole has no shape and is left out [list]
 * @returns c, ½ for round, 1 for a line; 1 when the shots are too few to show a shape [-]
 * @validity bias-corrected for few shots; two shots in all show no shape. The part for ovals that cross is our own, weighed by simulation; it is nought for one group
 * @source brunner-dette-munk-1997
 * @example shapeFactor([{ n: 6, centre: { x: 0, y: 0 }, covariance: { xx: 1, xy: 0, yy: 0 } }]) // 1
 */
export function shapeFactor(groups: readonly Moments[]): number {
  const shaped = groups.filter((group) => axisVariance(group) >= ONE_HOLE ** 2);
  const mu = shaped.reduce((sum, { n }) => sum + n - 1, 0);
  if (mu < 2) return LINE;
  let [xx, xy, yy] = [0, 0, 0];
  for (const group of shaped) {
    const share = (group.n - 1) / mu / axisVariance(group);
    xx += share * group.covariance.xx;
    xy += share * group.covariance.xy;
    yy += share * group.covariance.yy;
  }
  const [a2, a1] = parts({ xx, xy, yy }, mu);
  const pooled = clipped(a2 / a1);
  if (shaped.length < 2 || mu <= FEW) return pooled;
  const hidden = Math.max(0, ownShape(shaped) - pooled - CHANCE);
  return Math.min(LINE, pooled + WEIGHT * (1 - FEW / mu) * dominance(shaped) * hidden);
}

/** c of groups whose ovals may lie each its own way. */
function ownShape(groups: readonly Moments[]): number {
  let [oval, size] = [0, 0];
  for (const group of groups) {
    const mu = group.n - 1;
    if (mu < 2) continue;
    const [a2, a1] = parts(group.covariance, mu);
    const weight = (mu * mu) / ((mu - 1) * (mu + 2)) / axisVariance(group) ** 2;
    oval += weight * a2;
    size += weight * a1;
  }
  return size > 0 ? clipped(oval / size) : ROUND;
}

/**
 * How much one group's centre is less sure than the others'.
 *
 * @equation D² = (g Σ v_i²/(Σ v_i)² - 1)/(g - 1), v_i = s_i²/n_i
 * @param groups - moments of two or more groups, one of them with a spread [list]
 * @returns D, 0 when the centres are all as sure, 1 when one group's v outweighs all others [-]
 * @validity any such groups
 * @source own derivation
 * @example dominance([1, 0].map((xx) => ({ n: 3, centre: { x: 0, y: 0 }, covariance: { xx, xy: 0, yy: xx } }))) // 1
 */
export function dominance(groups: readonly Moments[]): number {
  const variances = groups.map((group) => axisVariance(group) / group.n);
  const total = variances.reduce((sum, variance) => sum + variance, 0);
  const squares = variances.reduce((sum, variance) => sum + (variance / total) ** 2, 0);
  return Math.sqrt(Math.max(0, groups.length * squares - 1) / (groups.length - 1));
}

/**
 * How far from round the groups are each by itself, those counting most whose centres are the least sure.
 *
 * @equation e = Σ a2_i/n_i²/Σ a1_i/n_i², a2 and a1 of each group as in shapeFactor but of S_i itself, kept in ½ … 1; a group of two is a line, both (tr S_i)²
 * @param groups - moments of the groups [list]
 * @returns e, ½ for round, 1 for a line; ½ where nothing scatters [-]
 * @validity noisy for few shots: three of a round group look like an oval of 3 to 1 as often as not
 * @source brunner-dette-munk-1997
 * @example dominantShape([{ n: 2, centre: { x: 0, y: 0 }, covariance: { xx: 1, xy: 0, yy: 0 } }]) // 1
 */
export function dominantShape(groups: readonly Moments[]): number {
  let [oval, size] = [0, 0];
  for (const group of groups) {
    const mu = group.n - 1;
    const trace = 2 * axisVariance(group);
    const [a2, a1] = mu < 2 ? [trace ** 2, trace ** 2] : parts(group.covariance, mu);
    const weight = (mu < 2 ? 1 : mu / ((mu - 1) * (mu + 2))) / group.n ** 2;
    oval += weight * a2;
    size += weight * a1;
  }
  return size > 0 ? clipped(oval / size) : ROUND;
}
