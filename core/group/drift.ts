import { ok, refuse, type Result } from '../model/problem.ts';
import { fQuantileUpper, fUpperTail } from './distributions.ts';
import { MEAN_RADIUS_PER_SPREAD } from './measures.ts';
import { checkedPoints, ONE_HOLE, type Point } from './points.ts';
import { shapeFactor } from './shape.ts';
import type { ShiftVerdict } from './shift.ts';

/** How the centre moves from end to end. */
export interface Drift {
  readonly ends: number;
  /** Of the centre, each end [m]. */
  readonly perEnd: Point;
  /** The true drift lies within this of it, each end [m]. */
  readonly radius: number;
  /** From the first end to the last [m]. */
  readonly total: number;
  /** No drift larger than this over all ends [m]. */
  readonly largest: number;
  readonly f: number;
  readonly p: number;
  readonly verdict: ShiftVerdict;
  /** Whether the ends lie about the drift more widely than their own shots explain, and the drift against that; null for two ends. */
  readonly wander: { readonly f: number; readonly p: number; readonly driftP: number } | null;
  /** The smallest drift over all ends that matters, as it was used [m]. */
  readonly matters: number;
}

const ALPHA = 0.05;
const LARGEST_MATTERS = 1.5;

interface EndSum {
  readonly n: number;
  readonly at: number;
  readonly centre: Point;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

function summed(shots: readonly Point[], at: number): EndSum {
  const n = shots.length;
  const centre = { x: shots.reduce((sum, p) => sum + p.x, 0) / n, y: shots.reduce((sum, p) => sum + p.y, 0) / n };
  let [xx, xy, yy] = [0, 0, 0];
  for (const p of shots) {
    xx += (p.x - centre.x) ** 2;
    xy += (p.x - centre.x) * (p.y - centre.y);
    yy += (p.y - centre.y) ** 2;
  }
  return { n, at, centre, xx, xy, yy };
}

function checkedEnds(ends: readonly (readonly Point[])[]): Result<readonly EndSum[]> {
  for (const [i, shots] of ends.entries()) {
    const checked = checkedPoints(shots, `end ${i + 1}`);
    if (!checked.ok) return checked;
  }
  const sums = ends.flatMap((shots, i) => (shots.length === 0 ? [] : [summed(shots, i + 1)]));
  if (sums.length < 2)
    return refuse('too-few-ends', 'At least two ends with shots were expected: shoot more, better six.', 'end');
  if (sums.every(({ n }) => n < 2)) {
    return refuse('one-shot', 'At least one end needs two shots, or there is no scatter to judge a drift by.', 'shots');
  }
  if (sums.reduce((sum, { xx, yy }) => sum + xx + yy, 0) < ONE_HOLE ** 2) {
    return refuse(
      'one-hole',
      'Each end lies in one hole, so there is no scatter to judge a drift by: place each shot where it struck.',
      'shots',
    );
  }
  return ok(sums);
}

/**
 * Whether the group's centre drifts from end to end.
 *
 * @equation centres on the number of the end by least squares, weights n_i: b = Σ n_i (t_i - t̄) c_i/S, S = Σ n_i (t_i - t̄)²; F = |b|² S/(2 s²) with 1/c and ν/c degrees of freedom, s² and ν = Σ (n_i - 1) of the shots about their own end. Where the ends wander beyond that (p < 0.05), the drift must also show against the wander. No sign when total + radius ≤ what matters
 * @param ends - places of the shots of each end, in the order they were shot; an empty end is passed over [m]
 * @param matters - the smallest drift over all ends that matters; about one mean radius when left out [m]
 * @returns the drift with its verdict, or a refusal: `bad-position`, `too-few-ends`, `one-shot`, `one-hole`, `bad-matters` [record]
 * @validity independent shots, spreads of the ends alike; a drift in a straight line at even pace. The sight must not have been moved between
 * @source draper-smith-1998, brunner-dette-munk-1997
 * @example driftOverEnds([[{ x: 0, y: 0 }, { x: 0.02, y: 0 }], [{ x: 0.1, y: 0 }, { x: 0.12, y: 0 }]]).value.perEnd // {"x":0.1,"y":0}
 */
export function driftOverEnds(ends: readonly (readonly Point[])[], matters?: number): Result<Drift> {
  const checked = checkedEnds(ends);
  if (!checked.ok) return checked;
  if (matters !== undefined && !(matters > 0 && matters <= LARGEST_MATTERS)) {
    return refuse('bad-matters', `A smallest drift that matters above 0 and up to ${LARGEST_MATTERS} m was expected.`, 'matters');
  }
  const sums = checked.value;
  const total = (value: (end: EndSum) => number): number => sums.reduce((sum, end) => sum + value(end), 0);
  const shots = total(({ n }) => n);
  const nu = shots - sums.length;
  const [xx, xy, yy] = [total((e) => e.xx), total((e) => e.xy), total((e) => e.yy)];
  const covariance = { xx: xx / nu, xy: xy / nu, yy: yy / nu };
  const c = shapeFactor([{ n: nu + 1, centre: { x: 0, y: 0 }, covariance }]);
  const variance = (xx + yy) / (2 * nu);

  const middle = total(({ n, at }) => n * at) / shots;
  const lever = total(({ n, at }) => n * (at - middle) ** 2);
  const slope = (axis: 'x' | 'y'): number => total(({ n, at, centre }) => n * (at - middle) * centre[axis]) / lever;
  const perEnd = { x: slope('x'), y: slope('y') };
  const size = Math.hypot(perEnd.x, perEnd.y);
  const f = (size ** 2 * lever) / (2 * variance);
  const df = [1 / c, nu / c] as const;
  const p = fUpperTail(f, ...df);

  const wander = wanderOf(sums, perEnd, middle, size ** 2 * lever, variance, c, nu);
  const wanders = wander !== null && wander.p < ALPHA;
  const error = wanders ? { variance: wander.variance, df: [1 / c, (sums.length - 2) / c] as const } : { variance, df };
  const radius = Math.sqrt((2 * error.variance * fQuantileUpper(ALPHA, ...error.df)) / lever);
  const span = (sums.at(-1)?.at ?? 1) - (sums[0]?.at ?? 1);
  const limit = matters ?? MEAN_RADIUS_PER_SPREAD * Math.sqrt(variance);
  const largest = (size + radius) * span;
  const real = p < ALPHA && (!wanders || wander.driftP < ALPHA);
  return ok({
    ends: sums.length,
    perEnd,
    radius,
    total: size * span,
    largest,
    f,
    p,
    verdict: real ? 'real' : largest <= limit ? 'no sign' : 'cannot tell',
    wander: wander === null ? null : { f: wander.f, p: wander.p, driftP: wander.driftP },
    matters: limit,
  });
}

/** What the ends' centres lie off the straight drift by, against the scatter within the ends. */
function wanderOf(
  sums: readonly EndSum[],
  perEnd: Point,
  middle: number,
  explained: number,
  within: number,
  c: number,
  nu: number,
): { f: number; p: number; driftP: number; variance: number } | null {
  const free = sums.length - 2;
  if (free < 1) return null;
  const shots = sums.reduce((sum, { n }) => sum + n, 0);
  const level = (axis: 'x' | 'y'): number => sums.reduce((sum, { n, centre }) => sum + n * centre[axis], 0) / shots;
  const [x, y] = [level('x'), level('y')];
  const left = sums.reduce((sum, { n, at, centre }) => {
    const dx = centre.x - x - perEnd.x * (at - middle);
    const dy = centre.y - y - perEnd.y * (at - middle);
    return sum + n * (dx * dx + dy * dy);
  }, 0);
  const variance = left / (2 * free);
  const f = variance / within;
  const against = variance > 0 ? explained / (2 * variance) : explained > 0 ? Infinity : 0;
  return { f, p: fUpperTail(f, free / c, nu / c), driftP: fUpperTail(against, 1 / c, free / c), variance };
}
