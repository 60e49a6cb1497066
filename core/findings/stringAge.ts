import type { Bundle } from '../model/bundle.ts';
import { wallTime, type Stamp } from '../model/common.ts';
import type { Finding } from './finding.ts';
import { goTo, whyRule } from './parts.ts';

/** A string in use is changed about yearly: common practice. */
const YEAR_DAYS = 365;
const DAY = 86_400_000;

/**
 * How long the string has been on the bow.
 *
 * @equation caution from 365 days on, by the calendar of the place
 * @param bundle - the set-up with its records [record]
 * @param now - the present instant [record]
 * @returns the finding; unknown when a string is on record without its day; null when nothing of it is [record]
 * @validity a day to come counts as unknown
 * @source common practice
 * @example stringAgeFinding(exampleBundle, exampleNow) // null
 */
export function stringAgeFinding({ setup }: Bundle, now: Stamp): Finding | null {
  const { stringFitted, stringMaterial, strands } = setup.settings;
  if (stringFitted === null && stringMaterial === null && strands === null) return null;
  const days = stringFitted === null ? null : Math.floor((wallTime(now) - Date.parse(stringFitted)) / DAY);
  const known = days !== null && days >= 0;
  const old = known && days >= YEAR_DAYS;
  const age = known ? ageText(days) : '';
  return {
    id: 'stringAge',
    level: old ? 'caution' : known ? 'ok' : 'unknown',
    title: known
      ? `String fitted ${age}`
      : stringFitted === null
        ? 'String: not noted since when'
        : 'String noted for a day still to come',
    detail: old
      ? 'About a year in use is common practice: look for fluff and cut strands, and fit a new one.'
      : known
        ? 'Change it after about a year in heavy use, and at any cut strand.'
        : 'Note the day on which it was fitted.',
    rule: null,
    short: { figure: known ? `${days} d` : '\u2013', word: 'string' },
    why: whyRule(
      'Age of the string',
      'A string and its serving are changed at any cut strand, and after about a year in heavy use. It is waxed each session. A string that breaks is a dry fire.',
      [['', 'fitted', known ? age : 'not on record']],
      'common practice',
    ),
    action: known && !old ? null : goTo(old ? 'New string' : 'Enter', 'bow', 'settings.stringFitted'),
  };
}

function ageText(days: number): string {
  if (days === 0) return 'today';
  if (days < 2 * YEAR_DAYS) return `${days} ${days === 1 ? 'day' : 'days'} ago`;
  return `${(days / 365.25).toFixed(1)} years ago`;
}
