import { inverse, Matrix } from 'ml-matrix';
import type { Covariance } from './moments.ts';
import type { Point } from './points.ts';
import { shapeFactor } from './shape.ts';

/** One shot of a numbered arrow in one end. */
export interface NumberedShot extends Point {
  readonly arrow: number;
  /** Number of the end, any whole number. */
  readonly end: number;
}

/** Least squares with a mean for each arrow and one for each end, on both axes at once. */
export interface ArrowModel {
  /** The arrows' numbers, ascending. */
  readonly arrows: readonly number[];
  /** Where each arrow strikes against the mean of all arrows [m], in that order. */
  readonly effects: readonly Point[];
  /** Variance of each effect, per variance of one axis, in that order. */
  readonly variances: readonly number[];
  /** Sum of squares and products left over [m²], and its degrees of freedom on each axis. */
  readonly rest: Covariance;
  readonly df: number;
  /** Sum of squares and products that the arrows explain beyond the ends [m²]. */
  readonly explained: Covariance;
}

const distinct = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);

/**
 * Arrow means freed of where each end lay, also where arrows are missing from some ends.
 *
 * @equation p = a_arrow + e_end + error by least squares: C a = Q, C = diag(r) - N diag(1/c) N', Q = T - N diag(1/c) E, with r and c the shots of each arrow and end, T and E their sums, N how often each met; Σ a = 0
 * @param shots - shots of numbered arrows [list]
 * @returns the model; null when the arrows cannot be compared, since some never met others in an end [record]
 * @validity two arrows or more; independent errors. The rest has N - arrows - ends + 1 degrees of freedom, which may be 0
 * @source own derivation
 * @example arrowModel([{ x: 1, y: 0, arrow: 1, end: 1 }, { x: 3, y: 0, arrow: 2, end: 1 }]).effects // [{"x":-1,"y":0},{"x":1,"y":0}]
 */
export function arrowModel(shots: readonly NumberedShot[]): ArrowModel | null {
  const arrows = distinct(shots.map(({ arrow }) => arrow));
  const ends = distinct(shots.map(({ end }) => end));
  const [arrowAt, endAt] = [arrows, ends].map((list) => new Map(list.map((value, i) => [value, i]))) as [
    Map<number, number>,
    Map<number, number>,
  ];
  const [k, m] = [arrows.length, ends.length];
  if (k < 2) return null;
  // Written out, not spread: a set of 10,000 shots is laid out anew for every arrow that is left aside.
  const placed = shots.map(({ x, y, arrow, end }) => ({ x, y, i: arrowAt.get(arrow) ?? 0, j: endAt.get(end) ?? 0 }));
  const met = Matrix.zeros(k, m);
  const endSums = Matrix.zeros(m, 2);
  const right = Matrix.zeros(k, 2);
  for (const { i, j, x, y } of placed) {
    met.set(i, j, met.get(i, j) + 1);
    addTo(endSums, j, x, y);
    addTo(right, i, x, y);
  }
  const perEnd = met.sum('column');
  const thinned = met.clone();
  for (let j = 0; j < m; j++) thinned.mulColumn(j, 1 / (perEnd[j] ?? 1));
  right.sub(thinned.mmul(endSums));
  const normal = Matrix.diag(met.sum('row')).sub(thinned.mmul(met.transpose()));
  if (!allMeet(normal)) return null;
  // Adding the same to every entry leaves contrasts alone and makes the matrix one that can be inverted.
  const g = inverse(normal.add(1 / k));
  const effects = g.mmul(right);
  const levels = Array.from({ length: m }, (_, j) => {
    const hit = (axis: number): number =>
      endSums.get(j, axis) - arrows.reduce((sum, _arrow, i) => sum + met.get(i, j) * effects.get(i, axis), 0);
    return { x: hit(0) / (perEnd[j] ?? 1), y: hit(1) / (perEnd[j] ?? 1) };
  });
  let [xx, xy, yy] = [0, 0, 0];
  for (const { i, j, x, y } of placed) {
    const dx = x - effects.get(i, 0) - (levels[j]?.x ?? 0);
    const dy = y - effects.get(i, 1) - (levels[j]?.y ?? 0);
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  const explained = effects.transpose().mmul(right);
  return {
    arrows,
    effects: arrows.map((_, i) => ({ x: effects.get(i, 0), y: effects.get(i, 1) })),
    // The diagonal of the generalised inverse: g less what was added above.
    variances: arrows.map((_, i) => g.get(i, i) - 1 / k),
    rest: { xx, xy, yy },
    df: shots.length - k - m + 1,
    explained: { xx: explained.get(0, 0), xy: explained.get(0, 1), yy: explained.get(1, 1) },
  };
}

/**
 * How far from round the shots lie about the means of arrows and ends.
 *
 * @equation shapeFactor of the rest's covariance with its degrees of freedom
 * @param model - arrows and ends fitted, with a rest [record]
 * @returns c, ½ for round, 1 for a line and where the shots are too few to show a shape [-]
 * @validity one degree of freedom or more
 * @source brunner-dette-munk-1997
 * @example restShape(arrowModel([[0, 0, 1, 1], [2, 0, 2, 1], [0, 2, 1, 2], [4, 4, 2, 2]].map(([x, y, arrow, end]) => ({ x, y, arrow, end })))) // 1
 */
export function restShape({ rest, df }: ArrowModel): number {
  const covariance = { xx: rest.xx / df, xy: rest.xy / df, yy: rest.yy / df };
  return shapeFactor([{ n: df + 1, centre: { x: 0, y: 0 }, covariance }]);
}

function addTo(sums: Matrix, row: number, x: number, y: number): void {
  sums.set(row, 0, sums.get(row, 0) + x);
  sums.set(row, 1, sums.get(row, 1) + y);
}

/** Whether every arrow is tied to every other by ends in which they met. */
function allMeet(normal: Matrix): boolean {
  const reached = new Set([0]);
  for (const i of reached) {
    for (let other = 0; other < normal.rows; other++) if (normal.get(i, other) < -1e-9) reached.add(other);
  }
  return reached.size === normal.rows;
}
