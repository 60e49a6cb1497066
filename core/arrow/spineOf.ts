import type { Band } from '../model/band.ts';
import { limits, ok, refuse, type ArrowSet, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';
import { deflectionOf, STANDARD, stiffnessOf } from './spine.ts';
import { tubeShaft, type TubeParts } from './tube.ts';

/** How a shaft bends under a load, and how that is known. */
export interface ShaftSpine {
  /** On the standard tester, 28 in and 880 g [m]. */
  readonly deflection: Band;
  /** Bending stiffness [N m²]. */
  readonly stiffness: Band;
  readonly from: 'measured' | 'tube';
}

/** What of an arrow set says how its shaft bends. */
export type SpineParts = TubeParts & Pick<ArrowSet, 'deflection' | 'convention'>;

const exactly = (value: number): Band => ({ value, low: value, high: value });

/**
 * The spine of a shaft: as it was measured, else of an aluminium tube from its diameter and wall.
 *
 * @equation EI = F L³/(48 δ) of the tester that was used, or EI = E π (D⁴ − d⁴)/64; δ₂₈ = F₂₈ L₂₈³/(48 EI)
 * @param arrowSet - material, deflection [m] with its convention, diameter [m] and wall [m] [record]
 * @returns deflection on the standard tester [m] and stiffness [N m²], each with its band, and where they are from [record]
 * @validity a measured spine governs and has no band of its own; the tube's band is that of the alloy; refused when neither is on record, which the sentence says, and for figures outside the model's limits
 * @source astm-f2031
 * @example spineOf({ material: 'wood', deflection: 0.0127, convention: '28 in, 880 g', diameter: null, wall: null }).value.deflection.value // 0.0127
 */
export function spineOf(arrowSet: SpineParts): Result<ShaftSpine> {
  const { deflection, convention, material } = arrowSet;
  if (deflection !== null) {
    const read = given('the spine', { deflection });
    if (!read.ok) return read;
    const stiffness = stiffnessOf(deflection, convention);
    return ok({
      deflection: exactly(convention === STANDARD ? deflection : deflectionOf(stiffness, STANDARD)),
      stiffness: exactly(stiffness),
      from: 'measured',
    });
  }
  const tube = tubeShaft(arrowSet);
  if (!tube.ok) return tube;
  if (tube.value === null)
    return refuse(
      'missing',
      material === 'aluminium'
        ? 'For the spine, enter a spine deflection, or the tube’s diameter and wall.'
        : 'For the spine, enter a spine deflection.',
      'deflection',
    );
  const { value, low, high } = tube.value.stiffness;
  const sag = (stiffness: number) => deflectionOf(stiffness, STANDARD);
  const found = { value: sag(value), low: sag(high), high: sag(low) };
  if (found.value < limits.deflection.min || found.value > limits.deflection.max)
    return refuse('no such shaft', 'No arrow shaft bends like a tube of this diameter and wall: measure both again.', 'wall');
  return ok({ deflection: found, stiffness: tube.value.stiffness, from: 'tube' });
}
