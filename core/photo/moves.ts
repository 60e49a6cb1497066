import { CholeskyDecomposition, EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { chained, type Homography } from './plane.ts';

/** How many small moves a plane has under a homography; the last one is its turn about the centre, which rings do not show. */
export const MOVES = 8;

/**
 * Where each of the eight small moves of a plane takes a point: size, two stretches, two shifts, two tips, turn.
 *
 * @equation (x, y), (x, -y), (y, x), (1, 0), (0, 1), x (x, y), y (x, y), (-y, x)
 * @param x - in units of the face's largest ring [-]
 * @param y - the same [-]
 * @returns eight pairs of velocities, in the same unit [list]
 * @validity the first order of a homography near the identity
 * @source own derivation
 * @example movesAt(1, 0)[0] // [1, 0]
 */
export function movesAt(x: number, y: number): readonly (readonly [number, number])[] {
  return [
    [x, y],
    [x, -y],
    [y, x],
    [1, 0],
    [0, 1],
    [x * x, x * y],
    [x * y, y * y],
    [-y, x],
  ];
}

/**
 * The small move of a plane made up of the eight.
 *
 * @equation I + Σ δ_k M_k, M_k the matrix of the k-th move
 * @param sizes - δ, how much of each move [list]
 * @returns the homography from the plane to itself [list]
 * @validity small δ
 * @source own derivation
 * @example moved([0, 0, 0, 0.1, 0, 0, 0, 0]) // [1, 0, 0.1, 0, 1, 0, 0, 0, 1]
 */
export function moved(sizes: readonly number[]): Homography {
  const [size = 0, stretch = 0, shear = 0, right = 0, up = 0, tipX = 0, tipY = 0, turn = 0] = sizes;
  return [1 + size + stretch, shear - turn, right, shear + turn, 1 + size - stretch, up, 0 - tipX, 0 - tipY, 1];
}

/** Takes one equation of a least-squares step: the error, how it changes with each move, and its weight. The slopes may be written over afterwards. */
export type Take = (error: number, slopes: Float64Array, weight: number) => void;

/** A homography that has come to rest, and what is known of it there. */
export interface Settled {
  readonly homography: Homography;
  /** Weighted sum of squares of the errors. */
  readonly squares: number;
  /** (JᵀWJ)⁻¹ over the moves that were free. */
  readonly inverse: readonly (readonly number[])[];
}

/** The step that shrinks no more, relative to the face. */
const STILL = 1e-12;
const MOST_STEPS = 60;
/** Least to largest eigenvalue of the scaled equations under which the moves cannot be told apart. */
const SINGULAR = 1e-11;

/**
 * The homography of least squares, by damped Gauss-Newton steps along the moves of the face's plane.
 *
 * @equation (JᵀWJ + λ diag) δ = -JᵀWe; G ← (I + Σ δ_k M_k) G, or after G when the face comes first; λ falls after a good step and grows after a bad one
 * @param start - where to begin [list]
 * @param free - how many of the moves are free, from the first [-]
 * @param tell - hands over errors and slopes at a homography [function]
 * @param faceSide - whether the face's plane is where the homography leads to, or where it comes from [choice]
 * @returns the homography at rest, or null when the marks cannot tell the moves apart or no rest is found [record]
 * @validity a start near enough that the errors fall on the way
 * @source hartley-zisserman-2004, own derivation
 * @example settle([1, 0, 0, 0, 1, 0, 0, 0, 1], 8, () => undefined, 'to') // null
 */
export function settle(
  start: Homography,
  free: number,
  tell: (homography: Homography, take: Take) => void,
  faceSide: 'to' | 'from',
): Settled | null {
  let here = start;
  let equations = gathered(here, free, tell);
  if (equations.count < free || !Number.isFinite(equations.squares)) return null;
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS; step++) {
    const sizes = damped(equations, damping);
    if (sizes === null) return null;
    const move = moved(sizes);
    const next = faceSide === 'to' ? chained(move, here) : chained(here, move);
    const nextEquations = gathered(next, free, tell);
    const better = nextEquations.squares <= equations.squares;
    if (better) {
      [here, equations] = [next, nextEquations];
      damping = Math.max(damping / 10, 1e-12);
    } else damping *= 8;
    const largest = Math.max(...sizes.map(Math.abs));
    // A tiny step that makes nothing better is the end of what the figures hold.
    if (largest < STILL || (!better && (largest < 1e-8 || damping > 1e8))) break;
  }
  const inverse = inverseOf(equations.normal);
  return inverse === null ? null : { homography: here, squares: equations.squares, inverse };
}

interface Equations {
  readonly normal: Matrix;
  readonly right: readonly number[];
  readonly squares: number;
  readonly count: number;
}

function gathered(homography: Homography, free: number, tell: (homography: Homography, take: Take) => void): Equations {
  const normal = new Float64Array(free * free);
  const right = new Float64Array(free);
  let [squares, count] = [0, 0];
  tell(homography, (error, slopes, weight) => {
    count++;
    squares += weight * error * error;
    for (let i = 0; i < free; i++) {
      const slope = weight * (slopes[i] as number);
      right[i] = (right[i] as number) - slope * error;
      for (let j = 0; j <= i; j++) normal[i * free + j] = (normal[i * free + j] as number) + slope * (slopes[j] as number);
    }
  });
  const rows = Array.from({ length: free }, (_, i) =>
    Array.from({ length: free }, (_c, j) => normal[i < j ? j * free + i : i * free + j] as number),
  );
  return { normal: new Matrix(rows), right: [...right], squares, count };
}

function damped({ normal, right }: Equations, damping: number): number[] | null {
  const held = normal.clone();
  for (let i = 0; i < held.rows; i++) held.set(i, i, held.get(i, i) * (1 + damping));
  const factor = new CholeskyDecomposition(held);
  return factor.isPositiveDefinite() ? factor.solve(Matrix.columnVector([...right])).to1DArray() : null;
}

function inverseOf(normal: Matrix): number[][] | null {
  const scale = normal.diagonal().map((d) => 1 / Math.sqrt(d));
  if (!scale.every(Number.isFinite)) return null;
  const unit = new Matrix(normal.to2DArray().map((row, i) => row.map((value, j) => value * ((scale[i] ?? 0) * (scale[j] ?? 0)))));
  const values = new EigenvalueDecomposition(unit, { assumeSymmetric: true }).realEigenvalues;
  if (!(Math.min(...values) > SINGULAR * Math.max(...values))) return null;
  const factor = new CholeskyDecomposition(unit);
  if (!factor.isPositiveDefinite()) return null;
  const inverse = factor.solve(Matrix.eye(unit.rows)).to2DArray();
  return inverse.map((row, i) => row.map((value, j) => value * ((scale[i] ?? 0) * (scale[j] ?? 0))));
}
