import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import type { Point } from '../group/points.ts';
import type { PicturePoint } from '../model/picture.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { slopesOf, type FaceFit } from './faceFit.ts';
import { MOVES, movesAt, settle, type Take } from './moves.ts';
import { chained, leadingBack, through, type Homography } from './plane.ts';

/** A point of the face that somebody has marked in the picture. */
export interface MarkedPoint {
  /** Where it truly is [m]. */
  readonly face: Point;
  /** Where it was marked [widths]. */
  readonly picture: PicturePoint;
}

const finite = ({ face, picture }: MarkedPoint): boolean => [face.x, face.y, picture.x, picture.y].every(Number.isFinite);
const CANNOT = 'The marked points do not fix the face: four are needed of which no three lie on a line, spread wide over it.';

/**
 * How a face lies in a picture, from points of known place.
 *
 * @equation direct linear transform of points moved to their mean and scaled, then least squares of the distances in the picture, Σ |H x - x'|² → min
 * @param marks - at least four points of the face and where they were marked [list]
 * @returns the fit, or a refusal: `too-few-marks`, `bad-mark`, `marks-on-a-line` [record]
 * @validity exact for four points, which leave no error to tell; a plane face and a lens that keeps lines straight
 * @source hartley-zisserman-2004
 * @example fitPoints([[0, 0], [1, 0], [1, 1], [0, 1]].map(([x, y]) => ({ face: { x, y }, picture: { x: x / 2, y: 1 - y / 2 } }))).value.homography // [0.5, 0, 0, 0, -0.5, 1, 0, 0, 1]
 */
export function fitPoints(marks: readonly MarkedPoint[]): Result<FaceFit> {
  if (marks.length < 4)
    return refuse('too-few-marks', `At least four marked points of the face were expected, and ${marks.length} were given.`);
  const bad = marks.findIndex((mark) => !finite(mark));
  if (bad >= 0) return refuse('bad-mark', `Mark ${bad + 1} is no place: mark it again.`);
  const face = scaling(marks.map((mark) => mark.face));
  const picture = scaling(marks.map((mark) => mark.picture));
  const linear = face === null || picture === null ? null : directLinear(marks, face, picture);
  if (linear === null) return refuse('marks-on-a-line', CANNOT);
  const unit = Math.max(...marks.map((mark) => Math.hypot(mark.face.x, mark.face.y)));
  const inUnits = chained(linear, [unit, 0, 0, 0, unit, 0, 0, 0, 1]);
  const tell = (homography: Homography, take: Take) => marks.forEach((mark) => takeMark(mark, homography, unit, take));
  const settled = settle(inUnits, MOVES, tell, 'from');
  if (settled === null) return refuse('marks-on-a-line', CANNOT);
  const homography = tidy(chained(settled.homography, [1 / unit, 0, 0, 0, 1 / unit, 0, 0, 0, 1]));
  const spare = 2 * marks.length - 8;
  return ok({
    homography,
    residual: rootMeanSquare(marks, homography),
    marks: marks.length,
    unit,
    covariance: spare > 0 ? settled.inverse.map((row) => row.map((c) => (c * settled.squares) / spare)) : null,
    turn: 0,
  });
}

/** Last entry 1, as every face in view of a camera allows when its centre is in front of it; what is nought but for rounding is nought. */
function tidy(homography: Homography): Homography {
  const last = homography[8] ?? 1;
  return homography.map((x) => (Math.abs(x / last) < 1e-14 ? 0 : x / last));
}

function takeMark({ face, picture }: MarkedPoint, homography: Homography, unit: number, take: Take): void {
  const at = { x: face.x / unit, y: face.y / unit };
  const seen = through(homography, at);
  const [alongX, alongY] = slopesOf(homography, at);
  const moves = movesAt(at.x, at.y);
  take(
    seen.x - picture.x,
    Float64Array.from(moves, ([dx, dy]) => alongX.x * dx + alongY.x * dy),
    1,
  );
  take(
    seen.y - picture.y,
    Float64Array.from(moves, ([dx, dy]) => alongX.y * dx + alongY.y * dy),
    1,
  );
}

/** Moves points to their mean and scales them to a root mean square distance of √2; null when they all lie in one place. */
function scaling(points: readonly Point[]): Homography | null {
  const n = points.length;
  const x = points.reduce((sum, point) => sum + point.x, 0) / n;
  const y = points.reduce((sum, point) => sum + point.y, 0) / n;
  const spread = Math.sqrt(points.reduce((sum, point) => sum + (point.x - x) ** 2 + (point.y - y) ** 2, 0) / n);
  const s = Math.SQRT2 / spread;
  return Number.isFinite(s) ? [s, 0, -s * x, 0, s, -s * y, 0, 0, 1] : null;
}

function directLinear(marks: readonly MarkedPoint[], face: Homography, picture: Homography): Homography | null {
  const rows = marks.flatMap((mark) => {
    const { x, y } = through(face, mark.face);
    const { x: u, y: v } = through(picture, mark.picture);
    return [
      [-x, -y, -1, 0, 0, 0, u * x, u * y, u],
      [0, 0, 0, -x, -y, -1, v * x, v * y, v],
    ];
  });
  const matrix = new Matrix(rows);
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(matrix.transpose().mmul(matrix), {
    assumeSymmetric: true,
  });
  // Ascending: two values of nought mean that more than one homography would do.
  const [, second = 0] = realEigenvalues;
  if (!(second > 1e-10 * (realEigenvalues.at(-1) ?? 0))) return null;
  const h = eigenvectorMatrix.getColumn(0);
  const determinant = new Matrix([h.slice(0, 3), h.slice(3, 6), h.slice(6)]);
  const [first = 0, , last = 0] = new EigenvalueDecomposition(determinant.transpose().mmul(determinant), {
    assumeSymmetric: true,
  }).realEigenvalues;
  return first > 1e-12 * last ? chained(leadingBack(picture), chained(h, face)) : null;
}

function rootMeanSquare(marks: readonly MarkedPoint[], homography: Homography): number {
  const back = leadingBack(homography);
  const squares = marks.map((mark) => {
    const { x, y } = through(back, mark.picture);
    return (x - mark.face.x) ** 2 + (y - mark.face.y) ** 2;
  });
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / marks.length);
}
