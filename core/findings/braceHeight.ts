import { braceHeightCheck, braceHeightRange, type BraceRange } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding, Level } from './finding.ts';
import { capital, goTo, rangeText, ruleOf, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/**
 * As finely as a tape is read again [m]: so far outside the maker's own range may be the reading. Anything more is a stop, since the bow
 * maker's limits are not ours to stretch; common practice is no limit, authorities differ.
 */
const AS_READ = 0.001;
const ROUNDING = 1e-6;

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
 * @equation the maker's range, else common practice; outside is a caution, more than 1 mm outside the maker's own range a stop
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
  const level = verdict === 'in range' ? 'ok' : range.from === 'maker' && distance > AS_READ + ROUNDING ? 'stop' : 'caution';
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
  const where =
    range.from === 'maker'
      ? 'Maker\u2019s range'
      : range.from === 'from memory'
        ? `Usual for ${range.bows}, not checked against a source`
        : `${capital(range.from)} for ${range.bows}`;
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
    detail: detailOf(level, where, range.from === 'maker'),
    rule: ruleOf(value, range.low, range.high, 'length', units, false),
    short: { figure: textQuantity(value, 'length', units), word: 'brace' },
    why: whyRule(
      'Brace height',
      'String to the pivot or low point of the grip, square to the string. The bow maker\u2019s own range governs; without one, common practice by kind and length of bow. Lower gives a longer push, more speed and more noise; higher a shorter one and less speed. Outside the maker\u2019s range nothing is shot until it is mended; a millimetre may be the tape. Outside common practice is a caution, since authorities differ.',
      [
        ['B', 'brace height', text(value)],
        ['', range.from === 'maker' ? 'maker\u2019s range' : `range for ${range.bows}`, ends],
      ],
      range.from === 'maker' ? 'the bow maker\u2019s figures, as entered' : range.from,
    ),
    action: verdict === 'in range' ? null : goTo('Fix', 'bow', 'settings.braceHeight'),
  };
}

function detailOf(level: Level, where: string, makers: boolean): string {
  if (level === 'stop') return 'Outside the maker\u2019s range: mend it before anything is shot.';
  if (level === 'caution' && makers) return 'Outside the maker\u2019s range by no more than a tape can tell: measure it again.';
  return `${where}.`;
}
