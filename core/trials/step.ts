import { whyRule } from '../findings/parts.ts';
import { counted, type ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { NextStep } from './reading.ts';

/** Habit is six fletched and at least a few bare: fewer show only large shifts. */
const FEWEST = { fletched: 6, bare: 4 } as const;

/**
 * One step with everything that it does not say left empty.
 *
 * @equation patch, caution and go null, mark `common practice` unless given; Why repeats the rule with its mark
 * @param kind - what sort of step [choice]
 * @param title - what to do [text]
 * @param text - why, and what it should do: a direction, never an invented size [text]
 * @param rest - then, patch, caution, mark, go and rule where they differ [record]
 * @returns the step [record]
 * @validity any texts
 * @source own derivation
 * @example stepOf('leave', 'Leave it', 'Nothing is shown.', {}).mark // "common practice"
 */
export function stepOf(
  kind: NextStep['kind'],
  title: string,
  text: string,
  rest: Partial<Pick<NextStep, 'then' | 'patch' | 'caution' | 'mark' | 'go'>> & { readonly rule?: string },
): NextStep {
  const { then = '', patch = null, caution = null, mark = 'common practice', go = null, rule = text } = rest;
  return { kind, title, text, then, patch, caution, mark, why: whyRule(title, rule, [], mark), go };
}

/**
 * What to shoot after a change: the same again.
 *
 * @equation as many as before, at least 6 fletched and 4 bare, at the same distance
 * @param fletched - the fletched group [record]
 * @param bare - the bare group [record]
 * @param units - the person's choice of units [record]
 * @returns the sentence [text]
 * @validity any two groups
 * @source common practice
 * @example shootAgain(exampleFletched, exampleBare, defaultPreferences.units) // "Then shoot 6 fletched and 4 bare again at 18 m, in turn."
 */
export function shootAgain(fletched: ShotGroup, bare: ShotGroup, units: UnitChoice): string {
  return `Then shoot ${howMany(fletched, bare)} again at ${textQuantity(fletched.context.distance, 'distance', units)}, in turn.`;
}

/**
 * How many arrows of each to shoot.
 *
 * @equation as many as before, at least 6 fletched and 4 bare
 * @param fletched - the fletched group [record]
 * @param bare - the bare group [record]
 * @returns for instance "6 fletched and 4 bare" [text]
 * @validity any two groups
 * @source common practice
 * @example howMany(exampleFletched, exampleBare) // "6 fletched and 4 bare"
 */
export function howMany(fletched: ShotGroup, bare: ShotGroup): string {
  const least = (group: ShotGroup, fewest: number) => Math.max(counted(group).length, fewest);
  return `${least(fletched, FEWEST.fletched)} fletched and ${least(bare, FEWEST.bare)} bare`;
}

/**
 * A title that goes on a sentence.
 *
 * @equation first letter in lower case; units and abbreviations further on keep their letters
 * @param title - the title [text]
 * @returns the same with its first letter in lower case [text]
 * @validity any title
 * @source own derivation
 * @example lowered('Arrow too light: 6.1 gr/lb') // "arrow too light: 6.1 gr/lb"
 */
export function lowered(title: string): string {
  return title.charAt(0).toLowerCase() + title.slice(1);
}
