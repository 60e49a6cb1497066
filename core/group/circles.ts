import { ok, type Result } from '../model/problem.ts';
import { circleHolding, roundCircle } from './circleHolding.ts';
import { chiSquareQuantile } from './distributions.ts';
import { c4, groupMeasures, type Interval } from './measures.ts';
import { axisVariance, type Moments } from './moments.ts';
import type { Point } from './points.ts';
import { shapeFactor } from './shape.ts';
import { figureOfMerit, spreadFromExtremeSpread, spreadFromFigureOfMerit, type Implied } from './smallGroups.ts';

/** A length with its 95 % interval [m]. */
export interface Length {
  readonly value: number;
  readonly interval: Interval;
}

/** The circles of one group about its own centre, and the older figures beside them. */
export interface GroupCircles {
  readonly n: number;
  /** Holds half of many such shots, and 95 in 100, if the group is round. */
  readonly r50: Length;
  readonly r95: Length;
  /** The same with the oval as it shows; null for two shots. Its interval is approximate. */
  readonly oval: { readonly r50: Length; readonly r95: Length } | null;
  /** As measured on these shots, and of many by the same spread as the circles: between R50 and R95. */
  readonly meanRadius: { readonly measured: number; readonly ofMany: Length };
  /** Null above 20 shots. */
  readonly extremeSpread: Implied | null;
  readonly figureOfMerit: Implied | null;
}

/** A short axis below this counts as this: the circles change by a thousandth at most. */
const LINE = 0.03;

/**
 * A length that grows with the spread, freed of the bias of few shots, with its interval.
 *
 * @equation value k s/c4(ν), interval k √(ν s²/χ²_0.975) … k √(ν s²/χ²_0.025)
 * @param perSpread - k, the length per unit of spread, > 0 [-]
 * @param variance - s², variance of one axis [m²]
 * @param degreesOfFreedom - ν of s², may be fractional [-]
 * @returns the length and its 95 % interval [m]
 * @validity normal errors; arguments that are not positive throw RangeError
 * @source grubbs-1964
 * @example lengthOfSpread(1, 4, 2).value // 2.256758334191025
 */
export function lengthOfSpread(perSpread: number, variance: number, degreesOfFreedom: number): Length {
  if (!(perSpread > 0 && variance > 0 && variance < Infinity)) throw new RangeError('A spread above 0 is needed.');
  const sum = degreesOfFreedom * variance;
  return {
    value: (perSpread * Math.sqrt(variance)) / c4(degreesOfFreedom),
    interval: [
      perSpread * Math.sqrt(sum / chiSquareQuantile(0.975, degreesOfFreedom)),
      perSpread * Math.sqrt(sum / chiSquareQuantile(0.025, degreesOfFreedom)),
    ],
  };
}

/**
 * The circles of one group: R50, R95, mean radius, extreme spread and figure of merit, each with what it says of many such shots.
 *
 * @equation R = k s/c4 with k50 = 1.1774, k95 = 2.4477, interval by chi-square of SS with 2 (n - 1) degrees of freedom; mean radius of many the same with k = √(π/2); oval R by chanceInside with λ = s² (1 ± √(2 c - 1)) and (n - 1)/c degrees of freedom, c of shapeFactor
 * @param points - places of the shots [m]
 * @returns the circles, or a refusal: `no-shots`, `one-shot`, `one-hole`, `bad-position` [record]
 * @validity independent normal shots; round but for the oval figures. They are circles of the shots, not of the next arrow, whose circle is wider (nextArrowCircle)
 * @source grubbs-1964
 * @example groupCircles([{ x: 0, y: 0 }, { x: 0.03, y: 0.04 }]).value.meanRadius.ofMany.value // 0.035355339059327376
 */
export function groupCircles(points: readonly Point[]): Result<GroupCircles> {
  const measures = groupMeasures(points);
  if (!measures.ok) return measures;
  const { n, meanRadius, meanRadiusOfMany, meanRadiusInterval, degreesOfFreedom: nu } = measures.value;
  const s2 = axisVariance(measures.value);
  return ok({
    n,
    r50: lengthOfSpread(roundCircle(0.5), s2, nu),
    r95: lengthOfSpread(roundCircle(0.95), s2, nu),
    oval: n < 3 ? null : ovalCircles(measures.value),
    meanRadius: { measured: meanRadius, ofMany: { value: meanRadiusOfMany, interval: meanRadiusInterval } },
    extremeSpread: spreadFromExtremeSpread(measures.value.extremeSpread, n),
    figureOfMerit: spreadFromFigureOfMerit(figureOfMerit(points), n),
  });
}

/** The oval is drawn from c, which is freed of what few shots add to an oval: λ = s² (1 ± √(2 c - 1)). */
function ovalCircles(moments: Moments): GroupCircles['oval'] {
  const shape = shapeFactor([moments]);
  const oval = Math.sqrt(2 * shape - 1);
  const long = Math.sqrt(1 + oval);
  const short = Math.max(LINE, Math.sqrt(1 - oval));
  const circle = (share: number): Length =>
    lengthOfSpread(
      circleHolding(share, { spread: [long, short], offset: { x: 0, y: 0 } }),
      axisVariance(moments),
      (moments.n - 1) / shape,
    );
  return { r50: circle(0.5), r95: circle(0.95) };
}
