import { wallTime, type Stamp } from '../model/common.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/**
 * The day of an instant where it was lived.
 *
 * @equation UTC instant + offset of the place, as day, month and year; seen from a day, "today" on that day and no year within its year
 * @param stamp - the instant with its offset [record]
 * @param today - the day that it is read on, or null when the text must hold on any day [record]
 * @returns for instance "2 May 2026" [text]
 * @validity any stamps that the records accept
 * @source own derivation
 * @example dayText({ at: '2026-05-02T23:30:00Z', offsetMinutes: 60 }) // "3 May 2026"
 */
export function dayText(stamp: Stamp, today: Stamp | null = null): string {
  const there = new Date(wallTime(stamp));
  const day = `${there.getUTCDate()} ${MONTHS[there.getUTCMonth()] ?? ''}`;
  const year = there.getUTCFullYear();
  if (today === null) return `${day} ${year}`;
  const here = new Date(wallTime(today));
  if (there.toISOString().slice(0, 10) === here.toISOString().slice(0, 10)) return 'today';
  return year === here.getUTCFullYear() ? day : `${day} ${year}`;
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
