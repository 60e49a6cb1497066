import type { UnitChoice } from '../../model/preferences.ts';
import type { TrialKind } from '../../model/trial.ts';
import { inch } from '../../units/exact.ts';
import { textQuantity } from '../../units/index.ts';

/** Up to here a tear to the side can come from a tuned bow [m]. */
export const USUAL_TEAR = 2 * inch;

/**
 * The tear to the side that a tuned bow may leave, in words.
 *
 * @equation 2 in, 5 cm or 50 mm
 * @param units - the person's choice of units [record]
 * @returns the words [text]
 * @validity finger-released arrows
 * @source common practice
 * @example usualTearText(defaultPreferences.units) // "50 mm"
 */
export function usualTearText(units: UnitChoice): string {
  return { in: '2 in', cm: '5 cm', mm: '50 mm' }[units.setting];
}

/**
 * What the trade disputes about a trial, so that nobody takes one side of it for settled.
 *
 * @equation by kind of trial
 * @param kind - which trial [choice]
 * @param units - the person's choice of units [record]
 * @returns sentences, none where nothing is disputed [list]
 * @validity every trial
 * @source common practice; from memory
 * @example disputedOf('clearance', defaultPreferences.units) // []
 */
export function disputedOf(kind: TrialKind, units: UnitChoice): readonly string[] {
  return disputes[kind](units);
}

const braceSign = (units: UnitChoice): string =>
  `Whether a higher brace height makes the shaft act stiffer or weaker: sources give both signs, so it is measured on this bow, ${textQuantity(units.length === 'in' ? inch / 8 : 0.003, 'length', units)} either way.`;

const disputes: Readonly<Record<TrialKind, (units: UnitChoice) => readonly string[]>> = {
  'bare shaft': (units) => [
    'Where the bare shafts should end up: some leave them slightly stiff, some slightly weak and low. It is the archer\u2019s choice, and worth writing down.',
    braceSign(units),
  ],
  'paper tear': (units) => [
    `Whether a tear to the side says anything of a finger-released arrow: it is flexing as it passes the paper, and up to about ${usualTearText(units)} can come from a tuned bow.`,
    'Whether a tear to the weak side is a weak shaft or an arrow that touches the bow: the paper cannot tell the two apart.',
  ],
  'walk-back': () => [
    'The button way takes a slanting line for the button\u2019s spring and a bent one for the centre shot; the rest way takes the slant for the rest. Neither is checked against a source, and they lead to different changes.',
    'Any constant angle between the line of sight and the arrow gives a slant: the sight\u2019s windage and a canted bow do it as well as anything on the rest.',
  ],
  'brace height': (units) => [
    braceSign(units),
    'Whether a low brace height strains the limbs: some say so, others recommend it for a bow\u2019s long life. The bow maker\u2019s range governs.',
  ],
  'nocking point': () => [
    'Whether bare shafts should strike level or slightly low: some leave them low. It is the archer\u2019s choice.',
  ],
  clearance: () => [],
  'a against b': () => [],
};
