import type { UnitChoice } from '../../model/preferences.ts';
import { causesOf } from '../causes.ts';
import type { Cause, Reading } from '../reading.ts';
import { acrossText } from '../words.ts';
import { usualTearText } from './disputed.ts';
import { findingCauses } from './findingCauses.ts';
import type { TearEvidence } from './tears.ts';
import type { TrialInput } from './types.ts';

/**
 * The finding of a paper trial in one line.
 *
 * @equation the height where it is plain, else the side where it is gross, else that nothing is shown
 * @param evidence - from tearEvidence [record]
 * @param lateral - what a gross tear reads for this hand [choice]
 * @param units - the person's choice of units [record]
 * @returns the headline [text]
 * @validity as tearEvidence
 * @source common practice
 * @example tearHeadline({ vertical: null }, null, defaultPreferences.units) // "No height shown, and nothing gross to the side"
 */
export function tearHeadline(
  { vertical, up, across }: TearEvidence,
  lateral: 'weak' | 'stiff' | null,
  units: UnitChoice,
): string {
  if (vertical !== null)
    return `The nock tears ${acrossText(up.value, units)} ${vertical === 'nock high' ? 'high' : 'low'}, and that is real`;
  if (lateral !== null)
    return `The nock tears ${acrossText(across.value, units)} to the ${across.value > 0 ? 'right' : 'left'}: a gross error`;
  return 'No height shown, and nothing gross to the side';
}

/**
 * What stands under it: how small a height may hide, and why the side is or is not read.
 *
 * @equation the far end of the height's interval where none is plain; up to 2 in to the side is not read
 * @param evidence - from tearEvidence [record]
 * @param units - the person's choice of units [record]
 * @returns sentences [text]
 * @validity as tearEvidence
 * @source common practice
 * @example tearSubline(tearEvidence([0.02, 0.022, 0.021].map((up) => ({ distance: 2, across: 0, up, fletching: 'fletched' })), exampleBundle.arrowSet), defaultPreferences.units) // "To the side it is 0 mm, which is not read: up to 50 mm can come from a tuned bow."
 */
export function tearSubline({ vertical, gross, across, up, changes }: TearEvidence, units: UnitChoice): string {
  const largest = Math.max(Math.abs(up.low), Math.abs(up.high));
  const height = vertical === null ? `In height the true tear is at most ${acrossText(largest, units)}, 19 times in 20.` : '';
  const side =
    gross === null
      ? `To the side it is ${acrossText(across.value, units)}, which is not read: up to ${usualTearText(units)} can come from a tuned bow.`
      : vertical === null
        ? 'Read as gross only: the paper does not tell stiff or weak from a touch of the bow.'
        : 'To the side it is gross too; height comes first.';
  const differs = changes ? 'The height changes with the distance, so each distance counts as one tear.' : '';
  return [height, side, differs].filter((sentence) => sentence !== '').join(' ');
}

/**
 * What may lie behind a tear, with what speaks for and against it.
 *
 * @equation causesOf; a touch of the bow, first for a gross tear to the weak side; whether bare shafts tear the same way
 * @param input - the trial with its records [record]
 * @param reading - height and side as read [record]
 * @param evidence - from tearEvidence [record]
 * @param beside - the same of the other kind of arrow; null where there is none [record]
 * @returns the causes [list]
 * @validity as tearEvidence
 * @source common practice; from memory
 * @example tearCauses(exampleTrialInput, { height: null, lateral: null }, { changes: false }, null) // []
 */
export function tearCauses(
  input: TrialInput,
  { height, lateral }: { height: Reading['vertical']; lateral: Reading['lateral'] },
  { changes }: TearEvidence,
  beside: TearEvidence | null,
): readonly Cause[] {
  const sides = causesOf(input.bundle, { lateral, vertical: height, erratic: false }, input.units);
  const steady = changes ? [] : ['The height is the same at all distances, so far as these tears show.'];
  const touch: Cause = {
    cause: 'Fletching or shaft touches the bow',
    evidenceFor: changes ? ['The tear changes with the distance.'] : [],
    evidenceAgainst: height === null ? [] : steady,
  };
  const agrees =
    beside === null || height === null
      ? null
      : beside.vertical === null
        ? null
        : (beside.vertical === 'nock high') === (height === 'nocking point high');
  const withBare = sides.map((cause, i): Cause => {
    if (i > 0 || agrees === null) return cause;
    const words = `Bare shafts tear ${agrees ? 'the same way' : 'the other way'}.`;
    return agrees
      ? { ...cause, evidenceFor: [...cause.evidenceFor, words] }
      : { ...cause, evidenceAgainst: [...cause.evidenceAgainst, words] };
  });
  if (height === null && lateral === null) return changes ? [touch] : [];
  const weak = height === null && lateral === 'weak';
  return [
    ...(weak ? [touch] : []),
    ...withBare,
    ...(weak ? [] : [touch]),
    ...(height === null ? [] : findingCauses(input, 'height')),
  ];
}
