import { aimPlan, flightBasis, goldAboveGround, standingEye, type AimPlan, type FlightBasis } from '../../../core/aim/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Result } from '../../../core/model/problem.ts';
import { distanceToBegin } from './distances.ts';
import type { FlownChoice } from './store.ts';

/** How far the centre of the face lies below a standing eye [m]. */
export const targetDrop = standingEye - goldAboveGround;

/** A reasonable arrow where its length is not known: only the points of aim need it, and they are then not shown. */
const anyArrowLength = 0.71;

export function planOn(bundle: Bundle, basis: FlightBasis, setFor: number, distances: readonly number[]): Result<AimPlan> {
  return aimPlan({
    speed: basis.speed,
    mass: basis.mass,
    diameter: basis.diameter.value,
    airDensity: basis.air,
    drag: basis.drag,
    eyeHeight: basis.eyeHeight.value,
    targetDrop,
    arrowLength: bundle.arrowSet.length ?? anyArrowLength,
    distances,
    setFor,
  });
}

/** The distance that the flight is drawn for: the chosen one, else one that suits this bow; null where there is no flight [m]. */
export function setForOf(bundle: Bundle, choice: FlownChoice, units: UnitChoice): number | null {
  const basis = flightBasis(bundle, choice.air);
  if (!basis.ok) return null;
  if (choice.setFor !== null) return choice.setFor;
  return distanceToBegin(basis.value.speed.value, units);
}
