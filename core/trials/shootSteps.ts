import type { Shift } from '../group/index.ts';
import { textQuantity } from '../units/index.ts';
import type { Evidence } from './evidence.ts';
import type { NextStep } from './reading.ts';
import { stepOf } from './step.ts';
import { acrossText, countText } from './words.ts';

/** More than a session's arrows: then a tighter group is worth more than more of the same. */
const SESSION = 60;

/**
 * Where and how more arrows are shot.
 *
 * @equation the distance of the fletched group; bare and fletched in turn
 * @param evidence - groups and units [record]
 * @returns the sentence [text]
 * @validity any groups
 * @source common practice
 * @example atDistance({ fletched: exampleFletched, units: defaultPreferences.units }) // "At 18 m, bare and fletched in turn."
 */
export function atDistance({ fletched, units }: Pick<Evidence, 'fletched' | 'units'>): string {
  return `At ${textQuantity(fletched.context.distance, 'distance', units)}, bare and fletched in turn.`;
}

/**
 * The step when no shift that matters is shown.
 *
 * @equation leave it, with the largest shift that may still be there
 * @param shift - the shift [record]
 * @param evidence - units [record]
 * @returns the step [record]
 * @validity verdict `no sign`
 * @source common practice
 * @example leaveStep({ largest: 0.025 }, { units: defaultPreferences.units }).text // "No sign of a shift larger than 25 mm."
 */
export function leaveStep(shift: Pick<Shift, 'largest'>, { units }: Pick<Evidence, 'units'>): NextStep {
  return stepOf('leave', 'Leave it: nothing to change', `No sign of a shift larger than ${acrossText(shift.largest, units)}.`, {
    then: `Take a snapshot. Able archers repeat it at ${textQuantity(30, 'distance', units, { digits: 0 })}.`,
  });
}

/**
 * The step when more arrows must say.
 *
 * @equation cannot tell: the count from the shift; real without a side or height of its own: as many again
 * @param shift - the shift [record]
 * @param evidence - groups and units [record]
 * @returns the step [record]
 * @validity 80 % power for the shift seen or for what matters, whichever is larger
 * @source own derivation
 * @example shootMoreStep({ verdict: 'cannot tell', more: 9, n: [6, 4], size: 0.02, matters: 0.03 }, { fletched: exampleFletched, units: defaultPreferences.units }).title // "Shoot about 9 more of each"
 */
export function shootMoreStep(
  shift: Pick<Shift, 'verdict' | 'more' | 'n' | 'size' | 'matters'>,
  evidence: Pick<Evidence, 'fletched' | 'units'>,
): NextStep {
  const then = atDistance(evidence);
  if (shift.verdict === 'real' || shift.more === null)
    return stepOf(
      'shoot',
      `Shoot about ${countText(Math.max(...shift.n))} more of each`,
      'The shift is real, but neither its side nor its height is shown by itself. Nothing is turned before it.',
      { then, mark: 'own derivation' },
    );
  const sought = acrossText(Math.max(shift.size, shift.matters), evidence.units);
  return stepOf(
    'shoot',
    `Shoot about ${countText(shift.more)} more of each`,
    shift.more > SESSION
      ? `To tell a shift of ${sought} takes more than a session: tighter groups would tell it sooner.`
      : `Then a shift of ${sought} would be found four times in five. Nothing is turned before it.`,
    {
      then,
      mark: 'own derivation',
      rule: 'So many more of each that, with the scatter seen so far, a shift of this size would be called real four times in five.',
    },
  );
}

/**
 * Whether common practice accepts what the bare shafts show.
 *
 * @equation inside the fletched group (no farther from its centre than its farthest arrow) at 18 to 20 m; within 10 cm at 30 m
 * @param shift - the shift [record]
 * @param evidence - fletched group with its farthest arrow, and units [record]
 * @returns the sentence that leaves it to the archer; null when it is not accepted or the distance has no rule [text]
 * @validity the archer's choice: some leave bare shafts slightly stiff, some slightly weak and low
 * @source from memory
 * @example acceptedWords({ size: 0.05 }, { fletched: exampleFletched, fletchedFarthest: 0.03, units: defaultPreferences.units }) // null
 */
export function acceptedWords(
  shift: Pick<Shift, 'size'>,
  evidence: Pick<Evidence, 'fletched' | 'fletchedFarthest' | 'units'>,
): string | null {
  const { fletched, fletchedFarthest, units } = evidence;
  const { distance } = fletched.context;
  const at = textQuantity(distance, 'distance', units);
  if (distance > 17.5 && distance < 20.5 && fletchedFarthest !== null && shift.size <= fletchedFarthest)
    return `The bare shafts lie inside the fletched group at ${at}, which many accept (not checked against a source): leaving it is the archer\u2019s choice.`;
  if (distance > 27 && distance < 31 && shift.size <= 0.1)
    return `The bare shafts lie within ${acrossText(0.1, units)} at ${at}, which many accept (not checked against a source): leaving it is the archer\u2019s choice.`;
  return null;
}
