import { Matrix } from 'ml-matrix';
import type { PicturePoint } from '../model/picture.ts';
import type { FaceFit } from './faceFit.ts';
import { MOVES } from './moves.ts';
import { chained, toFace } from './plane.ts';

/** What tells which way is up: the picture itself, or marks in it. A round face does not. */
export type UpMark =
  | 'picture'
  /** A point straight above the centre. */
  | { readonly above: PicturePoint }
  /** Two points level with one another on the face, as the upper corners of its sheet are. */
  | { readonly left: PicturePoint; readonly right: PicturePoint };

/** Nobody holds a camera more level than this without a mark, as a standard deviation (from memory) [rad]. */
const HAND_HELD = (2 * Math.PI) / 180;
/** How well a mark is clicked, in widths of the picture: a pixel or two of a screen (from memory). */
const CLICK = 0.001;

/**
 * The same face turned so that up is up.
 *
 * @equation by the picture: the point that all uprights run to lies in the picture's middle column, (h₁ - ½h₇) cos φ + (h₂ - ½h₈) sin φ = 0; by marks: the mark's own direction on the face
 * @param fit - how the face lies in the picture [record]
 * @param by - the picture, a point above the centre, or two level points [choice]
 * @returns the fit, turned, with its doubt about the turn [record]
 * @validity by the picture: a whole picture from a camera held level, and 2 degrees of doubt; marks in one place leave the fit as it is
 * @source hartley-zisserman-2004, own derivation
 * @example upright({ homography: [0, 1, 0.5, 1, 0, 0.5, 0, 0, 1], residual: 0, marks: 9, unit: 1, covariance: null, turn: 0 }, 'picture').homography[4] // -1
 */
export function upright(fit: FaceFit, by: UpMark): FaceFit {
  const [h1 = 0, h2 = 0, , h4 = 0, h5 = 0, , h7 = 0, h8 = 0] = fit.homography;
  if (by === 'picture') {
    const up = Math.atan2(-(h1 - h7 / 2), h2 - h8 / 2);
    // Two directions are upright; up is the one in which a point rises in the picture.
    const rises = h4 * Math.cos(up) + h5 * Math.sin(up) < 0;
    return turnedBy(fit, (rises ? up : up + Math.PI) - Math.PI / 2, HAND_HELD);
  }
  const clicked = (length: number) => CLICK / (length * Math.hypot(h1, h4));
  if ('above' in by) {
    const { x, y } = toFace(fit.homography, by.above);
    const away = Math.hypot(x, y);
    return away > 0 ? turnedBy(fit, Math.atan2(y, x) - Math.PI / 2, clicked(away)) : fit;
  }
  const [left, right] = [toFace(fit.homography, by.left), toFace(fit.homography, by.right)];
  const apart = Math.hypot(right.x - left.x, right.y - left.y);
  return apart > 0 ? turnedBy(fit, Math.atan2(right.y - left.y, right.x - left.x), Math.SQRT2 * clicked(apart)) : fit;
}

function turnedBy(fit: FaceFit, angle: number, turn: number): FaceFit {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const homography = chained(fit.homography, [cos, -sin, 0, sin, cos, 0, 0, 0, 1]);
  return { ...fit, homography, turn, covariance: fit.covariance && covarianceTurned(fit.covariance, angle) };
}

/** The small moves seen from the turned face: the stretches turn twice as far as the shifts and the tips; size and turn stay. */
function covarianceTurned(covariance: readonly (readonly number[])[], angle: number): number[][] {
  const turn = Matrix.eye(MOVES);
  for (const [first, times] of [
    [1, 2],
    [3, 1],
    [5, 1],
  ] as const) {
    const [cos, sin] = [Math.cos(times * angle), Math.sin(times * angle)];
    turn.set(first, first, cos);
    turn.set(first, first + 1, sin);
    turn.set(first + 1, first, -sin);
    turn.set(first + 1, first + 1, cos);
  }
  return turn
    .mmul(new Matrix(covariance.map((row) => [...row])))
    .mmul(turn.transpose())
    .to2DArray();
}
