import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { HAIR, goTo, rangeText, ruleOf, standing, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/** Where a nocking point commonly starts; no upper end for string walkers, who go higher with their crawl. */
export interface NockingPractice {
  readonly low: number;
  readonly high: number | null;
  readonly who: string;
}

/**
 * The height of nocking point at which common practice starts.
 *
 * @equation string walking 10–15 mm and more; off the hand or shelf 10–16 mm; from a rest 3–10 mm; bottom of the arrow above square
 * @param bundle - the set-up with its records [record]
 * @returns the range; null for a compound [m]
 * @validity a place to start: the bare shaft decides
 * @source common practice
 * @example nockingPractice(exampleBundle).low // 0.003
 */
export function nockingPractice(bundle: Bundle): NockingPractice | null {
  const { bow, setup } = bundle;
  if (bow.bowKind === 'compound') return null;
  if (setup.form.hook === 'string walk') return { low: 0.01, high: null, who: 'for string walking' };
  if (bow.arrowPass !== 'rest and button') return { low: 0.01, high: 0.016, who: `off the ${bow.arrowPass}` };
  return { low: 0.003, high: 0.01, who: 'from a rest' };
}

/**
 * A height of nocking point in words.
 *
 * @equation size, "above" or "below", "square"; "square" alone where it shows as nought
 * @param nockingPoint - bottom of the arrow above square [m]
 * @param units - the person's choice of units [record]
 * @returns for instance "6 mm above square" [text]
 * @validity finite heights
 * @source common practice
 * @example squareText(-0.002, defaultPreferences.units) // "2 mm below square"
 */
export function squareText(nockingPoint: number, units: UnitChoice): string {
  const size = textQuantity(Math.abs(nockingPoint), 'setting', units);
  return /[1-9]/.test(size) ? `${size} ${nockingPoint < 0 ? 'below' : 'above'} square` : 'square';
}

/**
 * The nocking point against common practice.
 *
 * @equation caution outside the range of nockingPractice, else in range
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null for a compound [record]
 * @validity as nockingPractice
 * @source common practice
 * @example nockingPointFinding(exampleBundle, defaultPreferences.units).title // "Nocking point 6 mm above square"
 */
export function nockingPointFinding(bundle: Bundle, units: UnitChoice): Finding | null {
  const practice = nockingPractice(bundle);
  if (practice === null) return null;
  const { nockingPoint } = bundle.setup.settings;
  if (nockingPoint === null)
    return waitingFor(
      'nockingPoint',
      'Nocking point not measured',
      'Waits for the nocking point: bottom of the arrow above square.',
      'nock',
      'bow',
      'settings.nockingPoint',
    );
  const { low, high, who } = practice;
  const stands = standing(nockingPoint, low, high, HAIR);
  const height = squareText(nockingPoint, units);
  const ends = high === null ? `${textQuantity(low, 'setting', units)} or more` : rangeText(low, high, 'setting', units, false);
  return {
    id: 'nockingPoint',
    level: stands === 'inside' ? 'ok' : 'caution',
    title: `Nocking point ${height}${stands === 'inside' ? '' : `, ${stands}`}`,
    detail: `Common practice ${who}; the bare shaft decides.`,
    rule: ruleOf(nockingPoint, low, high, 'setting', units, false),
    short: { figure: textQuantity(nockingPoint, 'setting', units), word: 'nock' },
    why: whyRule(
      'Nocking point',
      'Bottom of the nocked arrow above square to the string. Common practice starts at 3 to 10 mm from a rest, 10 to 16 mm off the hand or shelf, 10 to 15 mm and more for string walkers. It is a place to start: the bare shaft decides. It moves with the brace height.',
      [
        ['n', 'nocking point', height],
        ['', 'range', ends],
      ],
      'common practice',
    ),
    action: stands === 'inside' ? null : goTo('Fix', 'bow', 'settings.nockingPoint'),
  };
}
