import { deflectionOf, STANDARD } from '../arrow/index.ts';
import type { ArrowPass } from '../model/index.ts';
import { requirePositive } from '../model/positive.ts';

const requireShare = (frontShare: number): void => {
  if (!(frontShare >= 0 && frontShare <= 1)) throw new RangeError(`frontShare must lie between 0 and 1, not ${frontShare}.`);
};

/** Powers of x that are added up: far more than loads near the first buckling need. */
const POWERS = 40;
/** 1/c as it goes with r, to within a thousandth: where the search begins. */
const startsAt = (frontShare: number): number => 1 / (0.05385 + frontShare * (0.0434 + 0.00407 * frontShare));
const MOST_ROUNDS = 8;

/**
 * How far a load is from one under which the column stands bent. With v = w′ and lengths in L the equation is v″ + λ n v = C,
 * n = 1 − (1 − r) x, and both of its parts (one begins at 1, one is driven by C) are power series. Bent it stands when a mixture of them
 * has no moment at the far end and leaves that end where it was: slope and area of the two parts are in proportion.
 */
function unbalance(load: number, falls: number): number {
  let [before, here, next] = [0, 1, 0];
  let [drivenBefore, drivenHere, drivenNext] = [0, 0, 0];
  let [slope, area, drivenSlope, drivenArea] = [0, 1, 0, 0];
  for (let power = 2; power <= POWERS; power++) {
    const twice = power * (power - 1);
    const after = (-load * (here - falls * before)) / twice;
    const drivenAfter = ((power === 2 ? 1 : 0) - load * (drivenHere - falls * drivenBefore)) / twice;
    slope += power * after;
    area += after / (power + 1);
    drivenSlope += power * drivenAfter;
    drivenArea += drivenAfter / (power + 1);
    [before, here, next] = [here, next, after];
    [drivenBefore, drivenHere, drivenNext] = [drivenHere, drivenNext, drivenAfter];
  }
  return slope * drivenArea - drivenSlope * area;
}

/**
 * Buckling factor of a pinned column whose thrust falls linearly from the nock to the front.
 *
 * @equation c(r) = N₀cr L² / EI, smallest eigenvalue of EI w⁗ + (N w′)′ = 0, N = N₀ (1 − (1 − r) x/L), w and w″ zero at both ends
 * @param frontShare - r, thrust at the front over thrust at the nock: 1 for an even thrust, 0 for one that falls to nothing [-]
 * @returns c(r): π² at r = 1, 13.06 at .5, 18.57 at 0 [-]
 * @validity r from 0 to 1, else RangeError; w′ as a power series, good to twelve figures
 * @source timoshenko-gere
 * @example columnFactor(1) // 9.869604401089358
 */
export function columnFactor(frontShare: number): number {
  requireShare(frontShare);
  const falls = 1 - frontShare;
  let load = startsAt(frontShare);
  let [other, there] = [1.001 * load, unbalance(1.001 * load, falls)];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const here = unbalance(load, falls);
    const step = (here * (load - other)) / (here - there);
    // The secant rule gains half as many figures again each round: a step that small is the last that matters.
    if (!(Math.abs(step) > 1e-9 * load)) return load - (Number.isFinite(step) ? step : 0);
    [other, there] = [load, here];
    load -= step;
  }
  return load;
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
