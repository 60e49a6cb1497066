import { deflectionOf, STANDARD } from '../arrow/index.ts';
import type { ArrowPass } from '../model/index.ts';
import { requirePositive } from '../model/positive.ts';

const TERMS = 40;
const ITERATIONS = 16;

const requireShare = (frontShare: number): void => {
  if (!(frontShare >= 0 && frontShare <= 1)) throw new RangeError(`frontShare must lie between 0 and 1, not ${frontShare}.`);
};

/** Integral over the column of N/N0 cos(i pi x) cos(j pi x), for a thrust N that falls from N0 to frontShare times N0. */
const thrustTerm = (i: number, j: number, frontShare: number): number => {
  if (i === j) return (1 + frontShare) / 4;
  if ((i + j) % 2 === 0) return 0;
  return ((1 - frontShare) / Math.PI ** 2) * (1 / (i - j) ** 2 + 1 / (i + j) ** 2);
};

/**
 * Buckling factor of a pinned column whose thrust falls linearly from the nock to the front.
 *
 * @equation c(r) = N₀cr L² / EI, smallest eigenvalue of EI w⁗ + (N w′)′ = 0, N = N₀ (1 − (1 − r) x/L), w and w″ zero at both ends
 * @param frontShare - r, thrust at the front over thrust at the nock: 1 for an even thrust, 0 for one that falls to nothing [-]
 * @returns c(r): π² at r = 1, 13.06 at .5, 18.57 at 0 [-]
 * @validity r from 0 to 1, else RangeError; Rayleigh-Ritz with 40 sines, good to nine figures
 * @source timoshenko-gere
 * @example columnFactor(1) // 9.869604401089358
 */
export function columnFactor(frontShare: number): number {
  requireShare(frontShare);
  // Sines make the bending part diagonal. Scaled by it, the thrust part's largest eigenvalue is 1/c, four times as large as the next,
  // so that plain power iteration settles at once.
  const entries = Array.from({ length: TERMS }, (_, row) =>
    Array.from(
      { length: TERMS },
      (__, column) => (2 * thrustTerm(row + 1, column + 1, frontShare)) / ((row + 1) * (column + 1) * Math.PI ** 2),
    ),
  );
  const times = (vector: readonly number[]): number[] =>
    entries.map((row) => row.reduce((sum, entry, column) => sum + entry * (vector[column] ?? 0), 0));
  let shape: number[] = [1, ...new Array<number>(TERMS - 1).fill(0)];
  for (let step = 0; step < ITERATIONS; step++) {
    const next = times(shape);
    const size = Math.hypot(...next);
    shape = next.map((part) => part / size);
  }
  return 1 / times(shape).reduce((sum, part, row) => sum + part * (shape[row] ?? 0), 0);
}

/** Between which column figures a shaft suits. */
export interface FigureBand {
  readonly low: number;
  readonly high: number;
}

/**
 * From memory, from ordinary matched set-ups, and to be edited: they give way to the archer's own groups as soon as there are any.
 * Off the hand or the shelf the arrow must bend round the bow, so it wants a weaker shaft than one on a rest and button.
 */
export const columnBands: Readonly<Record<ArrowPass, FigureBand>> = {
  'rest and button': { low: 1.3, high: 1.6 },
  shelf: { low: 1.7, high: 2 },
  hand: { low: 1.7, high: 2 },
};

/**
 * Column figure of a shaft: the draw force over the load at which the shaft would buckle under it.
 *
 * @equation C = F L² / (EI c(r))
 * @param drawForce - F, weight on the fingers [N]
 * @param length - L, throat of the nock to end of shaft [m]
 * @param stiffness - EI, bending stiffness of the shaft [N m²]
 * @param frontShare - r, mass at the front over mass of shaft and front [-]
 * @returns C, larger for a shaft that acts weaker [-]
 * @validity finger release; RangeError for r outside 0 to 1 and for anything else that is not positive and finite
 * @source own derivation
 * @example columnFigure(100, 0.7, 4.9, 1) // 1.0132118364233778
 */
export function columnFigure(drawForce: number, length: number, stiffness: number, frontShare: number): number {
  requirePositive({ drawForce, length, stiffness });
  return (drawForce * length ** 2) / (stiffness * columnFactor(frontShare));
}

/**
 * Deflection on the standard tester (28 in, 880 g) that a shaft needs to have a wanted column figure.
 *
 * @equation δ₂₈ = F₂₈ L₂₈³ / (48 EI), EI = F L² / (C c(r))
 * @param figure - C, the column figure wanted [-]
 * @param drawForce - F, weight on the fingers [N]
 * @param length - L, throat of the nock to end of shaft [m]
 * @param frontShare - r, mass at the front over mass of shaft and front [-]
 * @returns δ₂₈, needed deflection [m]
 * @validity as columnFigure
 * @source own derivation
 * @example neededDeflection(1.0132118364233778, 100, 0.7, 1) // 0.013199007456555941
 */
export function neededDeflection(figure: number, drawForce: number, length: number, frontShare: number): number {
  requirePositive({ figure, drawForce, length });
  return deflectionOf((drawForce * length ** 2) / (figure * columnFactor(frontShare)), STANDARD);
}
