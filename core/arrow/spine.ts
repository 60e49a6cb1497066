import type { SpineConvention } from '../model/index.ts';
import { requirePositive } from '../model/positive.ts';
import { inch, poundForce, standardGravity } from '../units/exact.ts';

/** What a tester of each convention does: the span between its supports [m] and the load hung at mid-span [N]. */
export interface Tester {
  readonly span: number;
  readonly load: number;
  /** Where the convention comes from: a key of core/sources.ts or a mark. */
  readonly source: string;
}

/** The tester that every needed and measured deflection is compared on. */
export const STANDARD = '28 in, 880 g' satisfies SpineConvention;

export const testers: Readonly<Record<SpineConvention, Tester>> = {
  '28 in, 880 g': { span: 28 * inch, load: 0.88 * standardGravity, source: 'astm-f2031' },
  '26 in, 2 lb': { span: 26 * inch, load: 2 * poundForce, source: 'astm-f2031' },
};

/**
 * Bending stiffness of a shaft from its static spine.
 *
 * @equation EI = F L³ / (48 δ)
 * @param deflection - δ, sag at mid-span [m]
 * @param span - L, distance between the supports [m]
 * @param load - F, force at mid-span [N]
 * @returns EI, bending stiffness [N m²]
 * @validity small deflections of a simply supported, uniform shaft; RangeError for anything that is not positive and finite
 * @source astm-f2031
 * @example bendingStiffness(0.01, 0.6, 8) // 3.6
 */
export function bendingStiffness(deflection: number, span: number, load: number): number {
  requirePositive({ deflection, span, load });
  return (load * span ** 3) / (48 * deflection);
}

/**
 * Bending stiffness of a shaft from its deflection on a tester of the named convention.
 *
 * @equation EI = F L³ / (48 δ), with the convention's span and load
 * @param deflection - δ, what that tester reads [m]
 * @param convention - which tester was used [choice]
 * @returns EI, bending stiffness [N m²]
 * @validity as bendingStiffness; RangeError for a deflection that is not positive and finite
 * @source astm-f2031
 * @example stiffnessOf(0.0127, '28 in, 880 g') // 5.092530435994025
 */
export function stiffnessOf(deflection: number, convention: SpineConvention): number {
  const { span, load } = testers[convention];
  return bendingStiffness(deflection, span, load);
}

/**
 * Deflection that a shaft of known stiffness shows on a tester of the named convention.
 *
 * @equation δ = F L³ / (48 EI), with the convention's span and load
 * @param stiffness - EI, bending stiffness [N m²]
 * @param convention - which tester is meant [choice]
 * @returns δ, what that tester reads [m]
 * @validity as bendingStiffness; RangeError for a stiffness that is not positive and finite
 * @source astm-f2031
 * @example deflectionOf(5.092530435994025, '28 in, 880 g') // 0.0127
 */
export function deflectionOf(stiffness: number, convention: SpineConvention): number {
  requirePositive({ stiffness });
  const { span, load } = testers[convention];
  return (load * span ** 3) / (48 * stiffness);
}

/**
 * What the standard tester (28 in, 880 g) reads on a shaft that was measured on either tester.
 *
 * @equation δ₂₈ = δ (F₂₈/F) (28 in/L)³
 * @param deflection - δ, as measured [m]
 * @param convention - the tester it was measured on [choice]
 * @returns δ₂₈, deflection on the standard tester [m]
 * @validity as bendingStiffness; RangeError for a deflection that is not positive and finite
 * @source astm-f2031
 * @example standardDeflection(0.0127, '28 in, 880 g') // 0.0127
 */
export function standardDeflection(deflection: number, convention: SpineConvention): number {
  return convention === STANDARD ? requiredPositive(deflection) : deflectionOf(stiffnessOf(deflection, convention), STANDARD);
}

/**
 * The wood trade's pounds of a shaft: 26 in over its deflection on the 26 in, 2 lb tester.
 *
 * @equation P = 26 in / δ₂₆
 * @param deflection - δ, as measured [m]
 * @param convention - the tester it was measured on [choice]
 * @returns P, wood pounds: a number of the trade, not a force [-]
 * @validity as bendingStiffness; RangeError for a deflection that is not positive and finite
 * @source from memory
 * @example woodPounds(0.01651, '26 in, 2 lb') // 40
 */
export function woodPounds(deflection: number, convention: SpineConvention): number {
  return (26 * inch) / deflectionOf(stiffnessOf(deflection, convention), '26 in, 2 lb');
}

const requiredPositive = (deflection: number): number => {
  requirePositive({ deflection });
  return deflection;
};
