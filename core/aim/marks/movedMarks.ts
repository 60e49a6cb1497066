import type { Band } from '../../model/band.ts';
import { covarianceOf } from './expectedFrom.ts';
import { pinPlace, pinSlopes, readingOf, Z95 } from './markModel.ts';
import type { FittedMarks, MarkParameters } from './types.ts';

/** What changed with another archer, bow, arrow or form; what is left out stayed. The ends of each band are taken as 95 %. */
export interface MarksChange {
  /** New launch speed over the old [-]. */
  readonly speed?: Band;
  /** New drag parameter over the old [-]. */
  readonly k?: Band;
  /** New eye height less the old [m]: the bar stays on the bow, so that the pin goes up with the eye. */
  readonly eyeHeight?: Band;
  /** New sight radius less the old [m]. */
  readonly sightRadius?: Band;
  /** By how much higher the arrow leaves against its own axis, as with another nocking point [rad]. */
  readonly launchAngle?: Band;
}

/** A mark that is no longer proven: what it read, how far it may have moved, and where it may be now, in the scale's numbers. */
export interface MovedMark {
  readonly distance: number;
  readonly before: number;
  /** After less before, with 95 %. */
  readonly moved: Band;
  /** The reading to try first; the interval of `moved` about it comes on top of that of the fit. */
  readonly after: number;
}

const sdOf = ({ low, high }: Band): number => (high - low) / (2 * Z95);
const stayed: Band = { value: 0, low: 0, high: 0 };
const same: Band = { value: 1, low: 1, high: 1 };
const logOf = ({ value, low, high }: Band): Band => ({ value: Math.log(value), low: Math.log(low), high: Math.log(high) });

/**
 * How far sight marks may have moved since archer, bow, arrow or form changed.
 *
 * @equation Δq = q(R; φ + Δ) − q(R; φ), variance Σ (g'_j s_j)² + (g' − g) C (g' − g)ᵀ S²; with the eye e higher over the arrow the zero lies e further up; a launch angle α lifts the arrow, so the pin goes up by r α (1 + tan²θ)
 * @param fit - of the marks as they were [record]
 * @param change - what changed, as far as it is known [record]
 * @param distances - R [m]
 * @returns a row for each distance that is carried before and after [list]
 * @validity level ground, still air; changes of some per cent; throws RangeError for a band out of order or a ratio that is not above 0
 * @source own derivation
 * @example movedMarks(fitMarks(exampleMarks, exampleScale, examplePriors).value, {}, [50])[0].moved // {"value":0,"low":0,"high":0}
 */
export function movedMarks(fit: FittedMarks, change: MarksChange, distances: readonly number[]): MovedMark[] {
  const { speed = same, k = same, eyeHeight = stayed, sightRadius = stayed, launchAngle = stayed } = change;
  for (const { low, value, high } of [speed, k, eyeHeight, sightRadius, launchAngle])
    if (!(low <= value && value <= high && Number.isFinite(high - low)))
      throw new RangeError('A band from low to high was expected for each change.');
  if (!(speed.low > 0 && k.low > 0)) throw new RangeError('Ratios above 0 were expected of speed and drag.');
  const by = [logOf(speed), eyeHeight, logOf(k), sightRadius];
  const { parameters, covariance, scale, wider } = fit;
  const zero = parameters[4] - eyeHeight.value;
  const moved = [...parameters.slice(0, 4).map((value, j) => value + (by[j]?.value ?? 0)), zero] as unknown as MarkParameters;
  const radius = moved[3];
  return distances.flatMap((distance) => {
    const [old, now] = [pinSlopes(parameters, distance), pinSlopes(moved, distance)];
    const [before, there] = [pinPlace(parameters, distance), pinPlace(moved, distance)];
    if (old === null || now === null || !Number.isFinite(before + there)) return [];
    const slope = now[3] ?? 0;
    const lift = -radius * (1 + slope * slope);
    const apart = now.map((each, j) => each - (old[j] ?? 0));
    const turns = [now[0] ?? 0, (now[1] ?? 0) - 1, now[2] ?? 0, slope];
    const parts = [...by.map((band, j) => (turns[j] ?? 0) * sdOf(band)), lift * sdOf(launchAngle)];
    const variance = parts.reduce((sum, part) => sum + part * part, wider ** 2 * covarianceOf(apart, covariance, apart));
    const middle = readingOf(there + lift * launchAngle.value - before, scale);
    const half = (Z95 * Math.sqrt(Math.max(0, variance))) / scale.unit;
    const was = readingOf(before, scale);
    // Adding nought turns the nought below nought into the plain one.
    return [
      {
        distance,
        before: was,
        moved: { value: middle + 0, low: middle - half + 0, high: middle + half + 0 },
        after: was + middle,
      },
    ];
  });
}
