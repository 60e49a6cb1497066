import gammaln from '@stdlib/math-base-special-gammaln';
import { ok, refuse, type Result } from '../model/problem.ts';
import { chiSquareQuantile, fQuantileUpper, tQuantile } from './distributions.ts';
import { extremeSpread } from './extremeSpread.ts';
import { axisVariance, momentsOf, type Covariance, type Moments } from './moments.ts';
import { checkedPoints, inOneHole, type Point } from './points.ts';

export type Interval = readonly [low: number, high: number];

/** The figures of one group. Lengths in m; intervals are 95 %, and hold for round groups: `roundness` says whether this one looks round. */
export interface GroupMeasures {
  readonly n: number;
  readonly centre: Point;
  /** Divisor n - 1 [m²]. */
  readonly covariance: Covariance;
  /** Standard deviation of one axis, freed of the bias of few shots. */
  readonly spread: number;
  readonly spreadInterval: Interval;
  /** Mean distance of these shots from their own centre. */
  readonly meanRadius: number;
  /** What very many such shots would show, by the spread: of one piece with its interval, as R50 and R95 are. */
  readonly meanRadiusOfMany: number;
  readonly meanRadiusInterval: Interval;
  /** The two shots farthest apart. */
  readonly extremeSpread: number;
  /** Of the spread: 2 (n - 1). */
  readonly degreesOfFreedom: number;
  /** Radius about the centre within which the true centre lies. */
  readonly centreRadius: number;
  /** Half widths, axis by axis, within which the true centre lies. */
  readonly axisHalf: Point;
  /** Shortest over longest axis, and the chance that a round group looks at least this oval. Few shots cannot show an oval. */
  readonly roundness: { readonly ratio: number; readonly p: number };
}

/** Mean radius of a round normal spread, per unit of its standard deviation. */
export const MEAN_RADIUS_PER_SPREAD = Math.sqrt(Math.PI / 2);

/**
 * How far short a standard deviation falls on average when few shots give it.
 *
 * @equation c4 = √(2/ν) Γ((ν + 1)/2) / Γ(ν/2)
 * @param degreesOfFreedom - ν, > 0; 2 (n - 1) for a round group of n shots [-]
 * @returns c4, below 1; the unbiased spread is s / c4 [-]
 * @validity normal errors; a ν that is not positive throws RangeError
 * @source montgomery-2013
 * @example c4(2) // 0.886226925452758
 */
export function c4(degreesOfFreedom: number): number {
  if (!(degreesOfFreedom > 0)) throw new RangeError('Degrees of freedom must be positive.');
  const half = degreesOfFreedom / 2;
  return Math.exp(gammaln(half + 0.5) - gammaln(half)) / Math.sqrt(half);
}

/**
 * How round a group is, with the exact test of roundness.
 *
 * @equation W = 4 det S / (tr S)², p = W^((n - 2)/2); ratio = √(λ_min / λ_max)
 * @param moments - moments of the group [record]
 * @returns ratio of short to long axis and p; p = 1 for two shots, which cannot tell [record]
 * @validity normal errors, groups not in one hole. With 12 shots an oval of 2 to 1 is found less than half the time
 * @source mauchly-1940
 * @example roundnessOf({ n: 6, centre: { x: 0, y: 0 }, covariance: { xx: 4, xy: 0, yy: 1 } }).p // 0.4096
 */
export function roundnessOf(moments: Moments): { ratio: number; p: number } {
  const { xx, xy, yy } = moments.covariance;
  const half = (xx + yy) / 2;
  const oval = Math.min(half, Math.hypot((xx - yy) / 2, xy));
  const w = (1 - oval / half) * (1 + oval / half);
  return { ratio: Math.sqrt((half - oval) / (half + oval)), p: w ** ((moments.n - 2) / 2) };
}

/**
 * The figures of one group of shots.
 *
 * @equation s² = SS / (2 (n - 1)), spread = s/c4; σ in √(SS/χ²_ν,0.975) … √(SS/χ²_ν,0.025); mean radius of many = √(π/2) s/c4 in √(π/2) σ; centre within s √(2 F/n), F = F_0.05(2, ν); axis ± t √(S_xx/n)
 * @param points - places of the shots [m]
 * @returns the figures, or a refusal: `no-shots`, `one-shot`, `one-hole`, `bad-position` [record]
 * @validity independent shots, normal and about equal on both axes; from 2 to 100,000 shots
 * @source grubbs-1964
 * @example groupMeasures([{ x: 0, y: 0 }, { x: 0.03, y: 0.04 }]).value.meanRadius // 0.025
 */
export function groupMeasures(points: readonly Point[]): Result<GroupMeasures> {
  if (points.length === 0) return refuse('no-shots', 'No shots yet: put at least two shots on the face.', 'shots');
  if (points.length === 1) return refuse('one-shot', 'One shot has no spread: put at least one more shot on the face.', 'shots');
  const checked = checkedPoints(points, 'this group');
  if (!checked.ok) return checked;
  if (inOneHole(points)) {
    const sentence = `All ${points.length} shots lie in one hole, so the spread cannot be told: place each shot where it struck, or shoot more.`;
    return refuse('one-hole', sentence, 'shots');
  }
  const moments = momentsOf(points);
  const { n, centre, covariance } = moments;
  const degreesOfFreedom = 2 * (n - 1);
  const variance = axisVariance(moments);
  const sumOfSquares = variance * degreesOfFreedom;
  const spreadInterval: Interval = [
    Math.sqrt(sumOfSquares / chiSquareQuantile(0.975, degreesOfFreedom)),
    Math.sqrt(sumOfSquares / chiSquareQuantile(0.025, degreesOfFreedom)),
  ];
  const t = tQuantile(0.975, n - 1);
  const spread = Math.sqrt(variance) / c4(degreesOfFreedom);
  return ok({
    n,
    centre,
    covariance,
    spread,
    spreadInterval,
    meanRadius: points.reduce((sum, p) => sum + Math.sqrt((p.x - centre.x) ** 2 + (p.y - centre.y) ** 2), 0) / n,
    meanRadiusOfMany: MEAN_RADIUS_PER_SPREAD * spread,
    meanRadiusInterval: [MEAN_RADIUS_PER_SPREAD * spreadInterval[0], MEAN_RADIUS_PER_SPREAD * spreadInterval[1]],
    extremeSpread: extremeSpread(points),
    degreesOfFreedom,
    centreRadius: Math.sqrt((2 * variance * fQuantileUpper(0.05, 2, degreesOfFreedom)) / n),
    axisHalf: { x: t * Math.sqrt(covariance.xx / n), y: t * Math.sqrt(covariance.yy / n) },
    roundness: roundnessOf(moments),
  });
}
