import { ok, refuse, type Result } from '../model/problem.ts';
import { fUpperTail } from './distributions.ts';
import { axisVariance, momentsOf, type Covariance, type Moments } from './moments.ts';
import { checkedPoints, ONE_HOLE, type Point } from './points.ts';
import { shapeFactor } from './shape.ts';
import { shiftTest } from './shiftTest.ts';
import { heldBack } from './welch.ts';

interface Ratio {
  readonly f: number;
  readonly df: readonly [numerator: number, denominator: number];
  readonly p: number;
}

/** Whether several groups have one centre. */
export interface SeveralCentres extends Ratio {
  readonly verdict: 'differ' | 'cannot tell';
  readonly centres: readonly Point[];
  /** Mean of all shots. */
  readonly common: Point;
  /** c, ½ for round groups to 1 for a line. */
  readonly shape: number;
  /** The same by weights of each group's own spread, which holds where a loose group of few stands beside tight ones. */
  readonly weighted: Ratio;
  /** The plain one-way test for round groups of one spread, to set beside. */
  readonly plain: Ratio;
  /** Wilks' test, which lets the groups be oval but asks that all are so alike; null when the shots are too few or on a line. */
  readonly wilks: (Ratio & { readonly lambda: number }) | null;
}

/** Smaller determinants than this, against the product of the variances, are lines. */
const LINE = 1e-10;
const ALPHA = 0.05;
/** The weighted test alone is too quick with many small groups, the other with a small loose one: it may only hold the other back, and by so much. */
const HELD_BACK = 0.8;

/**
 * Whether several groups have one centre, whatever their spreads and sizes and however oval they are.
 *
 * @equation F = Σ n_i |x̄_i - x̄|² / (2 Σ (1 - f_i) s_i²), f_i = n_i/N (Brown and Forsythe), with (1/c) (Σ (1 - f_i) s_i²)²/(Σ s_i⁴ (1 - 2 f_i) + (Σ f_i s_i²)²) (Mehrotra) and (Σ (1 - f_i) u_i)²/(c Σ (1 - f_i)² u_i²/(n_i - 1)) degrees of freedom, c of shapeFactor, u_i = s_i² heldBack. Beside it by weights w_i = n_i/s_i² (Welch), a = 1/c, q = g - 1, r = a q, h_i = 1 - w_i/Σ w with u in place of s², Λ = Σ c h_i²/(n_i - 1): F_w = ½ a Σ w_i |x̄_i - x̃|²/(r + 2 a Λ (r - a)/(r + 2)) with r and q (r + 2)/((a + 2) Λ). p is the larger of that of F and 0.8 of that of F_w
 * @param groups - places of the shots, group by group [list]
 * @returns F, its degrees of freedom, p and verdict, the plain test and Wilks' beside it, or a refusal: `too-few-groups`, `one-shot`, `one-hole`, `bad-position` [record]
 * @validity independent, about normal shots, two or more in each group, one spread at least above nought; one look. About 7 % false alarms at most in what was simulated (core/SCIENCE.md), where F by itself reaches 9.5 % (a loose group of three beside five of twelve). For two groups it is shiftTest. A verdict that they differ does not say which
 * @source brown-forsythe-1974; mehrotra-1997; welch-1951; brunner-dette-munk-1997
 * @example severalCentres([[{ x: 0, y: 0 }, { x: 0.02, y: 0 }, { x: 0, y: 0.02 }], [{ x: 0.2, y: 0 }, { x: 0.22, y: 0 }, { x: 0.2, y: 0.02 }]]).value.verdict // "differ"
 */
export function severalCentres(groups: readonly (readonly Point[])[]): Result<SeveralCentres> {
  if (groups.length < 2) return refuse('too-few-groups', 'At least two groups were expected: shoot another.', 'groups');
  for (const [i, points] of groups.entries()) {
    if (points.length < 2)
      return refuse(
        'one-shot',
        `Group ${i + 1} has fewer than two shots, which show no spread: shoot more, or leave it out.`,
        'shots',
      );
    const checked = checkedPoints(points, `group ${i + 1}`);
    if (!checked.ok) return checked;
  }
  const moments = groups.map(momentsOf);
  if (moments.every((group) => axisVariance(group) < ONE_HOLE ** 2))
    return refuse(
      'one-hole',
      'Each group lies in one hole, so there is no spread to judge by: place each shot where it struck.',
      'shots',
    );
  const total = moments.reduce((sum, { n }) => sum + n, 0);
  const common = {
    x: moments.reduce((sum, { n, centre }) => sum + (n / total) * centre.x, 0),
    y: moments.reduce((sum, { n, centre }) => sum + (n / total) * centre.y, 0),
  };
  const between = moments.reduce((sum, { n, centre }) => sum + n * ((centre.x - common.x) ** 2 + (centre.y - common.y) ** 2), 0);
  const [first, second, ...rest] = moments;
  const two = first !== undefined && second !== undefined && rest.length === 0 ? shiftTest(first, second) : null;
  const shape = two?.shape ?? shapeFactor(moments);
  const corrected = correctedRatio(moments, total, between, shape);
  const weighted = weightedRatio(moments, shape) ?? corrected;
  const p = Math.max(corrected.p, HELD_BACK * weighted.p, two?.p ?? 0);
  return ok({
    ...corrected,
    p,
    verdict: p < ALPHA ? 'differ' : 'cannot tell',
    centres: moments.map(({ centre }) => centre),
    common,
    shape,
    weighted,
    plain: plainRatio(moments, total, between),
    wilks: wilksTest(groups),
  });
}

