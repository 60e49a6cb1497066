import { ok, refuse, type Bundle, type Result } from '../model/index.ts';
import type { Band } from '../model/band.ts';
import { given } from '../model/given.ts';
import { axialOf, fibreOf } from './limbs/fibres.ts';
import { stringLengthOf } from './limbs/stringLength.ts';
import { usualStrands } from './limbs/usualStrands.ts';
import type { DrawWeight } from './weight.ts';
import { heavierWeight } from './weightAgainstMark.ts';

/** What a string holds, and what it is asked to hold. */
export interface StringFigures {
  /** Of one strand [N]. */
  readonly strandStrength: Band;
  /** At which the whole string breaks [N]. */
  readonly strength: Band;
  /** With the bow braced [N]. */
  readonly bracedTension: Band;
  /** While it is shot [N]. */
  readonly greatestTension: Band;
  /** Breaking strength over draw weight [-]. */
  readonly reserve: number;
  /** 'beyond': the tension of a shot may pass the breaking strength, so it must not be shot. */
  readonly holds: 'within common practice' | 'little reserve' | 'beyond its strength';
  /** EA/L of the whole string; null while neither string nor bow length is known [N/m]. */
  readonly stiffness: Band | null;
  /** EA [N]. */
  readonly axial: Band;
  readonly strandsUsual: { readonly low: number; readonly high: number } | null;
  readonly lowStretch: boolean;
}

/** Common practice: a string breaks at six times the draw weight at least. */
export const LEAST_RESERVE = 6;
/** Common practice for the braced bow; statics gives 1.2 to 1.7 times for a straight-limbed start of the curve, so it errs on the careful side. */
const BRACED = { value: 2.5, low: 1.2, high: 2.8 };
/** After the arrow has gone the string stops the limbs alone: six times the draw weight and more. */
const AFTER_THE_ARROW = 6;

/**
 * What the string of a set-up holds and what it is asked to hold.
 *
 * @equation strength = strands × strand strength; braced about 2.5 F; while the arrow is on it 2.3 to 3.4 F with polyester and 3 to 5.8 F with low-stretch fibre, 6 F after it has gone; reserve = strength/F: little below 6, beyond its strength when the tension with the arrow on passes the strength
 * @param bundle - bow, archer and setup, with the string's material and strands [record]
 * @param weighs - its heavierWeight, for who has it already [function]
 * @returns strengths, tensions and EA [N], stiffness [N/m] [record]
 * @validity new strings, whole and well served: wear, knots and a nicked strand are for the look-over; tensions are a rigid arm's, which are too high near brace, and so on the careful side; refused for a compound, and while material, strands or weight are not known
 * @source common practice
 * @example stringFigures({ ...exampleBundle, setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, stringMaterial: 'polyester', strands: 12 } } }).value.strength.value // 2664
 */
export function stringFigures(
  { bow, archer, setup }: Bundle,
  weighs: () => Result<DrawWeight> = () => heavierWeight(bow, archer, setup.settings),
): Result<StringFigures> {
  if (bow.bowKind === 'compound')
    return refuse(
      'compound',
      'The string and cables of a compound are its maker\u2019s business: keep to what is written there.',
    );
  const { settings } = setup;
  const { stringMaterial } = settings;
  if (stringMaterial === null) return refuse('missing', 'For the string, enter its material.', 'stringMaterial');
  const fibre = fibreOf(stringMaterial);
  if (fibre === null)
    return refuse(
      'unknown fibre',
      'Nothing is known here of a string of another fibre. Ask its maker for the strength of a strand.',
      'stringMaterial',
    );
  const figures = given('the string', { strands: settings.strands });
  if (!figures.ok) return figures;
  const { strands } = figures.value;
  const found = weighs();
  if (!found.ok) return found;
  const weight = found.value.value;
  const times = (band: Band, factor: number): Band => ({
    value: factor * band.value,
    low: factor * band.low,
    high: factor * band.high,
  });
  const strength = times(fibre.strength, strands);
  const axial = axialOf(fibre, strands);
  const length = stringLengthOf(bow, settings);
  const reserve = strength.value / weight;
  const greatestTension = { value: fibre.dynamic.high * weight, low: fibre.dynamic.low * weight, high: AFTER_THE_ARROW * weight };
  const usual = usualStrands(stringMaterial, weight);
  return ok({
    strandStrength: fibre.strength,
    strength,
    bracedTension: times(BRACED, weight),
    greatestTension,
    reserve,
    holds:
      greatestTension.value > strength.value
        ? 'beyond its strength'
        : reserve < LEAST_RESERVE
          ? 'little reserve'
          : 'within common practice',
    stiffness: length === null ? null : times(axial, 1 / length),
    axial,
    strandsUsual: usual === null ? null : { low: usual.low, high: usual.high },
    lowStretch: fibre.lowStretch,
  });
}
