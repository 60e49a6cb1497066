import { tQuantile, tTwoSided } from './distributions.ts';
import type { Moments } from './moments.ts';
import type { Point } from './points.ts';
import { dominance, dominantShape, shapeFactor } from './shape.ts';
import { welchTest, type CentreTest } from './welch.ts';

/** Three shots and three show no shape: taken for round, and the test along the shift's own line guards against lines. */
const SHAPELESS = 3;
const ROUND = 0.5;

/** How the test along the shift's own line is weighed, by simulation. */
const LEAST = 0.6;
const BY_DOMINANCE = 2;
const BY_SHAPE = 0.06;
const HELD_BACK = 24;

/** The default test of two centres. */
export interface ShiftTest extends CentreTest {
  /** c, ½ for round groups, 1 for a line. */
  readonly shape: number;
  /** How far the centres must lie apart on this line before it is told at α [m]; 0 where the line has no say. */
  readonly alongLine: (alpha: number) => number;
}

/**
 * The default test of two centres: shape-corrected Welch, held back where the shift is not told along its own line.
 *
 * @equation p = max(p of welchTest, λ p of alongShift); c of shapeFactor, but ½ for three shots and three
 * @param first - moments of one group [record]
 * @param second - moments of the other [record]
 * @returns v1 + v2, F, its degrees of freedom, c and the larger p [record]
 * @validity false alarms 3 to 6 % in the listed cases and at most about 7 % in all that were tried, from 2 shots to 24, ovals that cross or lie beside round groups too (core/SCIENCE.md). Without any spread it throws RangeError
 * @source own derivation
 * @example shiftTest({ n: 6, centre: { x: 0, y: 0 }, covariance: { xx: 3, xy: 0, yy: 3 } }, { n: 6, centre: { x: 9, y: 0 }, covariance: { xx: 3, xy: 0, yy: 3 } }).shape // 0.5
 */
export function shiftTest(first: Moments, second: Moments): ShiftTest {
  const shape = Math.max(first.n, second.n) === SHAPELESS && first.n === second.n ? ROUND : shapeFactor([first, second]);
  const test = welchTest(first, second, shape);
  const line = alongShift(first, second);
  return {
    ...test,
    shape,
    p: Math.max(test.p, line.weight * line.p),
    alongLine: (alpha) => askedAlong(line, alpha),
  };
}

/** Welch's t of two centres on the line through both. */
export interface AlongShift {
  /** λ: how much the line has to say, 0 to 1. */
  readonly weight: number;
  /** Standard error of the distance on this line [m]. */
  readonly error: number;
  readonly df: number;
  readonly p: number;
}

/**
 * Welch's t test of two centres along the line through both, and how much it has to say.
 *
 * @equation alongShiftOf both groups, d from the first centre to the second
 * @param first - moments of one group [record]
 * @param second - moments of the other [record]
 * @returns λ, standard error, degrees of freedom and p; λ = 0 where the centres are one or nothing scatters on that line [record]
 * @validity a few shots cannot show that they scatter on a line; where they do, a shift on that line must stand by itself. From 12 shots each the line no longer decides
 * @source welch-1947
 * @example alongShift({ n: 2, centre: { x: 0, y: 0 }, covariance: { xx: 1, xy: 0, yy: 0 } }, { n: 2, centre: { x: 1, y: 0 }, covariance: { xx: 1, xy: 0, yy: 0 } }).df // 2
 */
export function alongShift(first: Moments, second: Moments): AlongShift {
  const shift = { x: second.centre.x - first.centre.x, y: second.centre.y - first.centre.y };
  return alongShiftOf([first, second], shift);
}

/**
 * The same for a shift put together out of several pairs of groups.
 *
 * @equation w along d, a_i = w'S_i w/n_i, t = |d|/√(Σ a_i) with (Σ u_i)²/Σ u_i²/(n_i - 1) degrees of freedom, u_i = a_i (1 + 24/(n_i - 1)²); λ = min(1, 0.6 + 2 D) (2 e - 1)^0.06, D of dominance, e of dominantShape
 * @param groups - moments of all groups, each pair's by its share in d [list]
 * @param shift - d [record]
 * @returns λ, standard error, degrees of freedom and p; λ = 0 where there is no shift or nothing scatters along it [record]
 * @validity as alongShift; the numbers are weighed by simulation of two groups
 * @source welch-1947
 * @example alongShiftOf([0, 1].map((x) => ({ n: 2, centre: { x, y: 0 }, covariance: { xx: 1, xy: 0, yy: 0 } })), { x: 1, y: 0 }).error // 1
 */
export function alongShiftOf(groups: readonly Moments[], shift: Point): AlongShift {
  const size = Math.hypot(shift.x, shift.y);
  const [x, y] = size > 0 ? [shift.x / size, shift.y / size] : [0, 0];
  const along = ({ n, covariance: { xx, xy, yy } }: Moments): number => Math.max(0, xx * x * x + 2 * xy * x * y + yy * y * y) / n;
  const error = Math.sqrt(groups.reduce((sum, group) => sum + along(group), 0));
  // A millionth of the shift is what rounding leaves of none.
  if (!(error > 1e-6 * size)) return { weight: 0, error: 0, df: 1, p: 0 };
  const held = groups.map((group) => along(group) * (1 + HELD_BACK / (group.n - 1) ** 2));
  const all = held.reduce((sum, u) => sum + u, 0);
  const df = 1 / groups.reduce((sum, { n }, i) => sum + ((held[i] ?? 0) / all) ** 2 / (n - 1), 0);
  const weight = Math.min(1, LEAST + BY_DOMINANCE * dominance(groups)) * (2 * dominantShape(groups) - 1) ** BY_SHAPE;
  return { weight, error, df, p: tTwoSided(size / error, df) };
}

/**
 * How far a shift must go along its own line before the line lets it be told.
 *
 * @equation λ p = α: t_{1 - α/(2 λ)} error
 * @param line - of alongShift [record]
 * @param alpha - α [-]
 * @returns the distance; 0 where the line has no say [m]
 * @validity 0 < α < 1
 * @source own derivation
 * @example askedAlong({ weight: 0.02, error: 1, df: 4, p: 1 }, 0.05) // 0
 */
export const askedAlong = ({ weight, error, df }: AlongShift, alpha: number): number =>
  alpha < weight ? tQuantile(1 - alpha / (2 * weight), df) * error : 0;
