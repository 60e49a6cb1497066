import { ok, refuse, type Result } from '../model/problem.ts';
import { fUpperTail } from './distributions.ts';
import { groupMeasures, type GroupMeasures } from './measures.ts';
import { inOneHole, type Point } from './points.ts';

/** What the archer's earlier groups with this bow, these arrows and this distance say of the spread. */
export interface PastSpread {
  /** Of one axis [m]. */
  readonly spread: number;
  /** Degrees of freedom behind it: 2 (n - 1) for each round group. */
  readonly df: number;
}

export interface JudgedShot {
  /** Place in the list of shots, from 0. */
  readonly index: number;
  /** From the centre of the group [m]. */
  readonly distance: number;
  /** Chance of a shot at least so far out, for this one alone. */
  readonly p: number;
  /** Out beyond what the farthest of so many shots is: p below α/n. */
  readonly flyer: boolean;
}

export interface Flyers {
  /** What the shots were judged by. */
  readonly by: 'history' | 'these shots';
  /** In the order of the shots; none is left out. */
  readonly shots: readonly JudgedShot[];
  /** The same shots by their own spread, shown beside a judgement by history. */
  readonly beside: readonly JudgedShot[];
  /** The figures of all shots: the ones that count. */
  readonly all: GroupMeasures;
  /** The figures without the flyers, to show beside; their spread is then too small. Null without flyers, or where the rest has no figures. */
  readonly without: GroupMeasures | null;
}

const FEWEST = 3;

function expectAlpha(alpha: number): void {
  if (!(alpha > 0 && alpha < 0.5)) throw new RangeError('alpha must lie between 0 and 0.5.');
}

/**
 * Share of a group's sum of squares beyond which one shot stands out from the others.
 *
 * @equation r²/SS > (1 - (α/n)^(1/(n - 2))) (n - 1)/n, since n/(n - 1) r²/SS ~ Beta(1, n - 2)
 * @param n - n, shots in the group, ≥ 3 [-]
 * @param alpha - α, over all shots [-]
 * @returns the share, below (n - 1)/n [-]
 * @validity round normal groups. Three shots show one four spreads out in 10 groups of 100, and two flyers together hide each other. An argument outside throws RangeError
 * @source own derivation
 * @example Math.round(1e5 * flyerShare(6, 0.05)) // 58155
 */
export function flyerShare(n: number, alpha: number): number {
  if (!(n >= FEWEST)) throw new RangeError('Three shots or more are needed.');
  expectAlpha(alpha);
  return ((1 - (alpha / n) ** (1 / (n - 2))) * (n - 1)) / n;
}

/**
 * Shots that stand out from a group, with its figures with and without them; none is dropped.
 *
 * @equation against history: n/(n - 1) r²/(2 s0²) ~ F(2, ν0); else n/(n - 1) r²/SS ~ Beta(1, n - 2); a flyer when p < α/n
 * @param points - places of the shots [m]
 * @param past - spread of the archer's earlier groups, or null [record]
 * @param alpha - α, over all shots of a group, 0.05 when left out [-]
 * @returns each shot judged and both sets of figures, or a refusal: `no-shots`, `one-shot`, `too-few`, `one-hole`, `bad-position`, `bad-history` [record]
 * @validity round normal shots like those of the history, which must be of the same bow, arrows and distance. Heavy tails give flyers that are nothing but tails. An α outside 0 … 0.5 throws RangeError
 * @source own derivation
 * @example flyersOf([{ x: 0, y: 0 }, { x: 0.01, y: 0 }, { x: 0, y: 0.2 }], { spread: 0.01, df: 40 }).value.shots.map(({ flyer }) => flyer) // [true, true, true]
 */
export function flyersOf(points: readonly Point[], past: PastSpread | null, alpha = 0.05): Result<Flyers> {
  expectAlpha(alpha);
  const measured = groupMeasures(points);
  if (!measured.ok) return measured;
  const n = points.length;
  if (n < FEWEST)
    return refuse('too-few', 'Of two shots neither can be told to be the flyer: at least three are needed.', 'shots');
  if (past !== null && !(past.spread > 0 && past.df > 0 && Number.isFinite(past.spread) && Number.isFinite(past.df))) {
    return refuse('bad-history', 'A past spread above 0 m with its degrees of freedom was expected.', 'history');
  }
  const all = measured.value;
  const radii = points.map(({ x, y }) => Math.hypot(x - all.centre.x, y - all.centre.y));
  const squares = radii.reduce((sum, r) => sum + r * r, 0);
  const judge = (tail: (r: number) => number): JudgedShot[] =>
    radii.map((distance, index) => {
      const p = tail(distance);
      return { index, distance, p, flyer: p < alpha / n };
    });
  const grown = n / (n - 1);
  const own = judge((r) => Math.max(0, 1 - (grown * r * r) / squares) ** (n - 2));
  const shots = past === null ? own : judge((r) => fUpperTail((grown * r * r) / (2 * past.spread ** 2), 2, past.df));
  const rest = points.filter((_, i) => shots[i]?.flyer !== true);
  const without = rest.length === n || rest.length < 2 || inOneHole(rest) ? null : groupMeasures(rest);
  return ok({
    by: past === null ? 'these shots' : 'history',
    shots,
    beside: own,
    all,
    without: without?.ok === true ? without.value : null,
  });
}
