import { crossing } from '../flight/root.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { lengthOfSpread, type Length } from './circles.ts';
import { fQuantileUpper } from './distributions.ts';
import { axisVariance, momentsOf } from './moments.ts';
import { checkedPoints, type Point } from './points.ts';
import { digamma, trigamma } from './polygamma.ts';

/** A variance of one axis [m²] and the degrees of freedom it rests on. */
export interface SpreadBasis {
  readonly variance: number;
  readonly degreesOfFreedom: number;
}

/** What an archer's past groups say of the spread before the new shots are seen. */
export interface SpreadPrior extends SpreadBasis {
  readonly groups: number;
  /** The past groups differed so little that the prior would have drowned new shots; its weight was held back. */
  readonly capped: boolean;
}

/** Spread of a new group drawn toward the archer's past. Prior and shots stand apart so that nobody takes one for the other. */
export interface DrawnSpread {
  /** Standard deviations of one axis [m]; null for shots that show none: a single one, or all in one hole. */
  readonly prior: Length;
  readonly shots: Length | null;
  readonly together: Length;
  readonly degreesOfFreedom: { readonly prior: number; readonly shots: number; readonly together: number };
  /** Radius about the measured centre within which the true one lies, with 95 % [m]. */
  readonly centreRadius: number;
  /** Radius about the measured centre that holds the next arrow, with 95 % [m]. */
  readonly nextArrow: number;
}

/** No past weighs more than this, or a group that has changed would be ignored. */
const MOST_DEGREES = 24;
const FEWEST_GROUPS = 3;
const NEAR = 1e-13;

/**
 * What past groups say of the spread: its usual variance, and how many degrees of freedom that is worth.
 *
 * @equation e = ln s² - ψ(d/2) + ln(d/2); ψ'(ν0/2) = mean[(e - ē)² g/(g - 1) - ψ'(d/2)]; s0² = exp(ē + ψ(ν0/2) - ln(ν0/2)); ν0 = ∞ and s0² = e^ē when the mean is not above 0; ν0 at most 24
 * @param past - variance of one axis and its degrees of freedom 2 (n - 1), group by group [list]
 * @returns s0², ν0 and whether ν0 was held back, or a refusal: `too-few-groups` below three, `bad-spread` [record]
 * @validity groups of the same bow, arrows and distance, round normal shots; from about 8 groups on ν0 means something
 * @source smyth-2004
 * @example priorFromGroups([{ variance: 4, degreesOfFreedom: 10 }, { variance: 4, degreesOfFreedom: 10 }, { variance: 4, degreesOfFreedom: 10 }]).value.degreesOfFreedom // 24
 */
export function priorFromGroups(past: readonly SpreadBasis[]): Result<SpreadPrior> {
  if (past.length < FEWEST_GROUPS) {
    const sentence = `A usual spread needs at least ${FEWEST_GROUPS} past groups of this bow, these arrows and this distance, better 8: shoot more groups.`;
    return refuse('too-few-groups', sentence, 'groups');
  }
  const bad = past.findIndex(
    ({ variance, degreesOfFreedom: d }) => !(variance > 0 && variance < Infinity && d > 0 && d < Infinity),
  );
  if (bad >= 0)
    return refuse(
      'bad-spread',
      `Past group ${bad + 1} shows no spread: a group of two or more holes apart was expected. Leave it out.`,
      'groups',
    );
  const logs = past.map(({ variance, degreesOfFreedom: d }) => Math.log(variance) - digamma(d / 2) + Math.log(d / 2));
  const mean = logs.reduce((sum, e) => sum + e, 0) / logs.length;
  const square = logs.reduce((sum, e) => sum + (e - mean) ** 2, 0) / (logs.length - 1);
  const chance = past.reduce((sum, { degreesOfFreedom: d }) => sum + trigamma(d / 2), 0) / past.length;
  const excess = square - chance;
  const nu = excess > 0 ? 2 * trigammaInverse(excess) : Infinity;
  return ok({
    variance: nu === Infinity ? Math.exp(mean) : Math.exp(mean + digamma(nu / 2) - Math.log(nu / 2)),
    degreesOfFreedom: Math.min(MOST_DEGREES, nu),
    groups: past.length,
    capped: nu > MOST_DEGREES,
  });
}

