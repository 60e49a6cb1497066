import { deflectionOf, standardDeflection, stiffnessOf, woodPounds } from '../arrow/index.ts';
import { isWeighed, type DrawWeight } from '../bow/index.ts';
import type { ArrowPass, ArrowSet, SpineConvention } from '../model/index.ts';
import { grain, inch, poundForce } from '../units/exact.ts';
import { inBothUnits } from './inBothUnits.ts';
import { fitOf, settled, type Needed, type Verdict } from './verdict.ts';

/** The rule and where it holds. Common practice; the half group is how closely wood shafts are sorted. */
const thumbRule = {
  weightLb: { from: 30, to: 60 },
  lengthIn: { from: 27, to: 31, at: 28 },
  pointGr: { from: 100, to: 150, at: 125 },
  poundsPerInch: 5,
  poundsPer25Gr: 5,
  halfGroup: 2.5,
} as const;

export interface ThumbView {
  readonly applies: true;
  /** Wood pounds that the rule asks for, at the weight's value, and half a 5 lb group either side. */
  readonly pounds: { readonly value: number; readonly low: number; readonly high: number };
  readonly measuredPounds: number;
  /** The same as deflection on the standard tester [m]. */
  readonly needed: Needed;
  readonly verdict: Verdict;
}

export interface DoesNotApply {
  readonly applies: false;
  readonly why: string;
}

/** What the rule of thumb looks at. */
export interface ThumbInput {
  readonly material: ArrowSet['material'];
  readonly arrowPass: ArrowPass;
  /** On the fingers [N]. */
  readonly weight: DrawWeight;
  /** Throat of the nock to end of shaft [m]. */
  readonly length: number;
  /** Point [kg]. */
  readonly pointMass: number;
  readonly deflection: number;
  readonly convention: SpineConvention;
}

const outside = (value: number, range: { readonly from: number; readonly to: number }): boolean =>
  value < range.from - 1e-6 || value > range.to + 1e-6;

const whyNot = ({ material, arrowPass, weight, length, pointMass }: ThumbInput): string | null => {
  const { weightLb, lengthIn, pointGr } = thumbRule;
  if (material !== 'wood') return 'The rule of thumb is for wooden shafts only.';
  if (arrowPass === 'rest and button')
    return 'The rule of thumb is for arrows off the hand or the shelf; this bow has a rest and a button.';
  if (outside(weight.value / poundForce, weightLb))
    return `The rule of thumb holds from ${inBothUnits(weightLb, 'lb')} on the fingers; this bow draws ${weight.value / poundForce < weightLb.from ? 'less' : 'more'}.`;
  if (outside(length / inch, lengthIn))
    return `The rule of thumb holds for arrows of ${inBothUnits(lengthIn, 'in')}; these are ${length / inch < lengthIn.from ? 'shorter' : 'longer'}.`;
  if (outside(pointMass / grain, pointGr))
    return `The rule of thumb holds for points of ${inBothUnits(pointGr, 'gr')}; these are ${pointMass / grain < pointGr.from ? 'lighter' : 'heavier'}.`;
  return null;
};

/**
 * Wood pounds that the trade's rule of thumb asks of a shaft.
 *
 * @equation P = F + 5 (L − 28 in) + 5 (m − 125 gr)/25 gr, F in lb
 * @param weight - F, on the fingers [N]
 * @param length - L, throat of the nock to end of shaft [m]
 * @param pointMass - m, point [kg]
 * @returns P, wood pounds: a number of the trade, not a force [-]
 * @validity 30 to 60 lb, 27 to 31 in, a point near 125 gr, wood off the hand or the shelf; ruleOfThumb keeps to that, this only computes
 * @source common practice
 * @example thumbPounds(177.92886461042, 0.7112, 0.008099863750000001) // 40
 */
export function thumbPounds(weight: number, length: number, pointMass: number): number {
  const { lengthIn, pointGr, poundsPerInch, poundsPer25Gr } = thumbRule;
  return (
    weight / poundForce + poundsPerInch * (length / inch - lengthIn.at) + (poundsPer25Gr * (pointMass / grain - pointGr.at)) / 25
  );
}

/**
 * The view by the trade's rule of thumb for wooden arrows, or why it does not apply.
 *
 * @equation in range within 2.5 lb of P = F + 5 (L − 28 in) + 5 (m − 125 gr)/25 gr at both ends of the weight
 * @param input - material, arrowPass, weight [N], length [m], pointMass [kg], deflection [m], convention [record]
 * @returns pounds asked and measured, needed deflection [m] and verdict; or a sentence saying why the rule does not apply [record]
 * @validity as thumbPounds; figures must have passed the model's limits
 * @source common practice
 * @example ruleOfThumb({ material: 'carbon', arrowPass: 'shelf' }).why // "The rule of thumb is for wooden shafts only."
 */
export function ruleOfThumb(input: ThumbInput): ThumbView | DoesNotApply {
  const why = whyNot(input);
  if (why !== null) return { applies: false, why };
  const { weight, length, pointMass, deflection, convention } = input;
  const asked = (force: number) => {
    const value = thumbPounds(force, length, pointMass);
    return { value, low: value - thumbRule.halfGroup, high: value + thumbRule.halfGroup };
  };
  const standardOf = (pounds: number): number => deflectionOf(stiffnessOf((26 * inch) / pounds, '26 in, 2 lb'), '28 in, 880 g');
  const neededAt = (force: number): Needed => {
    const pounds = asked(force);
    return { low: standardOf(pounds.high), high: standardOf(pounds.low) };
  };
  const measured = standardDeflection(deflection, convention);
  const fitAt = (force: number) => fitOf(measured, neededAt(force));
  return {
    applies: true,
    pounds: asked(weight.value),
    measuredPounds: woodPounds(deflection, convention),
    needed: neededAt(weight.value),
    verdict: isWeighed(weight.from) ? fitAt(weight.value) : settled(fitAt(weight.low), fitAt(weight.high)),
  };
}
