import { braceStanding } from '../findings/braceHeight.ts';
import { capital, goTo, rangeText } from '../findings/parts.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import { stepOf as arrowKeyStep } from '../units/step.ts';
import type { NextStep } from './reading.ts';
import { stepOf } from './step.ts';

/** Past this a string that suits is the remedy, not twists: 3 mm take 3 to 6 of them, and a string carries 20 to 60 [m]. */
const MOST_BY_TWISTS = 0.015;

/**
 * The brace height to go to: the nearest figure inside the range that a tape shows.
 *
 * @equation the end that was passed, rounded into the range to 1/8 in or 1 mm
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the height; null when it is in range, not measured, or has no range [m]
 * @validity as braceStanding
 * @source common practice
 * @example braceTarget({ ...exampleBundle, bow: { ...exampleBundle.bow, braceLow: 0.2286, braceHigh: 0.254 } }, defaultPreferences.units) // 0.2286
 */
export function braceTarget(bundle: Bundle, units: UnitChoice): number | null {
  const { range, verdict } = braceStanding(bundle);
  if (range === null || (verdict !== 'low' && verdict !== 'high')) return null;
  const step = units.length === 'cm' ? 0.001 : arrowKeyStep('length', units);
  const steps = verdict === 'low' ? Math.ceil(range.low / step - 1e-6) : Math.floor(range.high / step + 1e-6);
  return Math.min(range.high, Math.max(range.low, steps * step));
}

/**
 * The gate before every other change: the brace height is measured, and mended when it is out of its range.
 *
 * @equation not measured: measure; low: more twists, to the low end of the range; high: fewer, to its high end; a compound's: a technician
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after it [text]
 * @returns the step; null when the brace height stands in its way no longer [record]
 * @validity as braceStanding
 * @source common practice
 * @example braceStep(exampleBundle, defaultPreferences.units, '') // null
 */
export function braceStep(bundle: Bundle, units: UnitChoice, then: string): NextStep | null {
  const { value, range, verdict, level } = braceStanding(bundle);
  const text = (si: number) => textQuantity(si, 'length', units);
  if (range === null || verdict === 'in range' || verdict === 'no range') return null;
  const ends = rangeText(range.low, range.high, 'length', units, false);
  const whose = range.from === 'maker' ? 'the maker\u2019s range' : `the range for ${range.bows}`;
  const target = braceTarget(bundle, units);
  if (value === null || target === null)
    return stepOf('measure', 'Measure the brace height first', `It comes before every other change; ${whose} is ${ends}.`, {
      then: 'String to the low point of the grip, square to the string.',
      go: goTo('Go to brace height', 'bow', 'settings.braceHeight'),
      rule: ORDER,
    });
  if (bundle.bow.bowKind === 'compound')
    return stepOf(
      'stop',
      `Have the brace height set: it is ${text(value)}, ${verdict}`,
      `${capital(whose)} is ${ends}. A compound\u2019s hangs on its cams and cables: a technician sets it on a press, within the maker\u2019s figures.`,
      { rule: 'Outside the maker\u2019s range nothing is shot until it is mended.' },
    );
  const low = verdict === 'low';
  const move = Math.abs(target - value);
  const by = `${Math.round(move * 1000)} to ${Math.round(move * 2000)}`;
  const how =
    move > MOST_BY_TWISTS
      ? `That is more than twists should do: fit a ${low ? 'shorter' : 'longer'} string.`
      : `About ${by} ${low ? 'more twists raise' : 'fewer twists lower'} it by ${textQuantity(move, 'setting', units)} (common practice).`;
  return stepOf(
    'change',
    `${low ? 'Raise' : 'Lower'} the brace height to ${text(target)}`,
    `It is ${text(value)}; ${whose} is ${ends}. ${how} Nothing else is turned before it.`,
    {
      then: `Measure the nocking point again: it moves with the brace height. ${then}`.trim(),
      patch: { braceHeight: target },
      caution: `${level === 'stop' ? 'Outside the maker\u2019s range: shoot nothing until it is mended. ' : ''}Look at both loops before the first draw. Keep the string between 20 and 60 twists.`,
      rule: ORDER,
    },
  );
}

const ORDER =
  'The order of the trade: limb alignment, brace height, tiller, nock fit, nocking point, centre shot, clearance, button, arrow. Brace height moves the nocking point, and sources disagree on which way it moves the reading, so a button turned before it may have to be turned again. 3 mm take about 3 to 6 twists; a string carries 20 to 60 of them (French federation, coaching notes).';
