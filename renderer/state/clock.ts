import { dayText } from '../../core/findings/index.ts';
import { wallTime, type Stamp } from '../../core/model/common.ts';

/** The one place where the renderer asks what time it is, and where. */
export function now(): Stamp {
  const date = new Date();
  return { at: date.toISOString(), offsetMinutes: -date.getTimezoneOffset() };
}

/** The day, and while it is still today the time: three groups of one afternoon must not look alike. */
export function whenText(stamp: Stamp, today: Stamp): string {
  const day = dayText(stamp, today);
  return day === 'today' ? `today ${timeText(stamp)}` : day;
}

/** "10:44", as the clock on the wall there showed it. */
export function timeText(stamp: Stamp): string {
  return new Date(wallTime(stamp)).toISOString().slice(11, 16);
}
