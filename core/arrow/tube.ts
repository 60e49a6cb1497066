import type { Band } from '../model/band.ts';
import { requirePositive } from '../model/positive.ts';
import { ok, refuse, type ArrowSet, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';

/** Handbook figures of the alloys that arrow tubes are drawn from: Young's modulus [Pa] with its band, and density [kg/m³]. */
export const aluminium = { modulus: { value: 70.5e9, low: 69e9, high: 72e9 }, density: 2810 } as const;

const requireTube = (outer: number, wall: number): void => {
  requirePositive({ outer, wall });
  if (2 * wall > outer) throw new RangeError(`wall must be at most half of outer (${outer}), not ${wall}.`);
};

/**
 * Bending stiffness of a round tube.
 *
 * @equation EI = E π (D⁴ − d⁴)/64, d = D − 2t
 * @param outer - D, outer diameter [m]
 * @param wall - t, thickness of the wall [m]
 * @param modulus - E, Young's modulus [Pa]
 * @returns EI, bending stiffness [N m²]
 * @validity one material right round and all along; RangeError for what is not positive and finite, or a wall of more than half the diameter
 * @source young-budynas-2002
 * @example tubeStiffness(0.02, 0.01, 64e9 / Math.PI) // 160
 */
export function tubeStiffness(outer: number, wall: number, modulus: number): number {
  requireTube(outer, wall);
  requirePositive({ modulus });
  return (modulus * Math.PI * (outer ** 4 - (outer - 2 * wall) ** 4)) / 64;
}

/**
 * Mass per length of a round tube.
 *
 * @equation λ = ρ π t (D − t)
 * @param outer - D, outer diameter [m]
 * @param wall - t, thickness of the wall [m]
 * @param density - ρ, of the material [kg/m³]
 * @returns λ, mass per length [kg/m]
 * @validity as tubeStiffness
 * @source own derivation
 * @example tubeDensity(0.01, 0.005, 400 / Math.PI) // 0.01
 */
export function tubeDensity(outer: number, wall: number, density: number): number {
  requireTube(outer, wall);
  requirePositive({ density });
  return density * Math.PI * wall * (outer - wall);
}

/** A metal shaft as its geometry makes it. */
export interface TubeShaft {
  /** Bending stiffness [N m²], with what is not known of the alloy. */
  readonly stiffness: Band;
  /** Mass per length [kg/m]. */
  readonly linearDensity: number;
}

/** What of an arrow set says that its shaft is a metal tube. */
export type TubeParts = Pick<ArrowSet, 'material' | 'diameter' | 'wall'>;

/**
 * Stiffness and mass per length of an aluminium shaft from its diameter and wall.
 *
 * @equation tubeStiffness at E = 69, 70.5 and 72 GPa; tubeDensity at 2810 kg/m³
 * @param arrowSet - material, diameter [m] and wall [m] [record]
 * @returns stiffness [N m²] with its band and mass per length [kg/m]; null for another material or when diameter or wall is not on record [record]
 * @validity refused for figures outside the model's limits and for a wall that leaves no bore; the band is the alloy's alone: how finely the tube was measured is not in it
 * @source from memory
 * @example tubeShaft({ material: 'carbon', diameter: 0.006, wall: 0.0008 }).value // null
 */
export function tubeShaft({ material, diameter, wall }: TubeParts): Result<TubeShaft | null> {
  if (material !== 'aluminium' || diameter === null || wall === null) return ok(null);
  const figures = given<'shaftDiameter' | 'wall'>('the tube', { shaftDiameter: diameter, wall });
  if (!figures.ok) return figures;
  if (2 * wall >= diameter)
    return refuse('no bore', 'A wall of less than half the shaft’s diameter was expected: measure both again.', 'wall');
  const at = (modulus: number) => tubeStiffness(diameter, wall, modulus);
  const { value, low, high } = aluminium.modulus;
  return ok({
    stiffness: { value: at(value), low: at(low), high: at(high) },
    linearDensity: tubeDensity(diameter, wall, aluminium.density),
  });
}
