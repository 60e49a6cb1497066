import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { requireNotNegative, requirePositive } from '../model/positive.ts';
import { emptyBanded, factorBanded, solveBanded, timesBanded, type Banded } from './banded.ts';

/** A small mass that rides on the shaft [kg], at its distance from the back end [m]; outside the shaft it sits on a stiff extension. */
export interface Lump {
  readonly x: number;
  readonly mass: number;
}

/** A uniform shaft with masses along it. */
export interface LumpedBeam {
  /** Bending stiffness EI [N m²]. */
  readonly stiffness: number;
  /** Mass per length of the shaft [kg/m]. */
  readonly linearDensity: number;
  readonly length: number;
  readonly lumps: readonly Lump[];
}

/** One way in which the free beam bends. */
export interface BeamMode {
  /** Natural frequency [Hz]. */
  readonly frequency: number;
  /** Sideways movement at a distance from the back end [m], of no set size. */
  readonly at: (x: number) => number;
}

const ELEMENTS = 16;
const SIZE = 2 * (ELEMENTS + 1);
const WANTED = 3;
/** Shapes that are iterated on: two more than are wanted, so that the third settles quickly too. */
const SHAPES = WANTED + 2;
const ITERATIONS = 4;
/** In units of EI/(λ L⁴), where the first mode has some 200 to 500: it makes the free beam's stiffness positive definite. */
const SHIFT = 10;

type Four = readonly [number, number, number, number];

// One element of unit length, stiffness and mass per length, its slopes counted per element.
const bends: readonly Four[] = [
  [12, 6, -12, 6],
  [6, 4, -6, 2],
  [-12, -6, 12, -6],
  [6, 2, -6, 4],
];
const carries: readonly Four[] = [
  [156, 22, 54, -13],
  [22, 4, 13, -3],
  [54, 13, 156, -22],
  [-13, -3, -22, 4],
];

/** The first of the four unknowns that move a place along the beam (0 to 1). */
const firstAt = (xi: number): number => 2 * Math.min(ELEMENTS - 1, Math.max(0, Math.floor(xi * ELEMENTS)));

/** The share of each of the four in the movement there, s from the element's back end; beyond the ends the beam is a straight line on. */
const sharesAt = (s: number): Four =>
  s < 0
    ? [1, s, 0, 0]
    : s > 1
      ? [0, 0, 1, s - 1]
      : [1 - s * s * (3 - 2 * s), s * (1 - s) ** 2, s * s * (3 - 2 * s), s * s * (s - 1)];

function add(matrix: Banded, first: number, cell: (i: number, j: number) => number): void {
  const { reach, cells } = matrix;
  for (let i = 0; i < 4; i++) {
    for (let j = 0; j <= i; j++) {
      const index = (first + i) * (reach + 1) + j - i + reach;
      cells[index] = (cells[index] as number) + cell(i, j);
    }
  }
}

function assembled(element: readonly Four[], factor: number): Banded {
  const matrix = emptyBanded(SIZE, 3);
  for (let e = 0; e < ELEMENTS; e++) add(matrix, 2 * e, (i, j) => factor * (element[i]?.[j] ?? 0));
  return matrix;
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < SIZE; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
};

const fromShape = (movement: (xi: number) => number, slope: (xi: number) => number): Float64Array =>
  Float64Array.from({ length: SIZE }, (_, i) => {
    const xi = Math.floor(i / 2) / ELEMENTS;
    return i % 2 === 0 ? movement(xi) : slope(xi) / ELEMENTS;
  });

// The bare shaft's matrices, and what the iteration starts from, are the same for every arrow.
const bareStiffness = assembled(bends, ELEMENTS ** 3);
const bareMass = assembled(carries, 1 / (420 * ELEMENTS));
const slide = fromShape(
  () => 1,
  () => 0,
);
const swing = fromShape(
  (xi) => xi,
  () => 1,
);
const starts = Array.from({ length: SHAPES }, (_, k) => {
  const wave = (k + 2) * Math.PI;
  return fromShape(
    (xi) => Math.cos(wave * xi),
    (xi) => -wave * Math.sin(wave * xi),
  );
});

/** A vector and what the mass matrix makes of it. */
interface Shape {
  readonly vector: Float64Array;
  readonly carried: Float64Array;
}

