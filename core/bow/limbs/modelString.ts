import type { Bow, Settings } from '../../model/index.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { about } from './about.ts';
import { axialOf, fibres, stringMassOf, type KnownFibre } from './fibres.ts';
import { usualStrands } from './usualStrands.ts';

/** A string as the model of the stroke asks for it, with what of it is a guess. */
export interface ModelString {
  /** EA [N]. */
  readonly stiffness: number;
  /** m_s [kg]. */
  readonly mass: number;
  /** What was not measured, ready to read. */
  readonly assumed: readonly string[];
}

const recurves: readonly Bow['bowKind'][] = ['take-down recurve', 'one-piece recurve'];

/** Low-stretch only on a recurve that nobody has forbidden it on; a linen string counts as fourteen strands. */
const usualMaterial = (bow: Pick<Bow, 'bowKind' | 'lowStretch'>): KnownFibre =>
  recurves.includes(bow.bowKind) && bow.lowStretch !== 'not allowed' ? 'HMPE' : 'polyester';
const OTHERWISE = 14;

/**
 * The string of a set-up: as weighed and counted, else as is usual for the bow and its weight.
 *
 * @equation EA by axialOf; m_s as weighed, else by stringMassOf
 * @param bow - bowKind and lowStretch [record]
 * @param settings - stringMaterial, strands, stringMass [kg] [record]
 * @param weight - F, draw weight [N]
 * @param length - loop to loop [m]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns EA [N], m_s [kg], and sentences that say what was assumed [record]
 * @validity finger-shot bows; what is assumed is a guess from memory and never a recommendation
 * @source from memory
 * @example modelStringOf(exampleBundle.bow, { stringMaterial: 'polyester', strands: 14, stringMass: 0.007 }, 150, 1.6, defaultPreferences.units).mass // 0.007
 */
export function modelStringOf(
  bow: Pick<Bow, 'bowKind' | 'lowStretch'>,
  settings: Pick<Settings, 'stringMaterial' | 'strands' | 'stringMass'>,
  weight: number,
  length: number,
  units: UnitChoice,
): ModelString {
  const { stringMaterial } = settings;
  const known = stringMaterial !== null && stringMaterial !== 'other';
  const material = known ? stringMaterial : usualMaterial(bow);
  const fibre = fibres[material];
  const strands = settings.strands ?? usualStrands(material, weight)?.usual ?? OTHERWISE;
  const whole = Math.round(strands);
  const mass = settings.stringMass ?? stringMassOf(fibre, strands, length);
  const assumed: string[] = [];
  const noAdvice =
    fibre.lowStretch && bow.lowStretch !== 'allowed' ? ' That is no advice: the bow\u2019s maker says what it may carry.' : '';
  if (!known || settings.strands === null)
    assumed.push(
      stringMaterial === null
        ? `The string is taken to be ${whole} strands of ${material}: ${settings.strands === null ? 'neither material nor strands are' : 'the material is not'} on record.${noAdvice}`
        : !known
          ? `The string is taken to be ${whole} strands of ${material}: nothing is known here of another fibre.${noAdvice}`
          : `The string is taken to have ${whole} strands: nobody has counted them.`,
    );
  if (settings.stringMass === null)
    assumed.push(`The string is taken to weigh ${about(mass, 'mass', units)}: it was not on a scale.`);
  return { stiffness: axialOf(fibre, strands).value, mass, assumed };
}
