import type { Stamp } from '../../core/model/common.ts';

/** The one place where the renderer asks what time it is, and where. */
export function now(): Stamp {
  const date = new Date();
  return { at: date.toISOString(), offsetMinutes: -date.getTimezoneOffset() };
}

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** The calendar date at the place where it was lived, whatever this computer's own zone. */
function local(stamp: Stamp): Date {
  return new Date(Date.parse(stamp.at) + stamp.offsetMinutes * 60_000);
}

/** "12 Nov", with the year when it is not this one. */
export function dayText(stamp: Stamp, today: Stamp): string {
  const day = local(stamp);
  const here = local(today);
  const text = `${day.getUTCDate()} ${months[day.getUTCMonth()] ?? ''}`;
  if (day.toISOString().slice(0, 10) === here.toISOString().slice(0, 10)) return 'today';
  return day.getUTCFullYear() === here.getUTCFullYear() ? text : `${text} ${day.getUTCFullYear()}`;
}

/** The day, and while it is still today the time: three groups of one afternoon must not look alike. */
export function whenText(stamp: Stamp, today: Stamp): string {
  const day = dayText(stamp, today);
  return day === 'today' ? `today ${timeText(stamp)}` : day;
}

/** "10:44", as the clock on the wall there showed it. */
export function timeText(stamp: Stamp): string {
  return local(stamp).toISOString().slice(11, 16);
}
