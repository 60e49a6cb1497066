import { readWords, type FittedMarks, type JudgedMark, type MarksPicture } from '../aim/index.ts';
import type { Band } from '../model/band.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { countWord, together } from '../model/sentence.ts';
import { sources } from '../sources.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding, FindingAction, FindingRule } from './finding.ts';
import { capital, goTo, ruleOf, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

const next = (label: string): FindingAction => goTo(label, 'aim', 'marks.next.distance');
const far = (distance: number, units: UnitChoice): string => textQuantity(distance, 'distance', units);

const how =
  'Speed, height of the eye, drag, distance from the eye to the pin and the zero of the scale are fitted to the marks, with what bow and arrow let be held of them beforehand. Each mark is then held against what the others let be expected of it. One is blamed only where no other, left out, would put the rest as right.';

/** The mark against what the others expect, told as finely as the sentence tells it. */
function ruleFor(reading: number, { low, high }: Band, unit: number, units: UnitChoice): FindingRule {
  const rule = ruleOf(reading, low, high, 'reading', units, false);
  return { ...rule, lowText: readWords(low, unit), highText: readWords(high, unit) };
}

function countOf({ judged }: FittedMarks): readonly JudgedMark[] {
  return judged.filter(({ leftOut = false }) => !leftOut);
}

/** The mark that lies farthest from where the others expect it, in parts of its interval. */
function worstOf(
  judged: readonly JudgedMark[],
): (JudgedMark & { readonly expected: NonNullable<JudgedMark['expected']> }) | null {
  const held = judged.flatMap((mark) => (mark.expected === null ? [] : [{ ...mark, expected: mark.expected }]));
  return held.reduce<(typeof held)[number] | null>((worst, mark) => (worst === null || mark.p < worst.p ? mark : worst), null);
}

const refusals: Readonly<Record<string, string>> = {
  'off-bar': 'A mark lies off the bar of the sight',
  'wrong-order': 'The marks stand in the wrong order',
  contradictory: 'The marks contradict one another',
  'another-scale': 'The sight has another scale since the marks were shot in',
  'no-marks': 'Every sight mark is left out',
};

/**
 * Why sight marks fit no flight, as a headline.
 *
 * @equation a sentence for each refusal that names what was typed; for all others that no flight passes the marks
 * @param code - of the refusal of fitMarks or changeSince [text]
 * @returns the headline [text]
 * @validity any code
 * @source own derivation
 * @example marksRefused('wrong-order') // "The marks stand in the wrong order"
 */
export function marksRefused(code: string): string {
  return refusals[code] ?? 'No flight of this bow passes these marks';
}

/** Marks scatter by less than so many times what is usual now and then: from memory. */
const TORN = 2.5;

/** "scatter 1.8 times as wide as usual", of marks that each fit; null where they scatter as marks do. */
function scattered({ notes, wider }: FittedMarks): string | null {
  return notes.some(({ code }) => code === 'wider') ? `scatter ${wider.toFixed(1)} times as wide as usual` : null;
}

/**
 * Whether the sight marks of a set-up agree with one another.
 *
 * @equation as fitMarks: a caution for a mark that does not fit, or for several of which one does not; in range where each lies in the 95 % of the others
 * @param picture - from marksPicture [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null where the marks are no longer proven, which unprovenFinding tells [record]
 * @validity as fitMarks; with one mark it cannot be told
 * @source marquardt-1963; own derivation
 * @example sightMarksFinding(marksPicture(exampleBundle, [], null), defaultPreferences.units).level // "waiting"
 */
export function sightMarksFinding(picture: MarksPicture, units: UnitChoice): Finding | null {
  const { fit, from, scale } = picture;
  if (fit === null)
    return waitingFor(
      'sightMarks',
      'No sight mark yet',
      'Two, one near and one far, tell all the others.',
      'marks',
      'aim',
      'marks.next.distance',
    );
  if (from === 'moved') return null;
  const base = { id: 'sightMarks', rule: null } as const;
  const allOut = !fit.ok && fit.problem.code === 'no-marks';
  if (!fit.ok)
    return {
      ...base,
      level: allOut ? 'unknown' : 'caution',
      title: marksRefused(fit.problem.code),
      detail: allOut ? 'Count one again, or shoot in another.' : fit.problem.sentence,
      short: { figure: String(picture.of.length), word: 'marks' },
      why: whyRule('Sight marks', how, [], sources['marquardt-1963']),
      action: next('Look'),
    };
  const counted = countOf(fit.value);
  const names = (marks: readonly JudgedMark[]) => together(marks.map(({ distance }) => far(distance, units)));
  const short = { figure: String(counted.length), word: counted.length === 1 ? 'mark' : 'marks' };
  const why = whyRule(
    'Sight marks',
    how,
    counted.map((mark): [string, string, string] => ['', far(mark.distance, units), readWords(mark.reading, scale.unit)]),
    sources['marquardt-1963'],
  );
  const misfits = counted.filter(({ verdict }) => verdict === 'does not fit');
  const unclear = counted.filter(({ verdict }) => verdict === 'one of these');
  const [misfit] = misfits;
  if (misfit !== undefined && misfit.expected !== null) {
    const { reading, expected } = misfit;
    return {
      ...base,
      level: 'caution',
      title: `The mark for ${names(misfits)} does not fit`,
      detail: `It reads ${readWords(reading, scale.unit)}; the others expect ${readWords(expected.low, scale.unit)} to ${readWords(expected.high, scale.unit)}. Read it again, or shoot it in again.`,
      rule: ruleFor(reading, expected, scale.unit, units),
      short: { ...short, word: 'misfit' },
      why,
      action: next('Look'),
    };
  }
  if (unclear.length > 0)
    return {
      ...base,
      level: 'caution',
      title: `${capital(countWord(unclear.length))} marks do not go together`,
      detail:
        unclear.length === 2
          ? `Of those for ${names(unclear)} neither can be blamed by itself: shoot both in again.`
          : `Of those for ${names(unclear)} none can be blamed by itself: shoot them in again.`,
      short: { ...short, word: 'at odds' },
      why,
      action: next('Look'),
    };
  if (counted.length === 1)
    return {
      ...base,
      level: 'unknown',
      title: `One sight mark, for ${names(counted)}`,
      detail: 'All others rest on the figures of bow and arrow. Shoot in a second, far from it.',
      short,
      why,
      action: next('Add a mark'),
    };
  const worst = worstOf(counted);
  const wide = scattered(fit.value);
  const farthest = worst === null ? '' : `; the one for ${far(worst.distance, units)} is the farthest off`;
  const torn = fit.value.wider >= TORN;
  return {
    ...base,
    level: torn ? 'caution' : 'ok',
    title: wide === null ? `The ${countWord(counted.length)} marks agree` : `The ${countWord(counted.length)} marks ${wide}`,
    detail:
      wide === null
        ? `Each lies where the others expect it${farthest}.`
        : `So every interval is wider by that, and with it each fits${farthest}.`,
    rule: worst === null ? null : ruleFor(worst.reading, worst.expected, scale.unit, units),
    short,
    why,
    action: torn ? next('Look') : null,
  };
}

/**
 * Sight marks that are no longer proven, since something changed that moves the arrows up or down.
 *
 * @equation as markStanding: a figure known then and now and otherwise
 * @param picture - from marksPicture [record]
 * @param units - the person's choice of units [record]
 * @returns the finding: a caution where no proven mark is left; null where all are proven [record]
 * @validity what nobody noted then is not known to have changed
 * @source common practice
 * @example unprovenFinding(marksPicture(exampleBundle, [], null), defaultPreferences.units) // null
 */
export function unprovenFinding({ unproven, from }: MarksPicture, units: UnitChoice): Finding | null {
  const [first] = unproven;
  if (first === undefined) return null;
  const changed = [...new Set(unproven.flatMap(({ changes }) => changes.map(({ name }) => name.toLowerCase())))];
  const listed = changed.length > 3 ? `${changed.slice(0, 3).join(', ')} and ${changed.length - 3} more` : together(changed);
  const marks =
    unproven.length === 1 ? `The mark for ${far(first.mark.distance, units)}` : `${capital(countWord(unproven.length))} marks`;
  const alone = from === 'moved';
  return {
    id: 'unproven',
    level: alone ? 'caution' : 'unknown',
    title: `${marks} no longer proven`,
    detail: `Changed since: ${listed}.${alone ? ' The readings are moved by what that may come to: shoot one in again.' : ' Shoot it in again, or put it away.'}`,
    rule: null,
    short: { figure: String(unproven.length), word: 'unproven' },
    why: whyRule(
      'What a mark holds for',
      'A sight mark holds for one archer, bow, arrow and form. Each keeps a copy of them as they stood when it was shot in. While they are the same it is proven; where one is known to be otherwise, the bench works out how far the mark may have moved and says so. Put back as they were, the mark is proven again.',
      unproven.flatMap(({ mark, changes }) =>
        changes.slice(0, 4).map(({ name, use, then, now }): [string, string, string] => {
          const text = (value: string | number) =>
            typeof value === 'number' && use !== null ? textQuantity(value, use, units) : String(value);
          return ['', `${far(mark.distance, units)}: ${name.toLowerCase()}`, `${text(then)} then, ${text(now)} now`];
        }),
      ),
      'common practice',
    ),
    action: next('Look'),
  };
}

/**
 * The speed that the sight marks ask for, beside the one that the bow gives.
 *
 * @equation v of fitMarks ± 1.96 SD against the band that was held beforehand
 * @param picture - from marksPicture [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null with fewer than two proven marks or without a fit [record]
 * @validity as fitMarks
 * @source marquardt-1963
 * @example marksSpeedFinding(marksPicture(exampleBundle, [], null), defaultPreferences.units) // null
 */
export function marksSpeedFinding({ fit, from }: MarksPicture, units: UnitChoice): Finding | null {
  if (fit?.ok !== true || from !== 'proven' || fit.value.marks.length < 2) return null;
  const { figures, priors } = fit.value;
  const { value, sd } = figures.speed;
  const text = textQuantity(value, 'speed', units);
  const { low, high } = priors.speed;
  const within = low <= value && value <= high;
  const half = textQuantity(1.96 * sd, 'speed', units);
  return {
    id: 'marksSpeed',
    level: within ? 'ok' : 'unknown',
    title: `Speed by the marks ${text}`,
    detail: `Give or take ${half}. The bow’s own figure is ${textQuantity(low, 'speed', units)} to ${textQuantity(high, 'speed', units)}.${within ? '' : ' Check the unit of the sight’s scale, and the speed.'}`,
    rule: ruleOf(value, low, high, 'speed', units, false),
    short: { figure: text, word: 'speed' },
    why: whyRule(
      'Speed by the marks',
      'How the readings grow with the distance tells how fast the arrow leaves, together with its drag.',
      [
        ['v', 'by the marks', `${text}, give or take ${half}`],
        ['', 'held beforehand', `${textQuantity(low, 'speed', units)} to ${textQuantity(high, 'speed', units)}`],
      ],
      sources['marquardt-1963'],
    ),
    action: null,
  };
}
