import { ok, refuse, type Result } from '../model/problem.ts';
import { fUpperTail } from './distributions.ts';
import type { Covariance } from './moments.ts';
import { checkedNumbers, type EndShot } from './numberedShots.ts';
import { againstMiddle, farthestArrow, outlastsItsFarthest } from './oddCheck.ts';
import { arrowModel, restShape, type ArrowModel, type NumberedShot } from './oddModel.ts';
import { endsForOddArrow } from './oddArrowPlan.ts';
import { ONE_HOLE, type Point } from './points.ts';

/** How far one arrow strikes from the mean of the others. */
export interface ArrowOffset {
  readonly arrow: number;
  /** [m], against the mean of the others that were in the comparison. */
  readonly offset: Point;
  readonly size: number;
  readonly p: number;
}

export interface OddArrows {
  readonly arrows: number;
  readonly ends: number;
  /** Shots whose arrow bears no number, which say nothing here. */
  readonly unnumbered: number;
  /** Spread of one axis about arrow and end means [m]. */
  readonly spread: number;
  /** All arrows against the mean of the others, the worst first. */
  readonly offsets: readonly ArrowOffset[];
  /** Odd ones, in the order they were found, each against those not yet found. */
  readonly odd: readonly ArrowOffset[];
  /** Whether the arrows differ at all: for round or oval shots, and by Wilks. */
  readonly differ: ArrowsDiffer;
  /** The worst that is not shown odd, and about how many ends more would show it, if it stays as far off as seen; null when none can be or it takes more than a thousand. */
  readonly next: { readonly arrow: number; readonly ends: number } | null;
}

export interface ArrowsDiffer {
  readonly f: number;
  readonly df: readonly [numerator: number, denominator: number];
  readonly p: number;
  /** Null where the shots are too few or lie on a line. */
  readonly wilks: {
    readonly lambda: number;
    readonly f: number;
    readonly df: readonly [number, number];
    readonly p: number;
  } | null;
}

const ALPHA = 0.05;
const KEPT = 3;
const POWER = 0.8;

const traceOf = ({ xx, yy }: Covariance): number => xx + yy;
const varianceOf = (model: ArrowModel): number => traceOf(model.rest) / (2 * model.df);
const usable = (model: ArrowModel | null): model is ArrowModel =>
  model !== null && model.df >= 1 && varianceOf(model) > ONE_HOLE ** 2;

/**
 * Whether numbered arrows differ at all in where they strike.
 *
 * @equation with B what k arrows explain beyond the ends and W the rest with ν degrees of freedom on each axis: F = [tr B/(k - 1)]/[tr W/ν] with (k - 1)/c and ν/c; Wilks Λ = det W/det(B + W), F = (1 - √Λ)/√Λ · (ν - 1)/(k - 1) with 2 (k - 1) and 2 (ν - 1)
 * @param model - arrows and ends fitted [record]
 * @returns F, its degrees of freedom and p, and Wilks' beside it [record]
 * @validity normal errors; a model with no rest throws RangeError
 * @source johnson-wichern-2007, brunner-dette-munk-1997
 * @example arrowsDiffer(arrowModel([[0, 0, 1, 1], [2, 0, 2, 1], [0, 2, 1, 2], [4, 4, 2, 2]].map(([x, y, arrow, end]) => ({ x, y, arrow, end })))).df // [1, 1]
 */
export function arrowsDiffer(model: ArrowModel): ArrowsDiffer {
  if (!usable(model)) throw new RangeError('Shots beyond the means of arrows and ends are needed.');
  const between = model.arrows.length - 1;
  const c = restShape(model);
  const f = traceOf(model.explained) / between / (traceOf(model.rest) / model.df);
  const df = [between / c, model.df / c] as const;
  return { f, df, p: fUpperTail(f, ...df), wilks: wilksOf(model, between) };
}

function wilksOf({ rest, explained, df }: ArrowModel, between: number): ArrowsDiffer['wilks'] {
  const det = (xx: number, xy: number, yy: number): number => xx * yy - xy * xy;
  const within = det(rest.xx, rest.xy, rest.yy);
  if (df < 2 || !(within > 1e-10 * (rest.xx + rest.yy) ** 2)) return null;
  const lambda = within / det(rest.xx + explained.xx, rest.xy + explained.xy, rest.yy + explained.yy);
  const root = Math.sqrt(Math.min(1, lambda));
  const f = ((1 - root) / root) * ((df - 1) / between);
  const dfs = [2 * between, 2 * (df - 1)] as const;
  return { lambda, f, df: dfs, p: fUpperTail(f, ...dfs) };
}

