import { fQuantileUpper } from './distributions.ts';
import type { Moments } from './moments.ts';
import type { CentreTest } from './welch.ts';
import { moreOfEach } from './more.ts';

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
  /** The larger of F's and of what the shift's own line says. */
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

/** A shift that was tested as a whole, and how each axis is tested by itself. */
interface Tested {
  readonly first: Moments;
  readonly second: Moments;
  readonly dx: number;
  readonly dy: number;
  readonly shape: number;
  readonly spread: number;
  readonly matters: number;
  readonly alpha: number;
  readonly test: CentreTest & { readonly alongLine?: (alpha: number) => number };
  /** Null for an axis without any spread. */
  readonly axis: (which: 'x' | 'y') => { readonly half: number; readonly p: number } | null;
}

/** Keeps "once in so many" a number when p is too small for one. */
const SMALLEST_P = 1e-300;

/**
 * What a tested shift comes to: radius, verdict, which axes are real, and how many more shots would tell.
 *
 * @equation radius √(2 V F_α), or what the test asks for along the shift's line if that is more; real when p < α; no sign when size + radius ≤ what matters; else cannot tell. An axis is real when the whole and its own test both are (closed testing, Marcus, Peritz & Gabriel 1976, from memory); one without any spread is judged by the circle
 * @param tested - the moments, the shift, its test and the test of an axis [record]
 * @returns the shift without the test that stands beside it [record]
 * @validity as the test that was made
 * @source brunner-dette-munk-1997
 * @example concludeShift({ first: momentsOf(exampleFletched.shots), second: momentsOf(exampleBare.shots), dx: 0.1, dy: 0, shape: 0.5, spread: 0.02, matters: 0.025, alpha: 0.05, test: { variance: 0.0001, f: 50, df: [2, 16], p: 1e-7 }, axis: () => null }).verdict // "real"
 */
export function concludeShift(tested: Tested): Omit<Shift, 'hotelling'> {
  const { first, second, dx, dy, shape, spread, matters, alpha, test } = tested;
  const { variance, f, df } = test;
  const p = Math.max(test.p, SMALLEST_P);
  const size = Math.hypot(dx, dy);
  const radius = Math.max(Math.sqrt(2 * variance * fQuantileUpper(alpha, ...df)), test.alongLine?.(alpha) ?? 0);
  const verdict = p < alpha ? 'real' : size + radius <= matters ? 'no sign' : 'cannot tell';
  const axis = (which: 'x' | 'y', distance: number) => {
    const own = tested.axis(which);
    if (own === null) return { half: radius, real: verdict === 'real' && Math.abs(distance) > radius };
    return { half: own.half, real: verdict === 'real' && own.p < alpha };
  };
  const [x, y] = [axis('x', dx), axis('y', dy)];
  return {
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
  };
}
