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
 * same for every column. Row by row in one array each: the moves ask for this figure a dozen times.
 */
const ownPart = Float64Array.from({ length: TERMS }, (_, row) => 1 / (2 * ((row + 1) * Math.PI) ** 2));
const mixedPart = Float64Array.from({ length: TERMS * TERMS }, (_, at) => {
  const i = Math.floor(at / TERMS) + 1;
  const j = (at % TERMS) + 1;
  return (i + j) % 2 === 1 ? (2 / (i * j * Math.PI ** 4)) * (1 / (i - j) ** 2 + 1 / (i + j) ** 2) : 0;
});

/** Both parts of one column on a shape, into another. */
function thrustOn(shape: Float64Array, frontShare: number, into: Float64Array): void {
  for (let row = 0; row < TERMS; row++) {
    let mixed = 0;
    // Only sines of unlike parity.
    for (let term = (row + 1) % 2; term < TERMS; term += 2) mixed += (mixedPart[row * TERMS + term] ?? 0) * (shape[term] ?? 0);
    into[row] = (1 + frontShare) * (ownPart[row] ?? 0) * (shape[row] ?? 0) + (1 - frontShare) * mixed;
  }
}

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
  let shape = new Float64Array(TERMS);
  let next = new Float64Array(TERMS);
  shape[0] = 1;
  for (let step = 0; step <= ITERATIONS; step++) {
    thrustOn(shape, frontShare, next);
    if (step === ITERATIONS) break;
    const size = Math.sqrt(next.reduce((sum, part) => sum + part * part, 0));
    for (let row = 0; row < TERMS; row++) next[row] = (next[row] ?? 0) / size;
    [shape, next] = [next, shape];
  }
  return 1 / next.reduce((sum, part, row) => sum + part * (shape[row] ?? 0), 0);
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
