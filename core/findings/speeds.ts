import { virtualMassOf } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { sources } from '../sources.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { goTo, rangeText, whyRule } from './parts.ts';

/**
 * Speeds over the chronograph: whether the virtual mass that they ask for can be believed.
 *
 * @equation as virtualMassOf of the bow room: flagged and not used where it is not credible
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null without speeds; unknown while they cannot be judged [record]
 * @validity as virtualMassOf
 * @source klopsteg-1943
 * @example speedsFinding(exampleBundle, defaultPreferences.units) // null
 */
export function speedsFinding(bundle: Bundle, units: UnitChoice): Finding | null {
  const count = bundle.setup.chronograph.length;
  if (count === 0) return null;
  const found = virtualMassOf(bundle, units);
  const go = goTo('Shoot again', 'bow', 'setup.chronograph');
  if (!found.ok) return untold(count, found.problem.sentence, go);
  const { virtualMass, credible, why, readings, cannotSeparate, notes } = found.value;
  // Speeds that do not fall with mass ask for no mass at all.
  const text = virtualMass === null ? 'none to be had' : textQuantity(virtualMass.value, 'mass', units);
  const band = virtualMass === null ? '' : rangeText(virtualMass.low, virtualMass.high, 'mass', units, false);
  const speeds = `${readings} ${readings === 1 ? 'speed' : 'speeds'}`;
  return {
    id: 'speeds',
    level: credible ? 'ok' : 'caution',
    title: credible ? `Virtual mass ${text} from ${speeds}` : `${speeds}: flagged, not used`,
    detail: credible
      ? (notes[0] ?? `It may be ${band}.`)
      : (why ?? 'They ask for a virtual mass that no bow has. Shoot them again.'),
    rule: null,
    short: { figure: credible ? text : String(readings), word: credible ? 'virtual' : 'speeds' },
    why: whyRule(
      'Speeds over the chronograph',
      `The bow\u2019s own moving parts seem to ride along with the arrow as so much mass. Speeds of arrows of several masses tell it, when they are far enough apart; a figure that no bow has is flagged and not used. ${cannotSeparate}`,
      [
        ['K', 'virtual mass', band === '' ? text : `${text}, ${band}`],
        ['', 'speeds', String(count)],
      ],
      sources['klopsteg-1943'],
    ),
    action: credible ? null : go,
  };
}

const untold = (count: number, detail: string, action: Finding['action']): Finding => ({
  id: 'speeds',
  level: 'unknown',
  title: `${count} ${count === 1 ? 'speed' : 'speeds'}: no virtual mass out of ${count === 1 ? 'it' : 'them'} yet`,
  detail,
  rule: null,
  short: { figure: String(count), word: 'speeds' },
  why: whyRule('Speeds over the chronograph', detail, [['', 'speeds', String(count)]], sources['klopsteg-1943']),
  action,
});
