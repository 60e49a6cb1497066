import type { Measure } from '../model/limits.ts';
import type { Screen } from './finding.ts';

/** What a refusal may name besides a measure: a table or a choice. */
type OtherField = 'forceDraw' | 'chronograph' | 'arrows' | 'stringMaterial' | 'bowKind';

const places: Readonly<Partial<Record<Measure | OtherField, readonly [screen: Screen, field: string]>>> = {
  drawLength: ['bow', 'archer.drawLength'],
  holdTime: ['bow', 'archer.holdTime'],
  eyeHeight: ['bow', 'form.eyeHeight'],
  bowLength: ['bow', 'bow.length'],
  markedWeight: ['bow', 'bow.markedWeight'],
  markedDraw: ['bow', 'bow.markedDraw'],
  leastMassPerWeight: ['bow', 'bow.leastMassPerWeight'],
  weightOnFingers: ['bow', 'settings.weightOnFingers'],
  braceHeight: ['bow', 'settings.braceHeight'],
  tiller: ['bow', 'settings.tiller'],
  nockingPoint: ['bow', 'settings.nockingPoint'],
  centreShot: ['bow', 'settings.centreShot'],
  buttonTurns: ['bow', 'settings.buttonTurns'],
  arrowSpeed: ['bow', 'settings.arrowSpeed'],
  pointAhead: ['bow', 'settings.pointAhead'],
  buttonPreload: ['bow', 'settings.buttonPreload'],
  buttonRate: ['bow', 'settings.buttonRate'],
  bowKind: ['bow', 'bow.bowKind'],
  forceDraw: ['bow', 'bow.forceDraw'],
  chronograph: ['bow', 'setup.chronograph'],
  readingDraw: ['bow', 'bow.forceDraw'],
  readingForce: ['bow', 'bow.forceDraw'],
  stringMaterial: ['bow', 'settings.stringMaterial'],
  strands: ['bow', 'settings.strands'],
  stringLength: ['bow', 'settings.stringLength'],
  stringMass: ['bow', 'settings.stringMass'],
  twists: ['bow', 'settings.twists'],
  arrowLength: ['arrow', 'arrowSet.length'],
  deflection: ['arrow', 'arrowSet.deflection'],
  linearDensity: ['arrow', 'arrowSet.linearDensity'],
  shaftDiameter: ['arrow', 'arrowSet.diameter'],
  pointMass: ['arrow', 'arrowSet.pointMass'],
  insertMass: ['arrow', 'arrowSet.insertMass'],
  nockMass: ['arrow', 'arrowSet.nockMass'],
  fletchingMass: ['arrow', 'arrowSet.fletchingMass'],
  arrowMass: ['arrow', 'arrowSet.weighed'],
  wall: ['arrow', 'arrowSet.wall'],
  balance: ['arrow', 'arrowSet.balance'],
  pinMass: ['arrow', 'arrowSet.pinMass'],
  wrapMass: ['arrow', 'arrowSet.wrapMass'],
  vaneCount: ['arrow', 'arrowSet.vaneCount'],
  vaneLength: ['arrow', 'arrowSet.vaneLength'],
  vaneFromThroat: ['arrow', 'arrowSet.vaneFromThroat'],
  straightness: ['arrow', 'arrowSet.arrows'],
  arrows: ['arrow', 'arrowSet.arrows'],
};

/**
 * Where the field of a measured figure stands, for the link that leads to it.
 *
 * @equation record.field and its screen, from a table
 * @param measure - a measure's key, or whatever a refusal names as its field [text]
 * @param otherwise - screen and field when the name is not a measure's [list]
 * @returns screen and field [list]
 * @validity any text
 * @source own derivation
 * @example fieldOf('arrowLength', ['bow', 'bow.length']) // ["arrow", "arrowSet.length"]
 */
export function fieldOf(
  measure: string | undefined,
  otherwise: readonly [screen: Screen, field: string],
): readonly [screen: Screen, field: string] {
  return (measure === undefined ? undefined : places[measure as Measure | OtherField]) ?? otherwise;
}
