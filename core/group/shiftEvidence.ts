import { ONE_HOLE, type Point } from './points.ts';

/** What has been shot so far with and without the change, in the form that the evidence needs. */
export interface ShiftSoFar {
  readonly n: readonly [reference: number, moved: number];
  /** Difference of the centres [m]. */
  readonly difference: Point;
  /** SS1 + SS2, about each group's own centre [m²]. */
  readonly squares: number;
}

/** Shift per spread that the evidence is tuned to. */
const TAU = 1;
/** The largest natural logarithm that stays a number. */
const LARGEST = 700;

const pairs = ({ n: [n1, n2] }: ShiftSoFar): number => (n1 * n2) / (n1 + n2);

/**
 * Sums up two lots of shots for the evidence of a shift.
 *
 * @equation d = difference of the means, W = Σ|p - mean|² of both lots
 * @param reference - places of the shots that the shift is counted from [m]
 * @param moved - places of the others [m]
 * @returns sizes, difference of the centres and sum of squares [record]
 * @validity one finite place or more in each; fewer throws RangeError
 * @source own derivation
 * @example shiftSoFar([{ x: 0, y: 0 }, { x: 2, y: 0 }], [{ x: 4, y: 1 }]).difference // {"x":3,"y":1}
 */
export function shiftSoFar(reference: readonly Point[], moved: readonly Point[]): ShiftSoFar {
  if (reference.length === 0 || moved.length === 0) throw new RangeError('At least one shot of each is needed.');
  const [a, b] = [reference, moved].map((points) => {
    const x = points.reduce((sum, p) => sum + p.x, 0) / points.length;
    const y = points.reduce((sum, p) => sum + p.y, 0) / points.length;
    return { x, y, squares: points.reduce((sum, p) => sum + (p.x - x) ** 2 + (p.y - y) ** 2, 0) };
  }) as [Point & { squares: number }, Point & { squares: number }];
  return {
    n: [reference.length, moved.length],
    difference: { x: b.x - a.x, y: b.y - a.y },
    squares: a.squares + b.squares,
  };
}

/**
 * Evidence that a shift is there, which may be looked at after every end.
 *
 * @equation E = (1 + m τ²)⁻¹ [(W + m d²)/(W + m d²/(1 + m τ²))]^(N - 1), m = n1 n2/N, τ = 1
 * @param so - the shots so far [record]
 * @returns ln E; E ≥ 20 is a shift with at most one false alarm in twenty, however often one looks [-]
 * @validity round normal shots of one spread in both lots; 0 where all shots lie in one hole, which says nothing. Kept at most 700, a number with 304 digits
 * @source perez-ortiz-2024
 * @example shiftEvidence({ n: [1, 1], difference: { x: 1, y: 0 }, squares: 0 }) // 0
 */
export function shiftEvidence(so: ShiftSoFar): number {
  const m = pairs(so);
  const grown = 1 + m * TAU ** 2;
  const moved = m * (so.difference.x ** 2 + so.difference.y ** 2);
  if (so.squares + moved < ONE_HOLE ** 2) return 0;
  const ratio = (so.squares + moved) / (so.squares + moved / grown);
  return Math.min(LARGEST, (so.n[0] + so.n[1] - 1) * Math.log(ratio) - Math.log(grown));
}

/**
 * How far from the shift as seen the true shift may lie, at every look at once.
 *
 * @equation R with E(R) = 1/α: A = ((1 + m τ²)/α)^(1/(N - 1)), R² = W (A - 1)/(m (1 - A/(1 + m τ²)))
 * @param so - the shots so far [record]
 * @param alpha - α, 1 minus the level [-]
 * @returns R; null while no shift can yet be left out, or all shots of each lot lie in one hole [m]
 * @validity as shiftEvidence; an α outside 0 … 1 throws RangeError
 * @source howard-2021
 * @example shiftRadiusAlways({ n: [1, 1], difference: { x: 1, y: 0 }, squares: 0 }, 0.05) // null
 */
export function shiftRadiusAlways(so: ShiftSoFar, alpha: number): number | null {
  if (!(alpha > 0 && alpha < 1)) throw new RangeError('alpha must lie between 0 and 1.');
  const m = pairs(so);
  const grown = 1 + m * TAU ** 2;
  const a = Math.exp(Math.log(grown / alpha) / (so.n[0] + so.n[1] - 1));
  if (a >= grown || so.squares < ONE_HOLE ** 2) return null;
  return Math.sqrt((so.squares * (a - 1)) / (m * (1 - a / grown)));
}
