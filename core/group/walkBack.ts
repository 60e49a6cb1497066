import { limits } from '../model/limits.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { tQuantile, tTwoSided } from './distributions.ts';
import type { Interval } from './measures.ts';
import { ONE_HOLE } from './points.ts';
import { fitAt, lackOfFit, weightedFit, type LackOfFit, type WeightedFit, type WeightedPoint } from './weightedFit.ts';

/** The arrows shot at one aiming mark from one distance, with one sight setting. */
export interface WalkBackDistance {
  /** [m] */
  readonly distance: number;
  /** How far right of the upright line through the mark each arrow struck, as the archer sees it [m]; left is negative. */
  readonly offsets: readonly number[];
}

export type WalkBackLine = 'straight up' | 'slants' | 'bends' | 'cannot tell';

export interface WalkBack {
  readonly arrows: number;
  readonly distances: number;
  /** Of the straight line: how it runs, to the right with distance [rad]. */
  readonly angle: number;
  readonly angleInterval: Interval;
  readonly angleP: number;
  /** Where the line starts at the bow, right of the upright [m]. */
  readonly start: number;
  readonly startInterval: Interval;
  /** Of the parabola, c in a + b z + c z² [1/m]. */
  readonly bend: {
    readonly curvature: number;
    readonly interval: Interval;
    readonly p: number;
    /** Off the straight line between nearest and farthest, at most [m]. */
    readonly bow: number;
  };
  /** Whether straight line and parabola miss the distances' means by more than the arrows scatter; null without repeats. */
  readonly misses: { readonly line: LackOfFit | null; readonly parabola: LackOfFit | null };
  /** Scatter of one arrow seen from the bow [rad]. */
  readonly scatter: number;
  readonly line: WalkBackLine;
  /** Points for drawing: the straight line at each distance with its half width [m]. */
  readonly drawn: readonly { readonly distance: number; readonly offset: number; readonly half: number }[];
}

const ALPHA = 0.05;
const FEWEST_DISTANCES = 3;
const MOST_OFFSET = limits.shotOffset.max;

function checkedReadings(readings: readonly WalkBackDistance[]): Result<WeightedPoint[]> {
  for (const { distance, offsets } of readings) {
    if (!(distance > 0 && distance <= limits.shootingDistance.max)) {
      return refuse('bad-distance', `A distance above 0 and up to ${limits.shootingDistance.max} m was expected.`, 'distance');
    }
    const bad = offsets.findIndex((offset) => !(Math.abs(offset) <= MOST_OFFSET));
    if (bad >= 0) {
      const sentence = `Arrow ${bad + 1} at ${distance} m has no usable place: an offset within ${MOST_OFFSET} m of the line was expected.`;
      return refuse('bad-position', sentence, 'offsets');
    }
  }
  const points = readings.flatMap(({ distance, offsets }) => offsets.map((y) => ({ x: distance, y, weight: distance ** -2 })));
  const places = new Set(points.map(({ x }) => x)).size;
  if (places < FEWEST_DISTANCES) {
    return refuse(
      'too-few-distances',
      `Arrows from at least ${FEWEST_DISTANCES} distances were expected, and ${places} were given: shoot from more, better five or six.`,
      'distance',
    );
  }
  if (points.length < FEWEST_DISTANCES + 1) {
    return refuse(
      'too-few',
      `At least ${FEWEST_DISTANCES + 1} arrows were expected, or a bend cannot be told from scatter: shoot more, better two or three at each distance.`,
      'offsets',
    );
  }
  return ok(points);
}

/** Estimate, interval and p of one coefficient; no scatter at all leaves nothing to doubt. */
function judged(fit: WeightedFit, j: number): { value: number; interval: Interval; p: number } {
  const value = fit.coefficients[j] ?? 0;
  const error = fit.errors[j] ?? 0;
  const half = tQuantile(1 - ALPHA / 2, fit.df) * error;
  const p = error > 0 ? tTwoSided(value / error, fit.df) : value === 0 ? 1 : 0;
  return { value, interval: [value - half, value + half], p };
}

/**
 * How the arrows of a walk-back line up: upright, slanting or bent, with intervals and without causes.
 *
 * @equation x = a + b z by weights 1/z² for each arrow, since scatter grows with distance; bend: t of c in a + b z + c z²; bends when its p < 0.05, else slants when that of b is, else straight up when |b| + half width stays within one arrow's scatter, else cannot tell. Pure error of repeats gives the lack of fit of both
 * @param readings - the arrows of each distance [list]
 * @returns angle, start, bend and their intervals, or a refusal: `bad-distance`, `bad-position`, `too-few-distances`, `too-few`, `one-hole` [record]
 * @validity one aiming mark, one sight setting, bow held upright, no wind; independent arrows. Where the parabola misses too, the intervals are too narrow
 * @source draper-smith-1998, nist-strd
 * @example walkBack([5, 10, 20, 30].map((distance) => ({ distance, offsets: [0.01 * distance, 0.01 * distance + 0.002] }))).value.line // "slants"
 */
export function walkBack(readings: readonly WalkBackDistance[]): Result<WalkBack> {
  const checked = checkedReadings(readings);
  if (!checked.ok) return checked;
  const points = checked.value;
  const line = weightedFit(points, 1);
  const parabola = weightedFit(points, 2);
  if (!line.ok) return line;
  if (!parabola.ok) return parabola;
  const distances = [...new Set(points.map(({ x }) => x))].sort((a, b) => a - b);
  const [nearest = 0, farthest = 0] = [distances[0], distances.at(-1)];
  const scatter = Math.sqrt(parabola.value.variance);
  if (scatter * farthest < ONE_HOLE) {
    return refuse(
      'one-hole',
      'All arrows lie exactly on one curve, so there is no scatter to judge it by: enter each arrow where it struck.',
      'offsets',
    );
  }
  const [start, slope] = [judged(line.value, 0), judged(line.value, 1)];
  const curve = judged(parabola.value, 2);
  const upright = Math.max(Math.abs(slope.interval[0]), Math.abs(slope.interval[1])) <= scatter;
  return ok({
    arrows: points.length,
    distances: distances.length,
    angle: Math.atan(slope.value),
    angleInterval: [Math.atan(slope.interval[0]), Math.atan(slope.interval[1])],
    angleP: slope.p,
    start: start.value,
    startInterval: start.interval,
    bend: {
      curvature: curve.value,
      interval: curve.interval,
      p: curve.p,
      bow: (Math.abs(curve.value) * (farthest - nearest) ** 2) / 4,
    },
    misses: { line: lackOfFit(points, line.value), parabola: lackOfFit(points, parabola.value) },
    scatter,
    line: curve.p < ALPHA ? 'bends' : slope.p < ALPHA ? 'slants' : upright ? 'straight up' : 'cannot tell',
    drawn: distances.map((distance) => {
      const { y, half } = fitAt(line.value, distance, 1);
      return { distance, offset: y, half };
    }),
  });
}
