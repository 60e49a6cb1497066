import { fUpperTail } from './distributions.ts';
import { spatialMedian } from './middle.ts';
import { arrowModel, restShape, type ArrowModel, type NumberedShot } from './oddModel.ts';
import type { Point } from './points.ts';

/** From so many arrows on their middle is a better witness than their mean. */
const ARROWS_WITH_A_MIDDLE = 5;
/** What is left of an arrow when its farthest shot is taken away must still speak against it, if less loudly. */
const LEFT_OVER = 0.1;

/**
 * The arrow that strikes farthest from the middle of all, which odd ones on one side do not draw after them as they do the mean.
 *
 * @equation max |e_i - m|²/v_i, m the spatial median of the arrows' effects e, v_i the variance of each
 * @param model - arrows and ends fitted [record]
 * @returns its place in the model's list, from 0 [-]
 * @validity two arrows or more
 * @source own derivation
 * @example farthestArrow(arrowModel([{ x: 0, y: 0, arrow: 1, end: 1 }, { x: 0, y: 1, arrow: 2, end: 1 }, { x: 9, y: 0, arrow: 3, end: 1 }])) // 2
 */
export function farthestArrow({ effects, variances }: ArrowModel): number {
  const middle = spatialMedian(effects);
  const far = effects.map(({ x, y }, i) => ((x - middle.x) ** 2 + (y - middle.y) ** 2) / (variances[i] ?? 1));
  return far.indexOf(Math.max(...far));
}

/**
 * Chance of an arrow so far from the middle of the others, to be weighed beside the chance of one so far from their mean.
 *
 * @equation F = |e_i - m|²/(2 s² v) with 1/c and ν/c degrees of freedom, m the spatial median of the other effects, v as for the comparison with their mean: that a median errs a little more is let go
 * @param model - arrows and ends fitted [record]
 * @param index - i, place of the arrow in the model's list, from 0 [-]
 * @returns p; 0, so that it has no say, with fewer than five arrows [-]
 * @validity about normal shots; one degree of freedom or more
 * @source own derivation
 * @example againstMiddle(arrowModel([{ x: 0, y: 0, arrow: 1, end: 1 }, { x: 9, y: 0, arrow: 2, end: 1 }]), 1) // 0
 */
export function againstMiddle(model: ArrowModel, index: number): number {
  const { effects, variances, rest, df } = model;
  const k = effects.length;
  const own = effects[index];
  if (k < ARROWS_WITH_A_MIDDLE || own === undefined) return 0;
  const middle = spatialMedian(effects.filter((_, i) => i !== index));
  const variance = (rest.xx + rest.yy) / (2 * df);
  const share = (variances[index] ?? 0) * (k / (k - 1)) ** 2;
  const c = restShape(model);
  return fUpperTail(((own.x - middle.x) ** 2 + (own.y - middle.y) ** 2) / (2 * variance * share), 1 / c, df / c);
}

/**
 * Whether an arrow still stands apart when the shot that speaks loudest against it is taken away: one bad loose makes no odd arrow.
 *
 * @equation the shot of the arrow farthest along its offset from the others of its end is left out; the arrow's own F then has p < 0.1
 * @param shots - numbered shots of the arrows in the comparison [list]
 * @param arrow - number of the arrow [-]
 * @param offset - its offset from the mean of the others [m]
 * @param chanceOf - p of the arrow's offset in a model [choice]
 * @returns true when it does, and when it has no other shot in an end with others, so that nothing can be taken away [choice]
 * @validity shots of a model with a rest; 0.1 was weighed by simulation: it costs hardly a detection, and three in five false ones with heavy tails
 * @source own derivation
 * @example outlastsItsFarthest([], 1, { x: 1, y: 0 }, () => 1) // true
 */
export function outlastsItsFarthest(
  shots: readonly NumberedShot[],
  arrow: number,
  offset: Point,
  chanceOf: (model: ArrowModel) => number | null,
): boolean {
  let loudest: NumberedShot | null = null;
  let farthest = -Infinity;
  for (const shot of shots) {
    if (shot.arrow !== arrow) continue;
    const others = shots.filter((other) => other.end === shot.end && other.arrow !== arrow);
    if (others.length === 0) continue;
    const mean = (axis: 'x' | 'y'): number => others.reduce((sum, other) => sum + other[axis], 0) / others.length;
    const along = (shot.x - mean('x')) * offset.x + (shot.y - mean('y')) * offset.y;
    if (along > farthest) [loudest, farthest] = [shot, along];
  }
  if (loudest === null) return true;
  const fewer = arrowModel(shots.filter((shot) => shot !== loudest));
  if (fewer === null || fewer.df < 1) return true;
  const p = chanceOf(fewer);
  return p === null || p < LEFT_OVER;
}
