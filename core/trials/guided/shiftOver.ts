import { alongShiftOf, askedAlong, axisVariance, c4, fUpperTail, MEAN_RADIUS_PER_SPREAD, momentsOf } from '../../group/index.ts';
import { ONE_HOLE, shapeFactor, shiftOfGroups, tQuantile, tTwoSided, type Moments, type Shift } from '../../group/index.ts';
import { concludeShift } from '../../group/concludeShift.ts';
import { checkedPair } from '../../group/pair.ts';
import { ok, type Result } from '../../model/problem.ts';
import type { Pair } from '../timesWider.ts';

/** One distance, told at the farthest one. */
interface Scaled {
  readonly first: Moments;
  readonly second: Moments;
  /** Its weight by its arrows. */
  readonly weight: number;
}

/**
 * The shift of the second kind of arrow from the first over several distances, told at the farthest.
 *
 * @equation d = Σ w_k r_k d_k, r_k = z_far/z_k, w_k = m_k/Σ m, m = n1 n2/(n1 + n2); V = Σ w_k² r_k² (v1 + v2); F = |d|²/(2 V) ~ F(1/c, V²/(c Σ (w² r² v)²/(n - 1))), c of shapeFactor, held back by alongShiftOf as one distance is; an axis by Welch's t in the same way. One distance is shiftOfGroups' own
 * @param pairs - both kinds, distance by distance [list]
 * @param alpha - false alarms allowed, 0.05 when left out [-]
 * @returns the shift at the farthest distance, or a refusal of shiftOfGroups for the first pair that has none [record]
 * @validity two or more arrows of each kind at each distance. With no shift at any distance its false alarms stay near those of shiftOfGroups, however the shift would grow with the distance
 * @source brunner-dette-munk-1997; welch-1947
 * @example shiftOver([{ distance: 18, first: exampleFletched.shots, second: exampleBare.shots }]).value.verdict // "real"
 */
export function shiftOver(pairs: readonly Pair[], alpha = 0.05): Result<Shift> {
  const [only, ...more] = pairs;
  if (only !== undefined && more.length === 0) return shiftOfGroups(only.first, only.second, { alpha });
  for (const { first, second } of pairs) {
    const checked = checkedPair(first, second, undefined);
    if (!checked.ok) return checked;
  }
  const far = Math.max(...pairs.map(({ distance }) => distance));
  const worth = pairs.map(({ first, second }) => (first.length * second.length) / (first.length + second.length));
  const all = worth.reduce((sum, m) => sum + m, 0);
  const parts = pairs.map(({ distance, first, second }, k): Scaled => {
    const grow = far / distance;
    return { first: grown(momentsOf(first), grow), second: grown(momentsOf(second), grow), weight: (worth[k] ?? 0) / all };
  });
  return ok(together(parts, alpha));
}

function grown({ n, centre, covariance: { xx, xy, yy } }: Moments, by: number): Moments {
  return {
    n,
    centre: { x: centre.x * by, y: centre.y * by },
    covariance: { xx: xx * by ** 2, xy: xy * by ** 2, yy: yy * by ** 2 },
  };
}

/** Variance of the weighed difference, and the sum that gives its degrees of freedom. */
function spent(parts: readonly Scaled[], variance: (moments: Moments) => number): { variance: number; squares: number } {
  let [total, squares] = [0, 0];
  for (const { first, second, weight } of parts)
    for (const moments of [first, second]) {
      const v = (weight ** 2 * variance(moments)) / moments.n;
      total += v;
      squares += v ** 2 / (moments.n - 1);
    }
  return { variance: total, squares };
}

function together(parts: readonly Scaled[], alpha: number): Shift {
  const groups = parts.flatMap(({ first, second }) => [first, second]);
  const shape = shapeFactor(groups);
  const sum = (axis: 'x' | 'y') =>
    parts.reduce((d, { first, second, weight }) => d + weight * (second.centre[axis] - first.centre[axis]), 0) + 0;
  const [dx, dy] = [sum('x'), sum('y')];
  const { variance, squares } = spent(parts, axisVariance);
  const df = [1 / shape, variance ** 2 / (shape * squares)] as const;
  const f = Math.hypot(dx, dy) ** 2 / (2 * variance);
  // Each pair has its share in the shift, and in what scatters along it.
  const shares = parts.flatMap(({ first, second, weight }) => [grown(first, weight), grown(second, weight)]);
  const line = alongShiftOf(shares, { x: dx, y: dy });
  const p = Math.max(fUpperTail(f, ...df), line.weight * line.p);
  const nu = groups.reduce((d, { n }) => d + 2 * (n - 1), 0);
  const spread = Math.sqrt(groups.reduce((s, group) => s + 2 * (group.n - 1) * axisVariance(group), 0) / nu) / c4(nu);
  const axis = (which: 'x' | 'y') => {
    const own = spent(parts, ({ covariance }) => covariance[which === 'x' ? 'xx' : 'yy']);
    if (own.variance < ONE_HOLE ** 2) return null;
    const free = own.variance ** 2 / own.squares;
    const error = Math.sqrt(own.variance);
    return { half: tQuantile(1 - alpha / 2, free) * error, p: tTwoSided((which === 'x' ? dx : dy) / error, free) };
  };
  const told = concludeShift({
    first: pooled(parts, 'first', 0, 0),
    second: pooled(parts, 'second', dx, dy),
    dx,
    dy,
    shape,
    spread,
    matters: MEAN_RADIUS_PER_SPREAD * spread,
    alpha,
    test: { variance, f, df, p, alongLine: (level) => askedAlong(line, level) },
    axis,
  });
  return { ...told, hotelling: null };
}

/** One kind of all distances as if shot at the farthest, for the plan of more arrows. */
function pooled(parts: readonly Scaled[], which: 'first' | 'second', x: number, y: number): Moments {
  const groups = parts.map((part) => part[which]);
  const n = groups.reduce((sum, group) => sum + group.n, 0);
  const df = n - groups.length;
  const part = (key: 'xx' | 'xy' | 'yy') => groups.reduce((sum, group) => sum + (group.n - 1) * group.covariance[key], 0) / df;
  return { n, centre: { x, y }, covariance: { xx: part('xx'), xy: part('xy'), yy: part('yy') } };
}
