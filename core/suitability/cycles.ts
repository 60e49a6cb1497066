import { firstBendingFrequency, type LoadedShaft } from '../arrow/index.ts';
import { forceDrawCurve, kindFigures, looseFromCurve } from '../bow/index.ts';
import type { BowKind } from '../model/index.ts';

/** How often the arrow bends while the string drives it: a figure beside the views, without a verdict of its own. */
export interface Cycles {
  readonly figure: number;
  /** First bending frequency of the free arrow with all its small parts on the very ends [Hz]: some 3 % below bendingModes, which has them at their places. */
  readonly frequency: number;
  /** Time on the string [s], by the one-number virtual mass: the full stroke takes some 20 % longer. */
  readonly timeOnString: number;
  /** The virtual mass that was taken [kg]. */
  readonly virtualMass: number;
}

/**
 * Bending cycles during the power stroke.
 *
 * @equation n = f₁ t, f₁ with the small parts on the very ends, t from (m + K) u″ = −F(u) with the kind's fullness and virtual mass K
 * @param bowKind - 6 g of virtual mass for recurves, 11.5 g for straight-limbed bows [choice]
 * @param weight - F at full draw, on the fingers [N]
 * @param stroke - power stroke [m]
 * @param arrowMass - m, the whole arrow [kg]
 * @param shaft - the shaft with its end masses, as bendingFrequency takes it [record]
 * @returns n, with f₁ [Hz], t [s] and K [kg]; null for a compound [record]
 * @validity about .9 for ordinary set-ups, since they were reckoned so: with bendingModes .91 to .94, and by the full stroke 1.1 to 1.3; it carries no effect of the point, so it cannot judge alone; RangeError for figures that are not positive and finite
 * @source own derivation
 * @example cyclesOnString('longbow', 180, 0.45, 0.02, { stiffness: 4, linearDensity: 0.01, length: 0.7, nockMass: 0, frontMass: 0 }).virtualMass // 0.0115
 */
export function cyclesOnString(
  bowKind: BowKind,
  weight: number,
  stroke: number,
  arrowMass: number,
  shaft: LoadedShaft,
): Cycles | null {
  const kind = kindFigures[bowKind];
  if (kind === null) return null;
  const virtualMass = kind.virtualMass.value;
  const curve = forceDrawCurve(weight, stroke, kind.fullness.value);
  const { time } = looseFromCurve(curve, stroke, arrowMass + virtualMass, 1);
  const frequency = firstBendingFrequency(shaft);
  return { figure: frequency * time, frequency, timeOnString: time, virtualMass };
}
