import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { abilityCheck, holdTimes, type AbilityCheck } from '../safety/index.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { knownOf, type Known } from './known.ts';
import { goTo, rangeText, ruleOf, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

const PAIN = 'Any pain: stop and refer.';
const UNNOTED = 'Experience is not noted: judged as a learner.';
const TRY = `Hold full draw with an arrow nocked, at the butt, close in: ${holdTimes.control} s without a tremor.`;

/**
 * The draw weight against what this archer is known to control.
 *
 * @equation as abilityCheck of the safety room
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @param known - what several checks rest on [record]
 * @returns the finding; null for a compound and while the weight is not known [record]
 * @validity as abilityCheck; it clears nobody
 * @source common practice
 * @example abilityFinding(exampleBundle, defaultPreferences.units).level // "waiting"
 */
export function abilityFinding(bundle: Bundle, units: UnitChoice, known: Known = knownOf(bundle, units)): Finding | null {
  const { archer, bow } = bundle;
  const weight = known.weight();
  if (bow.bowKind === 'compound' || !weight.ok) return null;
  const check = abilityCheck(archer, weight.value.value);
  const text = (si: number) => textQuantity(si, 'weight', units);
  const pounds = text(weight.value.value);
  const unnoted = archer.experience === null;
  if (check.rule === 'experience not known')
    return waitingFor(
      'ability',
      `${pounds}: experience not noted`,
      `A learner\u2019s usual starting weights go by age: note whether this archer is a learner. ${PAIN}`,
      'hold',
      'bow',
      'archer.experience',
    );
  if (check.rule === 'age not known')
    return waitingFor(
      'ability',
      `${pounds} for a learner: age not noted`,
      `The usual starting weights go by age. ${PAIN}`,
      'hold',
      'bow',
      'archer.ageGroup',
    );
  if (check.rule === 'hold not known')
    return waitingFor('ability', `Whether ${pounds} can be held: not tried`, `${TRY} ${PAIN}`, 'hold', 'bow', 'archer.holdTime');
  const held = archer.holdTime === null ? 'not tried' : `${Math.floor(archer.holdTime)} s`;
  const above = check.rule === 'above the usual start';
  const start = startText(check, units);
  return {
    id: 'ability',
    level: check.level === 'in range' ? 'ok' : 'caution',
    title: above
      ? `${pounds} ${unnoted ? 'and experience not noted' : 'for a learner'}: above the usual start`
      : check.level === 'in range'
        ? `${pounds} held ${held}`
        : `Full draw held ${held}: over-bowed?`,
    detail: above
      ? `${unnoted ? `${UNNOTED} ` : ''}${start} A lighter bow, or a coach\u2019s word. ${PAIN}`
      : check.level === 'in range'
        ? `${holdTimes.control} s without a tremor shows control of this bow and no more. ${PAIN}`
        : `${holdTimes.control} s without a tremor is the least that shows control: a lighter bow. ${PAIN}`,
    rule: above
      ? ruleOf(weight.value.value, check.start?.low ?? null, check.start?.high ?? null, 'weight', units, false)
      : ruleOf(archer.holdTime ?? 0, holdTimes.control, null, 'time', units, false),
    short: above ? { figure: pounds, word: 'start' } : { figure: held, word: 'held' },
    why: whyRule(
      'Can the archer hold this bow?',
      `Starting weights and holding tests are common practice, and authorities disagree: they are shown as ranges. ${holdTimes.control} s at full draw without a tremor shows control of a bow; ${holdTimes.mayGoUp} s, with other strength tests, is asked for before 2 to 3 lb more. Leaning back, a raised bow shoulder, a short or creeping draw, shaking within seconds: over-bowed, whatever the figures say. A coach looks at the archer. ${PAIN}`,
      [
        ['F', 'weight on the fingers', pounds],
        ['', 'full draw held', held],
        ...(check.start === null ? [] : [['', `usual start, ${archer.ageGroup ?? '17 or over'}`, start] as const]),
      ],
      'common practice',
    ),
    action:
      check.level === 'in range'
        ? null
        : above
          ? unnoted
            ? goTo('Note', 'bow', 'archer.experience')
            : goTo('Weigh', 'bow', 'settings.weightOnFingers')
          : goTo('Hold again', 'bow', 'archer.holdTime'),
  };
}

function startText({ start }: AbilityCheck, units: UnitChoice): string {
  if (start === null) return '';
  const others = start.othersTo === null ? '' : `; other clubs go to ${textQuantity(start.othersTo, 'weight', units)}`;
  return `Usual ${rangeText(start.low, start.high, 'weight', units, false)}${others}.`;
}
