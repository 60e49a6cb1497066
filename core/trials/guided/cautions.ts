import type { TrialKind } from '../../model/trial.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';

const always = [
  'Full butt and backstop, nobody ahead of the line, one signal to shoot and one to collect. Your range\u2019s rules govern.',
  'Look over bow, string and every arrow before the first draw; arm guard and tab or glove on.',
];

/**
 * What is to be read and acknowledged before a trial's first arrow.
 *
 * @equation the cautions of every trial, then those of its kind
 * @param kind - which trial [choice]
 * @param bare - whether bare shafts are shot in it [choice]
 * @param units - the person's choice of units [record]
 * @returns sentences [list]
 * @validity every trial; none of them clears anything, the range's own rules and the bow maker govern
 * @source common practice
 * @example trialCautions('clearance', false, defaultPreferences.units).length // 4
 */
export function trialCautions(kind: TrialKind, bare: boolean, units: UnitChoice): readonly string[] {
  const near = textQuantity(10, 'distance', units, { digits: 0 });
  const wide = `Bare shafts fly wide: shoot the first of them at ${near} or nearer, and go farther only while they stay on the butt.`;
  return [...always, ...(bare ? [wide] : []), ...own[kind]];
}

const own: Readonly<Record<TrialKind, readonly string[]>> = {
  'bare shaft': ['Stop when bare shafts begin to miss the middle of the butt, and read what there is.'],
  'paper tear': [
    'The paper stops nothing: a full butt and backstop stand behind it.',
    'Paper and frame stand clear of the arrow\u2019s way to the butt; nobody holds them.',
  ],
  'walk-back': [
    'With the sight set for the nearest distance the arrows strike lower at each farther one: shoot the nearest first, and stop as soon as arrows strike near the foot or an edge of the butt.',
    'Never shoot from a distance that may miss the butt: leave it out of the plan.',
    'Never aim above the target to reach it.',
  ],
  'brace height': [
    'String and unstring as the bow\u2019s maker says; both loops are looked at before the first draw at each height, nobody\u2019s face in line with a limb tip.',
    'Stay inside the bow\u2019s range, and keep the string between 20 and 60 twists.',
  ],
  'nocking point': ['After each move look at the nocking point again: one that slips lets the arrow off the string.'],
  clearance: [
    'Powder is kept out of eyes and lungs; a helper loads the arrow from the side and steps back behind the line before the draw.',
    'Wipe the powder off before the bow is put away.',
  ],
  'a against b': ['After each change look over what was changed before the first draw.'],
};
