import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { BOLTS_APART, boltsCheck } from '../safety/index.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { goTo, ruleOf, whyRule } from './parts.ts';

/**
 * The limb bolts against the maker's most turns, and against each other.
 *
 * @equation as boltsCheck of the safety room
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null while no bolt was counted [record]
 * @validity bows with limb bolts
 * @source common practice
 * @example boltsFinding(exampleBundle, defaultPreferences.units) // null
 */
export function boltsFinding({ bow, setup }: Bundle, units: UnitChoice): Finding | null {
  const { level, farthest, apart } = boltsCheck(bow, setup.settings);
  if (farthest === null) return null;
  const { bolt, turns } = farthest;
  const text = (figure: number) => textQuantity(figure, 'turns', units);
  const most = bow.mostBoltTurns;
  const which = apart === 0 ? 'Limb bolts' : `${bolt === 'upper' ? 'Upper' : 'Lower'} limb bolt`;
  const out = `${which} ${text(turns)} out`;
  const words = {
    stop: [`${out}, past the maker\u2019s most`, 'Turn it in before anything is shot: a limb can leave its pocket.'],
    caution: [
      `Limb bolts ${text(apart ?? 0)} apart`,
      `More than ${text(BOLTS_APART)} between them: count both from fully in. The tiller says which to turn.`,
    ],
    unknown: [`${out}: most not on record`, 'Enter the most turns that the bow\u2019s maker allows.'],
    'in range': [out, `The bow maker\u2019s most is ${text(most ?? 0)}.`],
  } as const;
  const [title, detail] = words[level];
  const between = level === 'caution';
  return {
    id: 'bolts',
    level: level === 'in range' ? 'ok' : level,
    title,
    detail,
    rule: between
      ? ruleOf(apart ?? 0, null, BOLTS_APART, 'turns', units, false)
      : most === null
        ? null
        : ruleOf(turns, null, most, 'turns', units, false),
    short: { figure: text(between ? (apart ?? 0) : turns), word: 'bolts' },
    why: whyRule(
      'Limb bolts',
      'Turns out from fully in. A bolt that is out too far holds too little thread, and the limb can leave its pocket: the bow maker\u2019s most governs. The two are turned alike but for the tiller; more than a turn between them (not checked against a source) is counted again.',
      [
        ['', 'upper bolt', setup.settings.upperBolt === null ? 'not counted' : text(setup.settings.upperBolt)],
        ['', 'lower bolt', setup.settings.lowerBolt === null ? 'not counted' : text(setup.settings.lowerBolt)],
        ['', 'maker\u2019s most', most === null ? 'not on record' : text(most)],
      ],
      between ? 'from memory' : 'the bow maker\u2019s figures, as entered',
    ),
    action:
      level === 'in range'
        ? null
        : level === 'unknown'
          ? goTo('Enter', 'bow', 'bow.mostBoltTurns')
          : goTo('Fix', 'bow', bolt === 'upper' ? 'settings.upperBolt' : 'settings.lowerBolt'),
  };
}
