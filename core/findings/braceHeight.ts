import { braceHeightCheck, braceHeightRange, type BraceRange } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { inch } from '../units/exact.ts';
import { showQuantity, textQuantity } from '../units/index.ts';
import type { Finding, Level } from './finding.ts';
import { capital, goTo, rangeText, ruleOf, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/** A new string settles by about so much (from memory). Farther outside the bow maker's own range is no longer a matter of tuning. */
const FAR_OUTSIDE = 0.5 * inch;

/** The brace height as it stands; no range for a compound whose maker's range is not on record. */
export interface BraceStanding {
  readonly value: number | null;
  readonly range: BraceRange | null;
  readonly verdict: 'low' | 'in range' | 'high' | 'not measured' | 'no range';
  readonly level: Level;
}

/**
 * How the brace height stands, for the finding and for the gate before any other change.
 *
 * @equation the maker's range, else common practice; outside is a caution, more than 1/2 in outside the maker's own range a stop
 * @param bundle - the set-up with its records [record]
 * @returns value and range [m], verdict and level [record]
 * @validity as braceHeightRange of the bow room
 * @source common practice
 * @example braceStanding(exampleBundle).verdict // "in range"
 */
export function braceStanding(bundle: Bundle): BraceStanding {
  const value = bundle.setup.settings.braceHeight;
  const range = braceHeightRange(bundle.bow);
  if (range === null) return { value, range, verdict: 'no range', level: 'unknown' };
  if (value === null) return { value, range, verdict: 'not measured', level: 'waiting' };
  const { verdict, distance } = braceHeightCheck(value, range);
  const level = verdict === 'in range' ? 'ok' : range.from === 'maker' && distance > FAR_OUTSIDE ? 'stop' : 'caution';
  return { value, range, verdict, level };
}

/**
 * The brace height against the maker's range or common practice.
 *
 * @equation as braceStanding
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null for a compound without its maker's range [record]
 * @validity as braceStanding
 * @source common practice
 * @example braceHeightFinding(exampleBundle, defaultPreferences.units).title // "Brace height 8 1/2 in"
 */
export function braceHeightFinding(bundle: Bundle, units: UnitChoice): Finding | null {
  const { value, range, verdict, level } = braceStanding(bundle);
  if (range === null) return null;
  const text = (si: number) => textQuantity(si, 'length', units);
  const ends = rangeText(range.low, range.high, 'length', units, false);
  const where = range.from === 'maker' ? 'Maker\u2019s range' : `${capital(range.from)} for ${range.bows}`;
  if (value === null)
    return waitingFor(
      'braceHeight',
      'Brace height not measured',
      `Waits for the brace height: string to the low point of the grip. ${where}: ${ends}.`,
      'brace',
      'bow',
      'settings.braceHeight',
    );
  return {
    id: 'braceHeight',
    level,
    title: `Brace height ${text(value)}${verdict === 'in range' ? '' : `, ${verdict}`}`,
    detail: level === 'stop' ? `${where}, and far outside it: mend it before anything is shot.` : `${where}.`,
    rule: ruleOf(value, range.low, range.high, 'length', units, false),
    short: { figure: showQuantity(value, 'length', units).figure, word: 'brace' },
    why: whyRule(
      'Brace height',
      'String to the pivot or low point of the grip, square to the string. The bow maker\u2019s own range governs; without one, common practice by kind and length of bow. Lower gives a longer push, more speed and more noise; higher a shorter one and less speed. Outside the maker\u2019s range by more than 1/2 in is a stop: a new string settles by less than that (from memory).',
      [
        ['B', 'brace height', text(value)],
        ['', range.from === 'maker' ? 'maker\u2019s range' : `range for ${range.bows}`, ends],
      ],
      range.from === 'maker' ? 'the bow maker\u2019s figures, as entered' : range.from,
    ),
    action: verdict === 'in range' ? null : goTo('Fix', 'bow', 'settings.braceHeight'),
  };
}
