import type { Point } from '../group/points.ts';
import type { PicturePoint } from '../model/picture.ts';

/** Row by row, a matrix of three by three: takes a point of one plane to one of another, up to a factor. */
export type Homography = readonly number[];

const at = (m: Homography, i: number): number => m[i] ?? 0;

/**
 * A point taken through a homography.
 *
 * @equation (u, v, w)ᵀ = H (x, y, 1)ᵀ; (u/w, v/w)
 * @param homography - H, row by row [list]
 * @param point - (x, y) in the plane it takes from, in that plane's unit [record]
 * @returns its place in the other plane, in that plane's unit [record]
 * @validity w ≠ 0; a point on the line that lies infinitely far off gives infinite places
 * @source hartley-zisserman-2004
 * @example through([2, 0, 1, 0, 2, 0, 0, 0, 1], { x: 1, y: 1 }) // { "x": 3, "y": 2 }
 */
export function through(homography: Homography, { x, y }: Point): Point {
  const w = at(homography, 6) * x + at(homography, 7) * y + at(homography, 8);
  return {
    x: (at(homography, 0) * x + at(homography, 1) * y + at(homography, 2)) / w,
    y: (at(homography, 3) * x + at(homography, 4) * y + at(homography, 5)) / w,
  };
}

/**
 * One homography after another.
 *
 * @equation C = B A, so that C x = B (A x)
 * @param second - B, row by row [list]
 * @param first - A, row by row [list]
 * @returns C, row by row [list]
 * @validity any two
 * @source hartley-zisserman-2004
 * @example chained([1, 0, 1, 0, 1, 0, 0, 0, 1], [2, 0, 0, 0, 2, 0, 0, 0, 1]) // [2, 0, 1, 0, 2, 0, 0, 0, 1]
 */
export function chained(second: Homography, first: Homography): Homography {
  return Array.from({ length: 9 }, (_, i) => {
    const row = i - (i % 3);
    return [0, 1, 2].reduce((sum, k) => sum + at(second, row + k) * at(first, 3 * k + (i % 3)), 0);
  });
}

/**
 * The homography that leads back.
 *
 * @equation H⁻¹ by its adjugate, scaled so that its last entry is 1 where that is not 0
 * @param homography - H, row by row [list]
 * @returns H⁻¹, row by row [list]
 * @validity H must not be singular: RangeError
 * @source hartley-zisserman-2004
 * @example leadingBack([2, 0, 1, 0, 2, 0, 0, 0, 1]) // [0.5, 0, -0.5, 0, 0.5, 0, 0, 0, 1]
 */
export function leadingBack(homography: Homography): Homography {
  const [a, b, c, d, e, f, g, h, i] = Array.from({ length: 9 }, (_, k) => at(homography, k)) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const back = [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
  const determinant = a * at(back, 0) + b * at(back, 3) + c * at(back, 6);
  const last = at(back, 8);
  const largest = back.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  if (!(Math.abs(determinant) > 0) || !Number.isFinite(determinant))
    throw new RangeError('A homography that leads back was expected.');
  const factor = Math.abs(last) > 1e-12 * largest ? last : determinant;
  return back.map((x) => (x === 0 ? 0 : x / factor));
}

/**
 * Where a point of the face lies in the picture.
 *
 * @equation as any point through a homography
 * @param homography - of the picture, face to picture [list]
 * @param point - a point of the face, x right, y up [m]
 * @returns its place from the picture's left top corner, in widths of the picture, y down [record]
 * @validity points of the face in front of the camera
 * @source hartley-zisserman-2004
 * @example toPicture([0.5, 0, 0.5, 0, -0.5, 0.4, 0, 0, 1], { x: 0.2, y: 0.2 }) // { "x": 0.6, "y": 0.3 }
 */
export function toPicture(homography: Homography, point: Point): PicturePoint {
  return through(homography, point);
}

/**
 * The point of the face that lies at a place in the picture.
 *
 * @equation the picture's homography led back
 * @param homography - of the picture, face to picture [list]
 * @param point - a place from the picture's left top corner, in widths of the picture, y down [record]
 * @returns the point of the face, x right, y up [m]
 * @validity places below the face's horizon in the picture; a singular homography throws RangeError
 * @source hartley-zisserman-2004
 * @example toFace([0.5, 0, 0.5, 0, -0.5, 0.4, 0, 0, 1], { x: 0.6, y: 0.3 }).x // 0.2
 */
export function toFace(homography: Homography, point: PicturePoint): Point {
  return through(leadingBack(homography), point);
}
