import type { UnitChoice } from '../../model/preferences.ts';
import type { Trial, TrialKind, TrialPlan } from '../../model/trial.ts';
import { showQuantity, textQuantity, unitOf } from '../../units/index.ts';
import { braceStepSize } from './plan.ts';

interface Procedure {
  readonly title: string;
  readonly purpose: string;
  readonly steps: readonly string[];
}

/**
 * What a trial is called, what it is for, and how it is shot, step by step.
 *
 * @equation by kind, with the figures of the plan in it
 * @param trial - the trial, for its plan and the change on trial [record]
 * @param units - the person's choice of units [record]
 * @returns title, purpose and numbered steps [record]
 * @validity every trial
 * @source common practice
 * @example procedureOf(exampleTrialInput.trial, defaultPreferences.units).title // "Bare shaft"
 */
export function procedureOf(trial: Pick<Trial, 'trial' | 'plan' | 'between'>, units: UnitChoice): Procedure {
  return procedures[trial.trial](trial.plan, units, trial.between);
}

const list = (plan: TrialPlan, units: UnitChoice): string => {
  const texts = plan.distances.map((distance) => textQuantity(distance, 'distance', units));
  return texts.length < 2 ? (texts[0] ?? '') : `${texts.slice(0, -1).join(', ')} and ${texts.at(-1) ?? ''}`;
};
const arrows = (count: number, kind: string): string => `${count} ${kind === '' ? (count === 1 ? 'arrow' : 'arrows') : kind}`;
const ends = (count: number): string => (count === 1 ? 'One end' : `${count} ends`);

/** Three to six twists to a step, as the trade counts them: half a millimetre to one for each. */
const twistsText = (units: UnitChoice): string => {
  const [one, two] = [0.0005, 0.002].map((si) => showQuantity(si, 'length', units, { digits: 2 }).figure);
  return `${textQuantity(braceStepSize(units), 'length', units)} takes about 3 to 6 twists; one or two move it ${one} to ${two} ${unitOf('length', units)}.`;
};

const SAME = 'Straight arrows of one build, warm, no wind, one form throughout; note weather, light and kit with the groups.';
const MARK = 'Mark every hole where it struck, whatever it looks like; a shot is left out only with a reason on record.';

const procedures: Readonly<Record<TrialKind, (plan: TrialPlan, units: UnitChoice, between: string) => Procedure>> = {
  'bare shaft': (plan, units) => ({
    title: 'Bare shaft',
    purpose:
      'Where bare shafts strike beside fletched ones tells the height of the nocking point, and whether the shaft acts stiff or weak.',
    steps: [
      `${SAME} Tape the bare shafts to the mass of the fletching.`,
      `At ${list(plan, units)}, nearest first, aim every arrow at one mark.`,
      `${ends(plan.ends)} at each distance, ${arrows(plan.arrows, 'fletched')} and ${arrows(plan.others, 'bare')} in each, in turn: fletched first in one end, bare first in the next.`,
      `${MARK} Read where they struck, not how they stand in the butt.`,
    ],
  }),
  'paper tear': (plan, units) => ({
    title: 'Paper tear',
    purpose: 'The tear in a sheet of paper shows the height of the nocking point, and gross errors to the side.',
    steps: [
      'Stretch the paper square to the shot at arrow height, with the butt a good way behind it.',
      `Shoot ${arrows(plan.arrows, plan.others > 0 ? 'fletched' : '')}${plan.others > 0 ? ` and ${arrows(plan.others, 'bare')}` : ''} from ${list(plan, units)}, the bow level with the hole it will make.`,
      'Measure each tear from the hole of the point to that of the nock: how far up, and how far to the right. Change the paper often.',
    ],
  }),
  'walk-back': (plan, units) => ({
    title: 'Walk-back',
    purpose: 'One mark and one sight setting at several distances show whether the arrows leave along the line of sight.',
    steps: [
      'Calm air. Hang a plumb line through the mark high on a tall butt; set the sight for the nearest distance, with which arrows drop as you walk back, and leave it.',
      `Shoot ${arrows(plan.arrows * plan.ends, '')} at the mark from each of ${list(plan, units)}, the bow upright.`,
      'Nearest first, and for further ends back again. Stop as soon as arrows strike near the foot or an edge of the butt, and read the distances that were shot.',
      'Mark how far right or left of the plumb line each arrow struck; the height does not count.',
    ],
  }),
  'brace height': (plan, units) => ({
    title: 'Brace height',
    purpose: 'Groups and arrow speed at several brace heights show whether one of them is better than the others, or none.',
    steps: [
      `From the lowest of ${plan.steps.length} heights to the highest, then back down for the further ends. ${twistsText(units)}`,
      'At each height measure it, bring the nocking point back to where it was, and shoot one arrow that is not noted, to settle the string.',
      `${ends(plan.ends)} of ${arrows(plan.arrows, '')} at ${list(plan, units)} at each height, with the arrow\u2019s speed where a chronograph stands.`,
      'Listen too: the quietest height with the least shock in the hand is worth as much as a group.',
    ],
  }),
  'nocking point': (plan, units) => ({
    title: 'Nocking point',
    purpose:
      plan.others > 0
        ? 'Bare and fletched arrows at several nocking points show the one at which they strike level.'
        : 'A row of arrows at several nocking points shows the one at which the row lies flattest.',
    steps: [
      SAME,
      plan.others > 0
        ? `At each of ${plan.steps.length} nocking points, at ${list(plan, units)}: ${ends(plan.ends).toLowerCase()} of ${arrows(plan.arrows, 'fletched')} and ${arrows(plan.others, 'bare')} in turn, at one mark.`
        : `At each of ${plan.steps.length} nocking points, at ${list(plan, units)}: ${ends(plan.ends).toLowerCase()} of ${arrows(plan.arrows, '')} along the top edge of a face, aimed at the edge.`,
      'Go through the places upward, and for further ends downward again. Mark where the nocking point was before it is moved.',
      MARK,
    ],
  }),
  clearance: (plan) => ({
    title: 'Clearance',
    purpose: 'Powder on the arrow and the bow shows whether the arrow touches anything on its way out.',
    steps: [
      'Dry spray powder on the fletching end of the arrow and on what it passes: window, and rest and button or shelf.',
      `${arrows(plan.arrows * plan.ends, plan.arrows * plan.ends === 1 ? 'fletched arrow' : 'fletched arrows')}, a helper loading so that no false marks are made; powder anew before each.`,
      'After each shot tick what has a mark on it. An even trace where the shaft slides over what carries it is no mark.',
      'If the fletching touches, turn the nock by a thirty-second of a turn and shoot the same again.',
    ],
  }),
  'a against b': (plan, units, between) => ({
    title: 'A against B',
    purpose: `Groups of ${between.trim() === '' ? 'one thing and the other' : quoted(between)}, shot in turn, show whether the change moves the group or makes it tighter.`,
    steps: [
      'A is how it stands now, B is with the change. Change that one thing and nothing else.',
      `${ends(plan.ends)} of each at ${list(plan, units)}, ${arrows(plan.arrows, '')} of A and ${plan.others} of B: A B, B A, A B, so that neither gets the fresher arm.`,
      MARK,
    ],
  }),
};

/** In the archer's own words, without the stop that would end the sentence early. */
const quoted = (text: string): string =>
  `"${text
    .trim()
    .replace(/[.\s]+$/, '')
    .replace(/\s+/g, ' ')}"`;
