import { Matrix, QrDecomposition, solve } from 'ml-matrix';

/** A sum of squares to be made small. */
export interface SquaresProblem {
  /** Each miss in units of its standard deviation, priors among them; null where the model has no answer. */
  readonly misses: (parameters: readonly number[]) => readonly number[] | null;
  readonly start: readonly number[];
  /** By how much each parameter is moved to see what it does. */
  readonly steps: readonly number[];
  /** How small a step, in standard deviations, is none; a thousandth of a millionth when left out, for as many digits as there are. */
  readonly settled?: number;
}

/** Where a sum of squares is least, and how well the place is told when every miss has a standard deviation of 1. */
export interface SquaresFit {
  readonly parameters: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly sum: number;
}

const ROUNDS = 200;
const STIFFEST = 1e12;

const squares = (misses: readonly number[]): number => misses.reduce((sum, miss) => sum + miss * miss, 0);

function slopesOf({ misses, steps }: SquaresProblem, at: readonly number[], here: readonly number[]): Matrix {
  const rows = new Matrix(here.length, at.length);
  steps.forEach((step, j) => {
    const moved = (by: number) => misses(at.map((value, i) => (i === j ? value + by : value)));
    const [up, down] = [moved(step), moved(-step)];
    // At the edge of what the model can answer one side has to do.
    const [far, near, width] = [up ?? here, down ?? here, (up === null ? 0 : step) + (down === null ? 0 : step)];
    here.forEach((_, i) => rows.set(i, j, width === 0 ? 0 : ((far[i] ?? 0) - (near[i] ?? 0)) / width));
  });
  return rows;
}

/**
 * Least squares of a model that is not straight, after Levenberg and Marquardt.
 *
 * @equation (JᵀJ + λ diag JᵀJ) δ = −Jᵀ r by QR of the rows with √λ diag below them; λ falls threefold or more after a step that helps, and grows after one that does not; Cov = (JᵀJ)⁻¹
 * @param problem - misses, where to start and the steps of the central differences [record]
 * @returns parameters, covariance and sum of squares; null when the start has no answer, a parameter does nothing, or the search does not settle [record]
 * @validity as many misses as parameters or more; a start in reach of the lowest valley
 * @source marquardt-1963
 * @example leastSquares({ misses: ([a]) => [a - 1, a - 3], start: [0], steps: [1e-3] }).parameters[0].toFixed(6) // "2.000000"
 */
export function leastSquares(problem: SquaresProblem): SquaresFit | null {
  let at: readonly number[] = problem.start;
  let here = problem.misses(at);
  if (here === null || !here.every(Number.isFinite)) return null;
  let sum = squares(here);
  let damping = 1e-3;
  for (let round = 0; round < ROUNDS && damping < STIFFEST; round++) {
    const rows = slopesOf(problem, at, here);
    const lengths = at.map((_, j) => rows.getColumnVector(j).norm());
    if (!lengths.every((length) => length > 0 && Number.isFinite(length))) return null;
    let settled = false;
    for (; damping < STIFFEST; damping *= 8) {
      const below = Matrix.diag(lengths.map((length) => Math.sqrt(damping) * length));
      const full = new Matrix([...rows.to2DArray(), ...below.to2DArray()]);
      const wanted: number[] = [...here.map((miss) => -miss), ...at.map(() => 0)];
      const step: number[] = new QrDecomposition(full).solve(Matrix.columnVector(wanted)).to1DArray();
      const next: number[] = at.map((value, j) => value + (step[j] ?? 0));
      const there = problem.misses(next);
      const nextSum = there === null ? Infinity : squares(there);
      // How far the step goes in units of what the misses can tell: nothing is left to win.
      const reach = Math.hypot(...step.map((by, j) => by * (lengths[j] ?? 0)));
      settled = reach <= (problem.settled ?? 1e-9 * (1e-3 + Math.sqrt(sum)));
      if (there !== null && nextSum <= sum) {
        [at, here, sum] = [next, there, nextSum];
        damping = Math.max(1e-12, damping / 10);
        break;
      }
      if (settled) break;
    }
    if (settled) return told(problem, at, here, sum);
  }
  return damping < STIFFEST ? null : told(problem, at, here, sum);
}

function told(problem: SquaresProblem, at: readonly number[], here: readonly number[], sum: number): SquaresFit | null {
  const rows = slopesOf(problem, at, here);
  const lengths = at.map((_, j) => rows.getColumnVector(j).norm());
  if (!lengths.every((length) => length > 0 && Number.isFinite(length))) return null;
  const even = new Matrix(here.map((_, i) => lengths.map((length, j) => rows.get(i, j) / length)));
  const qr = new QrDecomposition(even);
  if (!qr.isFullRank()) return null;
  const root = solve(qr.upperTriangularMatrix, Matrix.eye(at.length));
  const inverse = root.mmul(root.transpose());
  const covariance = at.map((_, i) => at.map((_b, j) => inverse.get(i, j) / ((lengths[i] ?? 1) * (lengths[j] ?? 1))));
  return covariance.every((row) => row.every(Number.isFinite)) ? { parameters: at, covariance, sum } : null;
}
