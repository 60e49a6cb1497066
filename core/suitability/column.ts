import { deflectionOf, STANDARD } from '../arrow/index.ts';
import type { ArrowPass } from '../model/index.ts';
import { requirePositive } from '../model/positive.ts';

const TERMS = 40;
const ITERATIONS = 8;

const requireShare = (frontShare: number): void => {
  if (!(frontShare >= 0 && frontShare <= 1)) throw new RangeError(`frontShare must lie between 0 and 1, not ${frontShare}.`);
};

/**
 * The thrust's work on two sines, scaled by their bending: 2/(i j π²) times the integral of N/N₀ cos(iπx) cos(jπx). For one sine with
 * itself it goes with 1 + r, for two of unlike parity with 1 − r, and for two of like parity it is nought, so that both parts are the
 * same for every column.
 */
const numbers = Array.from({ length: TERMS }, (_, index) => index + 1);
const ownPart = numbers.map((i) => 1 / (2 * (i * Math.PI) ** 2));
const mixedPart = numbers.map((i) =>
  numbers
    .filter((j) => (i + j) % 2 === 1)
    .map((j) => ({ term: j - 1, part: (2 / (i * j * Math.PI ** 4)) * (1 / (i - j) ** 2 + 1 / (i + j) ** 2) })),
);

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
  // so that each step of plain power iteration leaves a sixteenth of the error: after eight it is far below that of 40 sines.
  const times = (vector: readonly number[]): number[] =>
    mixedPart.map(
      (row, i) =>
        (1 + frontShare) * (ownPart[i] ?? 0) * (vector[i] ?? 0) +
        (1 - frontShare) * row.reduce((sum, { term, part }) => sum + part * (vector[term] ?? 0), 0),
    );
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
