import { capital } from '../findings/parts.ts';
import type { Shift } from '../group/index.ts';
import type { Hand } from '../model/archer.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { Problem } from '../model/problem.ts';
import type { Reading } from './reading.ts';
import { acrossText, chanceSentence, countText, mainParts, sideOf, whereWords } from './words.ts';

/** Headline and line under it. */
export interface Words {
  readonly headline: string;
  readonly subline: string;
}

/** How the two groups are called in a sentence: "Bare shafts land … of fletched". */
interface Names {
  readonly moved: string;
  readonly verb: 'land' | 'lands';
  readonly from: string;
  /** How sure the circle about the shift is; 19 times in 20 when left out. */
  readonly sure?: string;
}

export const bareNames: Names = { moved: 'Bare shafts', verb: 'land', from: 'fletched' };

/**
 * The finding about a shift, as a headline with its number, and how sure it is.
 *
 * @equation real: the parts that are real, "and that is real"; cannot tell: "and that may be chance"; no sign: the largest shift that may be there
 * @param shift - the shift [record]
 * @param names - how the groups are called [record]
 * @param units - the person's choice of units [record]
 * @returns headline, and the sentence on chance [record]
 * @validity any shift of shiftOfGroups
 * @source own derivation
 * @example verdictWords(shiftOfGroups(exampleFletched.shots, exampleBare.shots, {}).value, bareNames, defaultPreferences.units).headline // "Bare shafts land 43 mm right of fletched, and that is real"
 */
export function verdictWords(shift: Shift, names: Names, units: UnitChoice): Words {
  const { dx, dy, verdict, axisReal, largest, radius, size, p, more } = shift;
  const { moved, verb, from, sure = '19 times in 20' } = names;
  if (verdict === 'no sign')
    return {
      headline: `No sign that ${lower(moved)} ${verb} more than ${acrossText(largest, units)} from ${from}`,
      subline: `The centres lie ${acrossText(size, units)} apart; a circle of ${acrossText(radius, units)} about that holds the true shift ${sure}.`,
    };
  const parts = verdict === 'real' && (axisReal.x || axisReal.y) ? axisReal : mainParts(dx, dy);
  const where = whereWords(dx, dy, parts, from, units);
  if (verdict === 'real') return { headline: `${moved} ${verb} ${where}, and that is real`, subline: chanceSentence(p) };
  return {
    headline: `${moved} ${verb} ${where}, and that may be chance`,
    subline: `${chanceSentence(p)}${more === null ? '' : ` To tell, shoot about ${countText(more)} more of each.`}`,
  };
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/**
 * Headline and line under it for a bare group beside a fletched one.
 *
 * @equation the verdict; then how each axis reads for this hand, or that no difference is shown
 * @param shift - the shift; null gives no words [record]
 * @param hand - the archer's hand [choice]
 * @param reading - lateral and vertical [record]
 * @param units - the person's choice of units [record]
 * @returns headline and line under it [record]
 * @validity groups that can be read
 * @source common practice
 * @example shiftWords(shiftOfGroups(exampleFletched.shots, exampleBare.shots, {}).value, 'right', { lateral: 'weak', vertical: null }, defaultPreferences.units).subline // "Chance alone would do that once in 1,900 tries. Right-handed, right reads weak. Height: no difference shown."
 */
export function shiftWords(
  shift: Shift | null,
  hand: Hand,
  reading: Pick<Reading, 'lateral' | 'vertical'>,
  units: UnitChoice,
): Words {
  if (shift === null) return { headline: 'No reading yet', subline: '' };
  const { headline, subline } = verdictWords(shift, bareNames, units);
  if (shift.verdict !== 'real') return { headline, subline };
  const { lateral, vertical } = reading;
  const side = lateral === null ? null : `${capital(hand)}-handed, ${sideOf(shift.dx)} reads ${lateral}.`;
  const height =
    vertical === null
      ? null
      : vertical === 'nocking point high'
        ? 'Lower reads nocking point high.'
        : 'Higher reads nocking point low, or the shaft bounces off the rest.';
  if (side === null && height === null) return { headline, subline: `${subline} Neither side nor height is shown by itself.` };
  const first = height !== null && side !== null ? 'Height comes first.' : null;
  const parts = [subline, side ?? 'Side: no difference shown.', height ?? 'Height: no difference shown.', first];
  return { headline, subline: parts.filter((part) => part !== null).join(' ') };
}

/**
 * Headline and line under it when the bare group scatters far wider than the fletched one.
 *
 * @equation how many times as wide, and at least how many
 * @param times - ratio of the spreads [-]
 * @param least - lower end of its 95 % interval [-]
 * @returns headline and line under it [record]
 * @validity ratios above 1
 * @source common practice
 * @example erraticWords(3.42, 1.83).headline // "Bare shafts scatter 3.4 times as wide as fletched"
 */
export function erraticWords(times: number, least: number): Words {
  return {
    headline: `Bare shafts scatter ${times.toFixed(1)} times as wide as fletched`,
    subline: `At least ${least.toFixed(1)} times as wide, 39 times in 40. That is release or clearance, and no setting is read from it.`,
  };
}

/**
 * Headline and line under it when two groups give no reading.
 *
 * @equation "No reading" and the reason; a compound keeps its distance
 * @param problem - why there is no reading [record]
 * @param shift - the shift, for a compound [record]
 * @param units - the person's choice of units [record]
 * @returns headline and line under it [record]
 * @validity the problems of readBareShaft
 * @source own derivation
 * @example voidWords({ code: 'distance', sentence: 'One distance was expected.' }, null, defaultPreferences.units).subline // "One distance was expected."
 */
export function voidWords(problem: Problem, shift: Shift | null, units: UnitChoice): Words {
  if (shift !== null) {
    const { headline, subline } = verdictWords(shift, bareNames, units);
    return { headline, subline: `${subline} ${problem.sentence}` };
  }
  return { headline: voidHeadlines[problem.code] ?? 'No reading', subline: problem.sentence };
}

const voidHeadlines: Readonly<Record<string, string>> = {
  fletching: 'No reading: choose one fletched and one bare group',
  distance: 'No reading: two distances',
  form: 'No reading: two forms',
  setup: 'No reading: two set-ups',
  hand: 'No reading: bow and archer of different hands',
  'no-shots': 'No reading yet: no shots',
  'one-shot': 'No reading yet: one shot',
  'one-hole': 'No reading: all in one hole',
  'bad-position': 'No reading: a shot off the face',
};
