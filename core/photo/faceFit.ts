import type { Point } from '../group/points.ts';
import type { PicturePoint } from '../model/picture.ts';
import { movesAt } from './moves.ts';
import { leadingBack, through, type Homography } from './plane.ts';

/** How a face lies in a picture, and how well that is known. */
export interface FaceFit {
  /** Takes a point of the face [m, x right, y up] to one of the picture [widths, y down], as it is kept with a picture. */
  readonly homography: Homography;
  /** How far the marks lie from where the face would have them, root mean square [m]. */
  readonly residual: number;
  /** How many marks the fit rests on. */
  readonly marks: number;
  /** Length on the face in which the small moves are counted [m]. */
  readonly unit: number;
  /** Of the eight small moves of the face; null when there is no mark to spare. */
  readonly covariance: readonly (readonly number[])[] | null;
  /** How far the face may be turned about its centre against what is written here, as a standard deviation [rad]. */
  readonly turn: number;
}

/** A place read off a picture. */
export interface PhotoPlace extends Point {
  /** Standard deviation of the place by the fit and the click, over both axes together [m]; null when the fit has no mark to spare. */
  readonly error: number | null;
  /** What the doubt about which way is up adds, along the circle about the centre [m]. */
  readonly turned: number;
}

/**
 * The point of the face at a place in the picture, with its doubt.
 *
 * @equation q = G p; Cov q = B Cov δ Bᵀ + J Jᵀ s², B the eight small moves at q and J how q changes with p; error √(trace), turned |q| times the turn
 * @param fit - how the face lies in the picture [record]
 * @param point - a place from the picture's left top corner, in widths of the picture, y down [record]
 * @param click - s, standard deviation of the click on each axis in widths of the picture, 0 when left out [-]
 * @returns the point of the face, its error and what a turned face adds [m]
 * @validity places below the face's horizon; the error is of first order and knows nothing of a face that is not flat or a lens that bends
 * @source jcgm-100, own derivation
 * @example placeOn({ homography: [1, 0, 0, 0, -1, 0, 0, 0, 1], residual: 0, marks: 4, unit: 1, covariance: null, turn: 0 }, { x: 0.3, y: -0.1 }).y // 0.1
 */
export function placeOn(fit: FaceFit, point: PicturePoint, click = 0): PhotoPlace {
  const back = leadingBack(fit.homography);
  const place = through(back, point);
  const turned = fit.turn * Math.hypot(place.x, place.y);
  if (fit.covariance === null) return { ...place, error: null, turned };
  const moves = movesAt(place.x / fit.unit, place.y / fit.unit);
  const variance = [0, 1].reduce((sum, axis) => {
    const along = moves.map((move) => fit.unit * (move[axis] ?? 0));
    return (
      sum +
      (fit.covariance ?? []).reduce(
        (total, row, i) => total + row.reduce((inner, c, j) => inner + c * (along[i] ?? 0) * (along[j] ?? 0), 0),
        0,
      )
    );
  }, 0);
  const [a, b] = slopesOf(back, point);
  const clicked = click * click * (a.x * a.x + a.y * a.y + b.x * b.x + b.y * b.y);
  return { ...place, error: Math.sqrt(Math.max(0, variance) + clicked), turned };
}

/**
 * How a point's image changes with its x and its y.
 *
 * @equation ∂(u/w, v/w)/∂x = ((h₁, h₄) - (u/w, v/w) h₇)/w, and the same for y
 * @param homography - H, row by row [list]
 * @param point - where, in the unit of the plane it takes from [record]
 * @returns the change with x and the change with y, each a pair [list]
 * @validity as for a point through a homography
 * @source hartley-zisserman-2004
 * @example slopesOf([2, 0, 0, 0, 3, 0, 0, 0, 1], { x: 1, y: 1 })[0].x // 2
 */
export function slopesOf(homography: Homography, point: Point): readonly [Point, Point] {
  const [a = 0, b = 0, , d = 0, e = 0, , g = 0, h = 0, i = 0] = homography;
  const w = g * point.x + h * point.y + i;
  const { x, y } = through(homography, point);
  return [
    { x: (a - x * g) / w, y: (d - y * g) / w },
    { x: (b - x * h) / w, y: (e - y * h) / w },
  ];
}
