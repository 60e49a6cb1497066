import { ok, type Result } from '../model/problem.ts';
import { axisTest } from './axes.ts';
import { fQuantileUpper } from './distributions.ts';
import { twoSampleT2KrishnamoorthyYu } from './hotelling.ts';
import { c4, MEAN_RADIUS_PER_SPREAD } from './measures.ts';
import { axisVariance, momentsOf, type Moments } from './moments.ts';
import { moreOfEach } from './more.ts';
import { checkedPair } from './pair.ts';
import type { Point } from './points.ts';
import { shapeFactor } from './shape.ts';
import { welchTest } from './welch.ts';

export type ShiftVerdict = 'real' | 'cannot tell' | 'no sign';

/** How far the moved group's centre lies from the reference's, and how sure that is. Lengths in m; intervals at 1 - α, 95 % unless asked otherwise. */
export interface Shift {
  /** Shots in the reference and in the moved group. */
  readonly n: readonly [reference: number, moved: number];
  readonly dx: number;
  readonly dy: number;
  readonly size: number;
  /** [rad], 0 to the right, counter-clockwise, -π to π. */
  readonly direction: number;
  /** The true shift lies within this of (dx, dy). */
  readonly radius: number;
  /** Half widths of each axis by itself. */
  readonly half: { readonly x: number; readonly y: number };
  readonly p: number;
  readonly f: number;
  readonly df: readonly [numerator: number, denominator: number];
  /** c: ½ for round groups, 1 for a line. */
  readonly shape: number;
  /** Without a true shift, chance alone would put the centres this far apart once in so many. */
  readonly oncein: number;
  /** Which axes have moved; only asked once the whole shift is real. */
  readonly axisReal: { readonly x: boolean; readonly y: boolean };
  readonly verdict: ShiftVerdict;
  /** For 'cannot tell': about so many more shots of each group. */
  readonly more: number | null;
  /** No sign of a shift larger than this. */
  readonly largest: number;
  /** The smallest shift that matters, as it was used. */
  readonly matters: number;
  /** Spread of one axis, both groups together, freed of the bias of few shots. */
  readonly spread: number;
  /** Hotelling's test by Krishnamoorthy and Yu beside it, from six shots in each group that do not lie on a line. */
  readonly hotelling: { readonly t2: number; readonly f: number; readonly p: number } | null;
}

export interface ShiftOptions {
  /** The smallest shift that matters [m]; about one mean radius of the groups when left out. */
  readonly matters?: number;
  /** False alarms allowed, 0.05 when left out. */
  readonly alpha?: number;
}

const HOTELLING_FROM = 6;
/** Keeps "once in so many" a number when p is too small for one. */
const SMALLEST_P = 1e-300;

/**
 * The shift between two groups: how far, how sure, and whether it is real.
 *
 * @equation shape-corrected Welch: F = |d|²/(2 (v1 + v2)) ~ F(1/c, ν); radius √(2 (v1 + v2) F_α); real when p < α; no sign when size + radius ≤ what matters; else cannot tell. An axis is real when the whole and the axis's own Welch t both are (closed testing)
 * @param reference - places of the shots that the shift is counted from [m]
 * @param moved - places of the other group's shots [m]
 * @param options - the smallest shift that matters, by default 1.25 of the pooled spread, and α, by default 0.05 [record]
 * @returns the shift with its verdict, or a refusal: `no-shots`, `one-shot`, `one-hole`, `bad-position`, `bad-matters` [record]
 * @validity independent, about normal shots, two or more in each group, spreads and ovals may differ; one look: testing again after each end finds more false shifts than α. An α outside 0 … 0.5 throws RangeError
 * @source brunner-dette-munk-1997
 * @example shiftOfGroups([{ x: 0, y: 0 }, { x: 0.02, y: 0 }, { x: 0, y: 0.02 }], [{ x: 0.2, y: 0 }, { x: 0.22, y: 0 }, { x: 0.2, y: 0.02 }]).value.verdict // "real"
 */
export function shiftOfGroups(reference: readonly Point[], moved: readonly Point[], options: ShiftOptions = {}): Result<Shift> {
  const { alpha = 0.05 } = options;
  const pair = checkedPair(reference, moved, options.matters);
  if (!pair.ok) return pair;
  if (!(alpha > 0 && alpha < 0.5)) throw new RangeError('alpha must lie between 0 and 0.5.');
  const first = momentsOf(reference);
  const second = momentsOf(moved);
  const shape = shapeFactor([first, second]);
  const { variance, f, df, p: tail } = welchTest(first, second, shape);
  const p = Math.max(tail, SMALLEST_P);
  // Adding 0 turns -0 into 0, whose direction is 0 and not -π.
  const dx = second.centre.x - first.centre.x + 0;
  const dy = second.centre.y - first.centre.y + 0;
  const size = Math.hypot(dx, dy);
  const radius = Math.sqrt(2 * variance * fQuantileUpper(alpha, ...df));
  const spread = pooledSpread(first, second);
  const matters = options.matters ?? MEAN_RADIUS_PER_SPREAD * spread;
  const verdict = p < alpha ? 'real' : size + radius <= matters ? 'no sign' : 'cannot tell';
  const axis = (which: 'x' | 'y', distance: number): { half: number; real: boolean } => {
    const test = axisTest(first, second, which, alpha);
    // Closed testing (marcus-peritz-gabriel-1976, from memory): an axis counts only once the whole shift is real.
    // An axis without any spread is judged by the circle.
    if (test === null) return { half: radius, real: verdict === 'real' && Math.abs(distance) > radius };
    return { half: test.half, real: verdict === 'real' && test.p < alpha };
  };
  const x = axis('x', dx);
  const y = axis('y', dy);
  return ok({
    n: [first.n, second.n],
    dx,
    dy,
    size,
    direction: Math.atan2(dy, dx),
    radius,
    half: { x: x.half, y: y.half },
    p,
    f,
    df,
    shape,
    oncein: 1 / p,
    axisReal: { x: x.real, y: y.real },
    verdict,
    more: verdict === 'cannot tell' ? moreOfEach(first, second, shape, size, matters, alpha) : null,
    largest: size + radius,
    matters,
    spread,
    hotelling: Math.min(first.n, second.n) < HOTELLING_FROM ? null : hotellingBeside(first, second),
  });
}

function pooledSpread(first: Moments, second: Moments): number {
  const [d1, d2] = [2 * (first.n - 1), 2 * (second.n - 1)];
  return Math.sqrt((d1 * axisVariance(first) + d2 * axisVariance(second)) / (d1 + d2)) / c4(d1 + d2);
}

function hotellingBeside(first: Moments, second: Moments): Shift['hotelling'] {
  const [a, b] = [first, second].map(({ n, centre, covariance: { xx, xy, yy } }) => ({
    n,
    mean: [centre.x, centre.y],
    covariance: [
      [xx, xy],
      [xy, yy],
    ],
  }));
  if (a === undefined || b === undefined) return null;
  const test = twoSampleT2KrishnamoorthyYu(a, b);
  return test.ok ? { t2: test.value.t2, f: test.value.f, p: test.value.p } : null;
}