/** Every arrow against the mean of the others, in the model's order. */
function offsetsIn(model: ArrowModel): ArrowOffset[] {
  const k = model.arrows.length;
  const c = restShape(model);
  const variance = varianceOf(model);
  // The effects add up to nought, so an arrow lies k/(k - 1) times its effect from the others' mean.
  const stretch = k / (k - 1);
  return model.arrows.map((arrow, i) => {
    const effect = model.effects[i] ?? { x: 0, y: 0 };
    const offset = { x: effect.x * stretch, y: effect.y * stretch };
    const share = (model.variances[i] ?? 0) * stretch ** 2;
    const f = (offset.x ** 2 + offset.y ** 2) / (2 * variance * share);
    return { arrow, offset, size: Math.hypot(offset.x, offset.y), p: fUpperTail(f, 1 / c, model.df / c) };
  });
}

const worstFirst = (offsets: readonly ArrowOffset[]): ArrowOffset[] => [...offsets].sort((a, b) => a.p - b.p);

/** The arrow that is odd among these; null when none is shown to be. */
function oddOneOf(model: ArrowModel, shots: readonly NumberedShot[]): ArrowOffset | null {
  const line = ALPHA / model.arrows.length;
  const index = farthestArrow(model);
  const farthest = offsetsIn(model)[index];
  if (farthest === undefined || farthest.p >= line || againstMiddle(model, index) >= line) return null;
  const again = (fewer: ArrowModel): number | null =>
    usable(fewer) ? (offsetsIn(fewer).find(({ arrow }) => arrow === farthest.arrow)?.p ?? null) : null;
  return outlastsItsFarthest(shots, farthest.arrow, farthest.offset, again) ? farthest : null;
}

/**
 * Which numbered arrows strike apart from the others.
 *
 * @equation d_i = arrow mean - mean of the others, ends removed; F_i = |d_i|²/(2 s² v_i) with 1/c and ν/c degrees of freedom, v_i = k/(m (k - 1)) when all k arrows are in all m ends. The one farthest from the middle of all is odd when p < 0.05/k, from the mean of the others and (five arrows and more) from their spatial median, and when p < 0.1 still without its farthest shot; it is left out of the comparison, and again until none is or three are left
 * @param shots - shots with the number of the arrow and of the end; arrows may be missing from ends [list]
 * @returns the arrows, or a refusal: `bad-position`, `too-few-arrows`, `too-many-arrows`, `twice`, `too-few-ends`, `not-compared`, `one-hole` [record]
 * @validity independent, about normal shots. At most 8 % of sets accuse a good arrow in what was simulated: none odd, one, or two of six the same way, ovals, heavy tails (core/SCIENCE.md); by the mean alone it was 15 % with heavy tails and 10 % with two of six in ovals
 * @source own derivation
 * @example oddArrows([]).problem.code // "too-few-arrows"
 */
export function oddArrows(shots: readonly EndShot[]): Result<OddArrows> {
  const checked = checkedNumbers(shots);
  if (!checked.ok) return checked;
  const model = arrowModel(checked.value);
  if (model === null) {
    return refuse(
      'not-compared',
      'Some arrows were never shot in one end with the others: shoot them together, two ends or more.',
      'end',
    );
  }
  if (model.df < 1) {
    return refuse(
      'too-few-ends',
      'At least two ends with the same numbered arrows were expected: shoot one more end, better five.',
      'end',
    );
  }
  if (!usable(model)) {
    return refuse(
      'one-hole',
      'Every arrow struck its own hole each time, so there is no spread to judge by: place each shot where it struck.',
      'shots',
    );
  }
  const ends = new Set(checked.value.map(({ end }) => end)).size;
  const { odd, left } = stepDown(model, checked.value);
  const worst = worstFirst(offsetsIn(left)).find(({ arrow }) => !odd.some((found) => found.arrow === arrow));
  const k = left.arrows.length;
  const needed = worst === undefined ? null : endsForOddArrow(k, worst.size / Math.sqrt(varianceOf(left)), POWER);
  const judged = odd.length === 0 || k > KEPT;
  return ok({
    arrows: model.arrows.length,
    ends,
    unnumbered: shots.length - checked.value.length,
    spread: Math.sqrt(varianceOf(model)),
    offsets: worstFirst(offsetsIn(model)),
    odd,
    differ: arrowsDiffer(model),
    next: worst === undefined || needed === null || !judged ? null : { arrow: worst.arrow, ends: Math.max(1, needed - ends) },
  });
}

function stepDown(model: ArrowModel, shots: readonly NumberedShot[]): { odd: ArrowOffset[]; left: ArrowModel } {
  const odd: ArrowOffset[] = [];
  let left = model;
  let kept = shots;
  while (odd.length === 0 || left.arrows.length > KEPT) {
    const found = oddOneOf(left, kept);
    if (found === null) break;
    odd.push(found);
    if (left.arrows.length <= KEPT) break;
    kept = kept.filter(({ arrow }) => arrow !== found.arrow);
    const fewer = arrowModel(kept);
    if (!usable(fewer)) break;
    left = fewer;
  }
  return { odd, left };
}
