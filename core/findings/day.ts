import type { Stamp } from '../model/common.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/**
 * The day of an instant where it was lived.
 *
 * @equation UTC instant + offset of the place, as day, month and year
 * @param stamp - the instant with its offset [record]
 * @returns for instance "2 May 2026" [text]
 * @validity any stamp that the records accept
 * @source own derivation
 * @example dayText({ at: '2026-05-02T23:30:00Z', offsetMinutes: 60 }) // "3 May 2026"
 */
export function dayText(stamp: Stamp): string {
  const there = new Date(Date.parse(stamp.at) + stamp.offsetMinutes * 60_000);
  return `${there.getUTCDate()} ${MONTHS[there.getUTCMonth()] ?? ''} ${there.getUTCFullYear()}`;
}

/**
 * Hours from one instant to another.
 *
 * @equation (later − earlier) in hours, both in UTC
 * @param earlier - the first instant [record]
 * @param later - the second instant [record]
 * @returns negative when the second came first [h]
 * @validity any stamps that the records accept
 * @source own derivation
 * @example hoursBetween({ at: '2026-05-02T09:00:00Z', offsetMinutes: 60 }, { at: '2026-05-02T11:30:00Z', offsetMinutes: 60 }) // 2.5
 */
export function hoursBetween(earlier: Stamp, later: Stamp): number {
  return (Date.parse(later.at) - Date.parse(earlier.at)) / 3_600_000;
}
