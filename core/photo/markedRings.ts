import type { PicturePoint } from '../model/picture.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { ellipseThrough, farHomography } from './ellipse.ts';
import { slopesOf, type FaceFit } from './faceFit.ts';
import { movesAt, settle, type Settled, type Take } from './moves.ts';
import { chained, leadingBack, through, type Homography } from './plane.ts';
import { upright } from './upright.ts';

/** A point in the picture that lies on a ring of the face; radius 0 marks the centre itself. */
export interface RingMark {
  /** Of the ring [m]. */
  readonly radius: number;
  /** Where it was marked or found [widths]. */
  readonly picture: PicturePoint;
}

/** Rings show all of a face's moves but its turn. */
const SHOWN = 7;
/** Marks on one ring closer together than this share what bends or shades the face there [rad]. */
const SECTOR = Math.PI / 6;
/** Tukey's constant: 95 % efficient where the errors are normal. */
const TUKEY = 4.685;
const ROUNDS = 6;

const CANNOT =
  'The marked rings do not fix the face: mark points all round on at least two rings, or on one ring and its centre.';

/**
 * How a face lies in a picture, from points on its rings, upright as the picture stands.
 *
 * @equation minimise Σ w (|G p| - r)²/|∇|G p||² over the seven moves of G that rings show; from the ellipse of the ring with the most points
 * @param marks - points on at least two rings of known radius, or on one ring and at its centre [list]
 * @param stray - whether some marks may be on something else: then Tukey's weights leave out what lies off [choice]
 * @returns the fit, or a refusal: `too-few-marks`, `bad-mark`, `rings-not-fixed` [record]
 * @validity a plane face and a lens that keeps lines straight; five marks or more on one ring, over more than half of it; the centre of an ellipse is not the image of the centre, so one ring alone does not do
 * @source hartley-zisserman-2004, kanatani-2016, holland-welsch-1977, own derivation
 * @example fitRings([], false).problem.code // "too-few-marks"
 */
export function fitRings(marks: readonly RingMark[], stray: boolean): Result<FaceFit> {
  const bad = marks.findIndex(({ radius, picture }) => !(radius >= 0) || ![radius, picture.x, picture.y].every(Number.isFinite));
  if (bad >= 0) return refuse('bad-mark', `Mark ${bad + 1} is no place on a ring: mark it again.`);
  const radii = [...new Set(marks.map(({ radius }) => radius))].filter((radius) => radius > 0);
  const most = radii
    .map((radius) => marks.filter((mark) => mark.radius === radius))
    .sort((a, b) => b.length - a.length || (b[0]?.radius ?? 0) - (a[0]?.radius ?? 0))[0];
  if (most === undefined || most.length < 5 || marks.length < SHOWN) {
    const sentence = `At least ${SHOWN} marks on the rings were expected, five of them on one ring; ${marks.length} were given.`;
    return refuse('too-few-marks', sentence);
  }
  const unit = Math.max(...radii);
  const ellipse = ellipseThrough(most.map(({ picture }) => picture));
  if (ellipse === null) return refuse('rings-not-fixed', CANNOT);
  return fitFrom(farHomography(ellipse, (most[0]?.radius ?? unit) / unit), marks, unit, stray);
}

/**
 * How a face lies in a picture, from points on its rings and a first idea of it.
 *
 * @equation as from points on its rings
 * @param start - first idea, from the picture [widths] to the face in units of its largest ring [list]
 * @param marks - points on rings of known radius [list]
 * @param unit - the length that counts as 1 on the face [m]
 * @param stray - whether some marks may be on something else [choice]
 * @returns the fit, or the refusal `rings-not-fixed` [record]
 * @validity as from points on its rings
 * @source kanatani-2016, own derivation
 * @example fitFrom([1, 0, 0, 0, -1, 0, 0, 0, 1], [], 1, false).problem.code // "rings-not-fixed"
 */
