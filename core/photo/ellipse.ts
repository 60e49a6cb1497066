import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';
import type { Point } from '../group/points.ts';
import type { Homography } from './plane.ts';

/** An ellipse in a plane: half axes in the plane's unit, and how far the long one is turned from x towards y [rad]. */
export interface PlaneEllipse {
  readonly centre: Point;
  readonly long: number;
  readonly short: number;
  readonly turn: number;
}

/**
 * The ellipse nearest to some points, in the algebraic sense.
 *
 * @equation minimise Σ (a x² + b xy + c y² + d x + e y + f)² subject to 4ac - b² = 1, in two blocks, points moved to their mean and scaled to one
 * @param points - points about the ellipse, in any unit [list]
 * @returns the ellipse, or null when there are fewer than five points or they lie on a line [record]
 * @validity leans to the small side under noise on short arcs; half an ellipse or more is well fitted
 * @source halir-flusser-1998, fitzgibbon-1999
 * @example ellipseThrough([[2, 0], [-2, 0], [0, 1], [0, -1], [1.2, 0.8]].map(([x, y]) => ({ x, y }))).long // 2
 */
export function ellipseThrough(points: readonly Point[]): PlaneEllipse | null {
  const n = points.length;
  if (n < 5) return null;
  const mean = { x: points.reduce((sum, { x }) => sum + x, 0) / n, y: points.reduce((sum, { y }) => sum + y, 0) / n };
  const spread = Math.sqrt(points.reduce((sum, { x, y }) => sum + (x - mean.x) ** 2 + (y - mean.y) ** 2, 0) / n);
  if (!(spread > 0) || !Number.isFinite(spread)) return null;
  const scaled = points.map(({ x, y }) => [(x - mean.x) / spread, (y - mean.y) / spread] as const);
  const squares = new Matrix(scaled.map(([x, y]) => [x * x, x * y, y * y]));
  const lines = new Matrix(scaled.map(([x, y]) => [x, y, 1]));
  const [s1, s2, s3] = [squares.transpose().mmul(squares), squares.transpose().mmul(lines), lines.transpose().mmul(lines)];
  const values = new EigenvalueDecomposition(s3, { assumeSymmetric: true }).realEigenvalues;
  if (!(Math.min(...values) > 1e-9 * Math.max(...values))) return null;
  const back = inverse(s3).mmul(s2.transpose()).neg();
  const reduced = s1.add(s2.mmul(back));
  const constrained = new Matrix([
    reduced.getRow(2).map((v) => v / 2),
    reduced.getRow(1).map((v) => -v),
    reduced.getRow(0).map((v) => v / 2),
  ]);
  const vectors = new EigenvalueDecomposition(constrained).eigenvectorMatrix;
  for (let k = 0; k < 3; k++) {
    const [a, b, c] = [vectors.get(0, k), vectors.get(1, k), vectors.get(2, k)];
    if (!(4 * a * c - b * b > 0)) continue;
    const [d = 0, e = 0, f = 0] = back.mmul(Matrix.columnVector([a, b, c])).to1DArray();
    return shapeOf([a, b, c, d, e, f], mean, spread);
  }
  return null;
}

type Conic = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

function shapeOf([a, b, c, d, e, f]: Conic, mean: Point, spread: number): PlaneEllipse | null {
  const determinant = 4 * a * c - b * b;
  const x = (b * e - 2 * c * d) / determinant;
  const y = (b * d - 2 * a * e) / determinant;
  const level = -(f + (d * x + e * y) / 2);
  const half = Math.hypot(a - c, b);
  // Along its own axes the conic is l x² + s y² = level; the smaller of the two belongs to the long axis.
  const sign = a + c < 0 ? -1 : 1;
  const long = Math.sqrt((2 * level * sign) / (sign * (a + c) - half));
  const short = Math.sqrt((2 * level * sign) / (sign * (a + c) + half));
  if (!(Number.isFinite(long) && short > 0)) return null;
  return {
    centre: { x: mean.x + spread * x, y: mean.y + spread * y },
    long: long * spread,
    short: short * spread,
    turn: half === 0 ? 0 : Math.atan2(-sign * b, -sign * (a - c)) / 2,
  };
}

/**
 * The homography from a picture to a face on which an ellipse is a circle about the centre, seen from far away and as upright as an ellipse can tell.
 *
 * @equation turn the long axis to x, stretch both axes to the ring's radius, turn back; y from down to up
 * @param ellipse - of the ring, in the picture [record]
 * @param radius - of the ring on the face, in the face's unit [-]
 * @returns the homography from picture to face [list]
 * @validity an ellipse of two axes above 0
 * @source own derivation
 * @example farHomography({ centre: { x: 1, y: 1 }, long: 2, short: 2, turn: 0 }, 1) // [0.5, 0, -0.5, 0, -0.5, 0.5, 0, 0, 1]
 */
export function farHomography({ centre, long, short, turn }: PlaneEllipse, radius: number): Homography {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [p, q] = [radius / long, radius / short];
  const xx = p * cos * cos + q * sin * sin;
  const xy = (p - q) * cos * sin;
  const yy = p * sin * sin + q * cos * cos;
  return [xx, xy, -(xx * centre.x + xy * centre.y), 0 - xy, -yy, xy * centre.x + yy * centre.y, 0, 0, 1];
}
