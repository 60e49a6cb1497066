import { arrowMass } from '../arrow/index.ts';
import { setupSpeed, type ArrowSpeed } from '../bow/index.ts';
import { airDensity, dragBand } from '../flight/index.ts';
import type { Band } from '../model/band.ts';
import type { Bundle } from '../model/bundle.ts';
import { ok, type Result } from '../model/problem.ts';
import { diameterOf, eyeHeightOf, type Assumable } from './assumed.ts';

/** What the flight of a set-up's arrow rests on. */
export interface FlightBasis {
  /** Launch speed [m/s], measured or estimated. */
  readonly speed: ArrowSpeed;
  /** Of the whole arrow [kg]. */
  readonly mass: number;
  /** Of the shaft [m], measured or assumed. */
  readonly diameter: Band & Assumable;
  /** From the arrow's axis up to the eye [m], measured or assumed. */
  readonly eyeHeight: Assumable;
  /** Density of the air [kg/m³]. */
  readonly air: number;
  /** Drag parameter [1/m]. */
  readonly drag: Band;
}

/**
 * What the flight of a set-up's arrow rests on: speed, mass, and the drag that follows from them.
 *
 * @equation v of setupSpeed, m of arrowMass, k of dragBand with the least drag on the thinnest believable shaft and the greatest on the thickest
 * @param bundle - the set-up with its records [record]
 * @returns speed [m/s], mass [kg], diameter [m], eye height [m], air [kg/m³] and drag [1/m], each with what is not known of it; or a refusal that names the figure that is missing [record]
 * @validity still air as airDensity has it when nobody has said otherwise; an eye height or a diameter that nobody measured is assumed and says so
 * @source own derivation
 * @example flightBasis(exampleBundle).value.eyeHeight // {"value":0.11,"measured":true}
 */
export function flightBasis(bundle: Bundle): Result<FlightBasis> {
  const speed = setupSpeed(bundle);
  if (!speed.ok) return speed;
  const weighed = arrowMass(bundle.arrowSet);
  if (!weighed.ok) return weighed;
  const { mass } = weighed.value;
  const diameter = diameterOf(bundle.arrowSet);
  const air = airDensity();
  const drag = {
    low: dragBand(diameter.low, mass, air).low,
    value: dragBand(diameter.value, mass, air).value,
    high: dragBand(diameter.high, mass, air).high,
  };
  return ok({ speed: speed.value, mass, diameter, eyeHeight: eyeHeightOf(bundle.setup.form), air, drag });
}
