import { arrowMass } from '../arrow/index.ts';
import { setupSpeed, type ArrowSpeed } from '../bow/index.ts';
import { type Air, type AirGiven, airOf, airUnsaid } from '../flight/index.ts';
import type { Band } from '../model/band.ts';
import type { Bundle } from '../model/bundle.ts';
import { ok, type Result } from '../model/problem.ts';
import { diameterOf, eyeHeightOf, type Assumable } from './assumed.ts';
import { type DragFound, dragOf } from './dragOf.ts';

/** What the flight of a set-up's arrow rests on. */
export interface FlightBasis extends DragFound {
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
  /** All of the air. */
  readonly airState: Air;
  /** Whether anybody said anything of the air. */
  readonly airGiven: boolean;
}

/**
 * What the flight of a set-up's arrow rests on: speed, mass, and the drag that follows from them.
 *
 * @equation v of setupSpeed, m of arrowMass, ρ of airOf, k of dragOf: out of speeds along the flight where two or more tell it, else by the boundary layers that the speed allows
 * @param bundle - the set-up with its records [record]
 * @param air - what is known of the air; null or left out: 15 °C at sea level [record]
 * @returns speed [m/s], mass [kg], diameter [m], eye height [m], air [kg/m³] and drag [1/m], each with what is not known of it; or a refusal that names the figure that is missing [record]
 * @validity still air; an eye height or a diameter that nobody measured is assumed and says so; refused where airOf refuses the air
 * @source own derivation
 * @example flightBasis(exampleBundle).value.eyeHeight // {"value":0.11,"measured":true}
 */
export function flightBasis(bundle: Bundle, air: AirGiven | null = null): Result<FlightBasis> {
  const speed = setupSpeed(bundle);
  if (!speed.ok) return speed;
  const weighed = arrowMass(bundle.arrowSet);
  if (!weighed.ok) return weighed;
  const state = airOf(air ?? airUnsaid);
  if (!state.ok) return state;
  const { mass } = weighed.value;
  const diameter = diameterOf(bundle.arrowSet);
  return ok({
    speed: speed.value,
    mass,
    diameter,
    eyeHeight: eyeHeightOf(bundle.setup.form),
    air: state.value.density,
    airState: state.value,
    airGiven: state.value.assumed.length < 3,
    ...dragOf({ mass, diameter }, speed.value, state.value, bundle.setup.flightSpeeds),
  });
}