export function fitFrom(start: Homography, marks: readonly RingMark[], unit: number, stray: boolean): Result<FaceFit> {
  let here = start;
  let settled: Settled | null = null;
  let weights: readonly number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const scales = marks.map((mark) => scaleAt(here, mark, unit));
    weights = scales.map((scale) => scale ** 2);
    // The first idea may be off by more than what strays: nothing is left out before the marks have had their say together.
    if (stray && round > 0) {
      const errors = marks.map(
        (mark, i) => errorsAt(here, mark, unit).reduce((sum, e) => sum + e * e, 0) ** 0.5 * (scales[i] ?? 0),
      );
      const tukey = tukeyWeights(errors);
      weights = weights.map((weight, i) => weight * (tukey[i] ?? 0));
    }
    const fixed = weights;
    settled = settle(here, SHOWN, (homography, take) => takeAll(marks, fixed, homography, unit, take), 'to');
    if (settled === null) return refuse('rings-not-fixed', CANNOT);
    here = settled.homography;
  }
  if (settled === null) return refuse('rings-not-fixed', CANNOT);
  const used = marks.filter((_, i) => (weights[i] ?? 0) > 0);
  const rows = used.reduce((sum, { radius }) => sum + (radius === 0 ? 2 : 1), 0);
  const squares = used.flatMap((mark) => errorsAt(here, mark, unit)).reduce((sum, e) => sum + e * e, 0) * unit * unit;
  const spare = rows - SHOWN;
  const variance = spare > 0 ? ((settled.squares / spare) * used.length) / apart(used, here) : 0;
  const covariance = Array.from({ length: SHOWN + 1 }, (_, i) =>
    Array.from({ length: SHOWN + 1 }, (_c, j) => variance * (settled.inverse[i]?.[j] ?? 0)),
  );
  const homography = leadingBack(chained([unit, 0, 0, 0, unit, 0, 0, 0, 1], here));
  const fit = { homography, unit, residual: Math.sqrt(squares / used.length), marks: used.length, turn: 0 };
  return ok(upright({ ...fit, covariance: spare > 0 ? covariance : null }, 'picture'));
}

/** |q| - r, or both coordinates at the centre, in units of the largest ring. */
function errorsAt(homography: Homography, { radius, picture }: RingMark, unit: number): readonly number[] {
  const { x, y } = through(homography, picture);
  return radius === 0 ? [x, y] : [Math.hypot(x, y) - radius / unit];
}

/** Each mark's error and how it changes with the moves; written out, since this is done for hundreds of marks dozens of times. */
function takeAll(
  marks: readonly RingMark[],
  weights: readonly number[],
  [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, k = 0]: Homography,
  unit: number,
  take: Take,
): void {
  const slopes = new Float64Array(SHOWN);
  marks.forEach(({ radius, picture }, i) => {
    const weight = weights[i] ?? 0;
    if (weight === 0) return;
    const w = g * picture.x + h * picture.y + k;
    const x = (a * picture.x + b * picture.y + c) / w;
    const y = (d * picture.x + e * picture.y + f) / w;
    if (radius === 0) {
      const moves = movesAt(x, y);
      for (const [axis, error] of [x, y].entries()) {
        for (let m = 0; m < SHOWN; m++) slopes[m] = moves[m]?.[axis] ?? 0;
        take(error, slopes, weight);
      }
      return;
    }
    const away = Math.sqrt(x * x + y * y);
    // A point at the very centre has no direction outward, and none of its own to move in.
    const [ux, uy] = away > 0 ? [x / away, y / away] : [0, 0];
    slopes[0] = away;
    slopes[1] = ux * x - uy * y;
    slopes[2] = ux * y + uy * x;
    slopes[3] = ux;
    slopes[4] = uy;
    slopes[5] = x * away;
    slopes[6] = y * away;
    take(away - radius / unit, slopes, weight);
  });
}

/** Widths of the picture to a unit of the face, outward at a mark: an error counts as it is seen. */
function scaleAt(homography: Homography, { radius, picture }: RingMark, unit: number): number {
  const { x, y } = through(homography, picture);
  const [a, b] = slopesOf(homography, picture);
  const away = Math.hypot(x, y);
  if (radius === 0 || away < 0.1 * (radius / unit)) return 1 / Math.sqrt(Math.abs(a.x * b.y - a.y * b.x));
  return 1 / Math.hypot((x * a.x + y * a.y) / away, (x * b.x + y * b.y) / away);
}

function tukeyWeights(errors: readonly number[]): number[] {
  const sorted = errors.map(Math.abs).sort((a, b) => a - b);
  const spread = 1.4826 * (sorted[Math.floor(sorted.length / 2)] ?? 0);
  // Nothing strays where half of the marks lie on the fit to the last figure.
  if (!(spread > 1e-10)) return errors.map(() => 1);
  return errors.map((error) => Math.max(0, 1 - (error / (TUKEY * spread)) ** 2) ** 2);
}

/** How many of the marks tell something of their own: one to a sector of a ring. */
function apart(marks: readonly RingMark[], homography: Homography): number {
  const cells = marks.map(({ radius, picture }) => {
    const { x, y } = through(homography, picture);
    return `${radius} ${Math.floor(Math.atan2(y, x) / SECTOR)}`;
  });
  return new Set(cells).size;
}