/** The vector freed of the shapes before it and brought to unit length, as the mass matrix measures; plain loops, since this is where the time goes. */
function freed(from: Float64Array, before: readonly Shape[], mass: Banded): Shape {
  const vector = from.slice();
  for (const one of before) {
    const share = dot(vector, one.carried);
    for (let i = 0; i < SIZE; i++) vector[i] = (vector[i] as number) - share * (one.vector[i] as number);
  }
  const carried = timesBanded(mass, vector);
  const size = 1 / Math.sqrt(dot(vector, carried));
  for (let i = 0; i < SIZE; i++) {
    vector[i] = (vector[i] as number) * size;
    carried[i] = (carried[i] as number) * size;
  }
  return { vector, carried };
}

function orthonormal(vectors: readonly Float64Array[], rigid: readonly Shape[], mass: Banded): readonly Shape[] {
  const done = [...rigid];
  for (const vector of vectors) done.push(freed(vector, done, mass));
  return done.slice(rigid.length);
}

/**
 * The first three bending modes of a free shaft with masses along it.
 *
 * @equation K φ = ω² M φ, K and M of 16 cubic Hermite elements, M with m N Nᵀ for each mass at its place; inverse iteration on five shapes with sliding and swinging taken out
 * @param beam - stiffness EI [N m²], linearDensity λ [kg/m], length L [m], lumps of mass [kg] at x [m] [record]
 * @returns for each mode its frequency [Hz] and its shape, a function of the place along the shaft [list]
 * @validity slender uniform shaft without shear; frequencies good to 5, 40 and 155 parts in a million; RangeError for a figure that is not finite, a negative mass, or a stiffness, density or length that is not positive
 * @source bathe-2014
 * @example beamModes({ stiffness: 4, linearDensity: 0.01, length: 1, lumps: [] })[0].frequency.toFixed(2) // "71.22"
 */
export function beamModes({ stiffness, linearDensity, length, lumps }: LumpedBeam): readonly BeamMode[] {
  requirePositive({ stiffness, linearDensity, length });
  const mass: Banded = { ...bareMass, cells: bareMass.cells.slice() };
  for (const lump of lumps) {
    requireNotNegative({ mass: lump.mass });
    if (!Number.isFinite(lump.x)) throw new RangeError(`x must be a finite number, not ${lump.x}.`);
    const first = firstAt(lump.x / length);
    const shares = sharesAt((lump.x / length) * ELEMENTS - first / 2);
    const share = lump.mass / (linearDensity * length);
    add(mass, first, (i, j) => share * (shares[i] ?? 0) * (shares[j] ?? 0));
  }
  const shifted = bareStiffness.cells.slice();
  for (let i = 0; i < shifted.length; i++) shifted[i] = (shifted[i] as number) + SHIFT * (mass.cells[i] as number);
  const factor = factorBanded({ ...bareStiffness, cells: shifted });
  const rigid = orthonormal([slide, swing], [], mass);
  let shapes = orthonormal(starts, rigid, mass);
  for (let step = 0; step < ITERATIONS; step++)
    shapes = orthonormal(
      shapes.map(({ carried }) => solveBanded(factor, carried)),
      rigid,
      mass,
    );
  const bending = shapes.map(({ vector }) => vector);
  const bent = bending.map((vector) => timesBanded(bareStiffness, vector));
  const reduced = new Matrix(bending.map((a) => bent.map((b) => dot(a, b))));
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(reduced, { assumeSymmetric: true });
  const scale = Math.sqrt(stiffness / linearDensity) / (2 * Math.PI * length ** 2);
  return realEigenvalues.slice(0, WANTED).map((square, mode) => {
    const vector = new Float64Array(SIZE);
    bending.forEach((one, k) => {
      const share = eigenvectorMatrix.get(k, mode);
      for (let i = 0; i < SIZE; i++) vector[i] = (vector[i] as number) + share * (one[i] as number);
    });
    const at = (x: number): number => {
      const first = firstAt(x / length);
      const [a, b, c, d] = sharesAt((x / length) * ELEMENTS - first / 2);
      return (
        a * (vector[first] as number) +
        b * (vector[first + 1] as number) +
        c * (vector[first + 2] as number) +
        d * (vector[first + 3] as number)
      );
    };
    return { frequency: scale * Math.sqrt(square), at };
  });
}
