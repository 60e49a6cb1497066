import { isWeighed, weightAgainstMark } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { arrowsMassCheck } from '../safety/index.ts';
import { textQuantity } from '../units/index.ts';
import { fieldOf } from './fieldOf.ts';
import type { Finding } from './finding.ts';
import { knownOf, type Known } from './known.ts';
import { goTo, ruleOf, sourceWords, weightNames } from './parts.ts';
import { waitingFor } from './waiting.ts';

/**
 * Whether the arrow is heavy enough for the bow, as one line in the column of checks.
 *
 * @equation as arrowsMassCheck of the safety room
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @param known - what several checks rest on [record]
 * @returns the finding [record]
 * @validity as arrowsMassCheck
 * @source common practice
 * @example arrowMassFinding(exampleBundle, defaultPreferences.units).title // "Arrow mass 9.9 gr per lb"
 */
export function arrowMassFinding(bundle: Bundle, units: UnitChoice, known: Known = knownOf(bundle, units)): Finding {
  const { archer, bow, arrowSet, setup } = bundle;
  const weight = known.heavier();
  const judged = weight.ok ? arrowsMassCheck(bow, arrowSet, weight.value) : known.mass();
  if (!weight.ok || !judged.ok || !('check' in judged.value)) {
    const problem = !judged.ok ? judged.problem : !weight.ok ? weight.problem : null;
    return waitingFor(
      'arrowMass',
      'Arrow mass for this weight: not known',
      problem?.sentence ?? '',
      'mass',
      ...fieldOf(problem?.field, ['arrow', 'arrowSet.weighed']),
    );
  }
  const { check, mass, from: massFrom, number } = judged.value;
  const text = (si: number) => textQuantity(si, 'massPerWeight', units);
  const perText = text(check.value).replace('/', ' per ');
  const { least, limit, level } = check;
  const from = least === null ? '' : least.from === 'maker' ? 'Bow maker\u2019s least' : capitalMark(least.from);
  // The figure itself keeps the limit; only at the heaviest that the weight may be it does not.
  const atLimit = level === 'caution' && limit !== null && check.value >= limit;
  const weighed = isWeighed(weight.value.from);
  const doubted = weight.value.from === 'marked weight' && weightAgainstMark(bow, archer, setup.settings) !== null;
  const read = known.weight();
  const overTable = weight.value.from === 'read on the scale' && read.ok && read.value.from === 'on the fingers';
  const rounded = textQuantity(weight.value.value, 'weight', units, { digits: 0 });
  // Scale, mark and table cannot all be right: the arrow has to do for the heaviest.
  const by = doubted
    ? ` Judged by the ${rounded} that the mark lets expect, since the scale contradicts it: weigh again.`
    : overTable
      ? ` Judged by the ${rounded} in the table of readings, since the weight on the fingers contradicts it: weigh again.`
      : '';
  const which = number === null ? 'Arrow' : `Arrow ${number}`;
  const title = {
    stop: `${which} too light: ${text(check.value)}`,
    caution: `${number === null ? 'Arrow mass' : `${which}:`} ${perText}, ${!atLimit ? 'light' : weighed ? 'on the limit' : 'perhaps too light'}`,
    unknown: `Arrow mass ${perText}`,
    'in range': `Arrow mass ${perText}`,
  };
  const detail = (): string => {
    if (least === null) return 'A compound\u2019s maker states the least arrow mass. Enter it.';
    const floor = `${from}: ${text(limit ?? least.caution)}.`;
    if (level === 'stop') return `Do not shoot it: so light an arrow is close to a dry fire. ${floor}`;
    if (atLimit && !weighed)
      return `${floor} The weight is estimated, and at its heaviest this is ${text(check.atHeaviest)}. Weigh the bow at full draw.`;
    if (atLimit) return `${floor} A scale may be out by more than lies between. Ask the bow maker.`;
    return level === 'caution' ? `${floor} Ask the bow maker.` : floor;
  };
  return {
    id: 'arrowMass',
    level: level === 'in range' ? 'ok' : level,
    title: title[level],
    detail: `${detail()}${by}`,
    rule: ruleOf(check.value, least === null ? null : (limit ?? least.caution), null, 'massPerWeight', units, false),
    short: { figure: text(check.value), word: 'mass' },
    why: {
      title: 'Is the arrow heavy enough?',
      text: 'An arrow too light for the bow leaves too much of the energy in the limbs and string, like a loose without an arrow. The bow maker\u2019s least governs; without it the floors of common practice by kind of bow.',
      equation: 'q = m / F',
      symbols: [
        {
          symbol: 'm',
          name: `${which.toLowerCase()}, ${massFrom === 'parts' ? 'sum of its parts' : number === null ? 'weighed' : 'the lightest that is shot'}`,
          value: textQuantity(mass, 'mass', units),
        },
        {
          symbol: 'F',
          name: weightNames[weight.value.from],
          value: textQuantity(weight.value.value, 'weight', units),
        },
        { symbol: 'q', name: 'mass per weight', value: text(check.value) },
        { symbol: '', name: 'at the heaviest the weight may be', value: text(check.atHeaviest) },
        ...(least === null
          ? []
          : [
              {
                symbol: '',
                name: least.from === 'maker' ? 'bow maker\u2019s least' : `least, ${sourceWords(least.from)}`,
                value: text(least.stop),
              },
            ]),
      ],
      source: least === null || least.from === 'maker' ? 'the bow maker\u2019s figures, as entered' : least.from,
    },
    action:
      level === 'in range'
        ? null
        : least === null
          ? goTo('Enter', 'bow', 'bow.leastMassPerWeight')
          : (atLimit && !weighed) || doubted || overTable
            ? goTo('Weigh', 'bow', 'settings.weightOnFingers')
            : goTo('Arrow', 'arrow', number === null ? 'arrowSet.weighed' : 'arrowSet.arrows'),
  };
}

const capitalMark = (mark: string): string =>
  mark === 'from memory' ? 'Floor, not checked against a source' : 'Floor of common practice';