/** ψ' lies between 1/x and 1/x + 1/x², which brackets the answer; beyond what can be told it is endless. */
function trigammaInverse(value: number): number {
  if (value < 1e-7) return Infinity;
  const low = 1 / value;
  const high = (1 + Math.sqrt(1 + 4 * value)) / (2 * value);
  return crossing((x) => trigamma(x) / value - 1, low * (1 - 1e-12), high * (1 + 1e-12), NEAR);
}

/**
 * Radius of the circle about a group's own centre that holds the next arrow with a given chance.
 *
 * @equation √(2 F s² (1 + 1/n)), F = F_(1 - q)(2, ν)
 * @param basis - s² and ν, of the shots alone or drawn toward the past [record]
 * @param n - n, shots that gave the centre, ≥ 1 [-]
 * @param share - q, the chance, between 0 and 1 [-]
 * @returns radius [m]
 * @validity round normal shots; exact. Arguments outside throw RangeError
 * @source own derivation
 * @example nextArrowCircle({ variance: 0.5, degreesOfFreedom: 2 }, 1, 0.95) // 6.164414002968976
 */
export function nextArrowCircle(basis: SpreadBasis, n: number, share: number): number {
  if (!(n >= 1 && basis.variance > 0)) throw new RangeError('At least one shot and a spread above 0 are needed.');
  return Math.sqrt(2 * fQuantileUpper(1 - share, 2, basis.degreesOfFreedom) * basis.variance * (1 + 1 / n));
}

/**
 * Spread of a group drawn toward the archer's past, with the circles that follow.
 *
 * @equation ν = ν0 + 2 (n - 1), s² = (ν0 s0² + SS)/ν; circle of the centre √(2 F_0.05(2, ν) s²/n); next arrow √(2 F_0.05(2, ν) s² (1 + 1/n))
 * @param points - places of the new shots; one is enough [m]
 * @param prior - s0² and ν0, of priorFromGroups [record]
 * @returns spread of prior, of shots and of both, and the circles, or a refusal: `no-shots`, `bad-position`, `bad-prior` [record]
 * @validity round normal shots of the same bow, arrows and distance as the past groups. A spread that has truly changed is understated until the shots outweigh the past
 * @source smyth-2004
 * @example drawnSpread([{ x: 0, y: 0 }, { x: 0.02, y: 0 }], { variance: 0.0001, degreesOfFreedom: 2 }).value.degreesOfFreedom.together // 4
 */
export function drawnSpread(points: readonly Point[], prior: SpreadBasis): Result<DrawnSpread> {
  if (points.length === 0)
    return refuse('no-shots', 'There are no shots in this group: shoot at least one, better six.', 'shots');
  const checked = checkedPoints(points, 'this group');
  if (!checked.ok) return checked;
  const { variance: s0, degreesOfFreedom: nu0 } = prior;
  if (!(s0 > 0 && s0 < Infinity && nu0 > 0 && nu0 <= MOST_DEGREES))
    return refuse('bad-prior', `A usual spread above 0 worth up to ${MOST_DEGREES} degrees of freedom was expected.`, 'prior');
  const n = points.length;
  const shots = 2 * (n - 1);
  const variance = n < 2 ? 0 : axisVariance(momentsOf(points));
  const together = { variance: (nu0 * s0 + shots * variance) / (nu0 + shots), degreesOfFreedom: nu0 + shots };
  return ok({
    prior: lengthOfSpread(1, s0, nu0),
    shots: variance > 0 ? lengthOfSpread(1, variance, shots) : null,
    together: lengthOfSpread(1, together.variance, together.degreesOfFreedom),
    degreesOfFreedom: { prior: nu0, shots, together: together.degreesOfFreedom },
    centreRadius: Math.sqrt((2 * fQuantileUpper(0.05, 2, together.degreesOfFreedom) * together.variance) / n),
    nextArrow: nextArrowCircle(together, n, 0.95),
  });
}