function correctedRatio(moments: readonly Moments[], total: number, between: number, shape: number): Ratio {
  let [weighed, held, spent, across, within] = [0, 0, 0, 0, 0];
  for (const group of moments) {
    const variance = axisVariance(group);
    const share = group.n / total;
    weighed += (1 - share) * variance;
    const raised = (1 - share) * variance * heldBack(group.n, shape);
    held += raised;
    spent += raised ** 2 / (group.n - 1);
    across += variance ** 2 * (1 - 2 * share);
    within += share * variance;
  }
  const df = [weighed ** 2 / (shape * (across + within ** 2)), held ** 2 / (shape * spent)] as const;
  const f = between / (2 * weighed);
  return { f, df, p: fUpperTail(f, ...df) };
}

/** Null where a group without any spread would have all the weight. */
function weightedRatio(moments: readonly Moments[], shape: number): Ratio | null {
  if (moments.some((group) => axisVariance(group) < ONE_HOLE ** 2)) return null;
  const weights = moments.map((group) => group.n / axisVariance(group));
  const held = moments.map((group, i) => (weights[i] ?? 0) / heldBack(group.n, shape));
  const [weight, heldWeight] = [weights, held].map((list) => list.reduce((sum, each) => sum + each, 0)) as [number, number];
  const mean = (axis: 'x' | 'y'): number =>
    moments.reduce((sum, { centre }, i) => sum + ((weights[i] ?? 0) / weight) * centre[axis], 0);
  const [x, y] = [mean('x'), mean('y')];
  let [between, spent] = [0, 0];
  moments.forEach(({ n, centre }, i) => {
    between += (weights[i] ?? 0) * ((centre.x - x) ** 2 + (centre.y - y) ** 2);
    spent += (shape * (1 - (held[i] ?? 0) / heldWeight) ** 2) / (n - 1);
  });
  const [a, q] = [1 / shape, moments.length - 1];
  const r = a * q;
  // To the order 1/n the mean and variance of the weighted sum, both axes sharing each group's s²; exact Welch for two groups.
  const f = (a * between) / 2 / (r + (2 * a * spent * (r - a)) / (r + 2));
  const df = [r, (q * (r + 2)) / ((a + 2) * spent)] as const;
  return { f, df, p: fUpperTail(f, ...df) };
}

function plainRatio(moments: readonly Moments[], total: number, between: number): Ratio {
  const within = moments.reduce((sum, group) => sum + 2 * (group.n - 1) * axisVariance(group), 0);
  const df = [2 * (moments.length - 1), 2 * (total - moments.length)] as const;
  const f = between / df[0] / (within / df[1]);
  return { f, df, p: fUpperTail(f, ...df) };
}

/**
 * Wilks' test that several groups of places have one mean.
 *
 * @equation Λ = det W/det (B + W), F = (1 - √Λ)/√Λ (N - g - 1)/(g - 1) ~ F(2 (g - 1), 2 (N - g - 1)), exact in the plane
 * @param groups - places of the shots, group by group, two groups or more [list]
 * @returns Λ, F, degrees of freedom and p; null when there are too few shots or all lie on a line [record]
 * @validity normal errors with one covariance; finite places, none of the groups empty
 * @source johnson-wichern-2007
 * @example wilksTest([[{ x: 0, y: 0 }], [{ x: 1, y: 1 }]]) // null
 */
export function wilksTest(groups: readonly (readonly Point[])[]): SeveralCentres['wilks'] {
  const all = groups.flat();
  const [n, g] = [all.length, groups.length];
  if (n < g + 2 || g < 2) return null;
  const within = groups.filter((points) => points.length > 1).map((points) => sumsOf(momentsOf(points)));
  const w = within.reduce((sum, part) => ({ xx: sum.xx + part.xx, xy: sum.xy + part.xy, yy: sum.yy + part.yy }), {
    xx: 0,
    xy: 0,
    yy: 0,
  });
  const detW = w.xx * w.yy - w.xy * w.xy;
  if (!(detW > LINE * w.xx * w.yy)) return null;
  const t = sumsOf(momentsOf(all));
  const lambda = Math.min(1, detW / (t.xx * t.yy - t.xy * t.xy));
  const root = Math.sqrt(lambda);
  const df = [2 * (g - 1), 2 * (n - g - 1)] as const;
  const f = ((1 - root) / root) * (df[1] / df[0]);
  return { lambda, f, df, p: fUpperTail(f, ...df) };
}

const sumsOf = ({ n, covariance: { xx, xy, yy } }: Moments): Covariance => ({
  xx: (n - 1) * xx,
  xy: (n - 1) * xy,
  yy: (n - 1) * yy,
});
