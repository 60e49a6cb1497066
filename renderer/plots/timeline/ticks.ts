import { utcDay, utcFormat } from 'd3';
import { textWidth } from '../textWidth.ts';
import type { Label, Time } from './data.ts';

const DAY = 24 * 3_600_000;
const byHour = utcFormat('%H:%M');
const byDay = utcFormat('%-d %b');
const byMonth = utcFormat('%b');
const dayAndYear = utcFormat('%-d %b %Y');
const monthAndYear = utcFormat('%b %Y');

/** Hours, days or months, as the span asks; the first tick also says which year, or which day. A tick whose text would touch is left out. */
export function timeTicks(x: Time, moment: number | null, left: number, right: number, y: number): readonly Label[] {
  const [from, to] = x.domain();
  const span = Number(to) - Number(from);
  const count = Math.max(2, Math.floor((right - left) / 84));
  const inHours = moment === null && span < 2 * DAY;
  const ticks =
    moment !== null ? [new Date(moment)] : inHours || span >= 60 * DAY ? x.ticks(count) : x.ticks(count).filter(isMidnight);
  const months = span >= 60 * DAY && ticks.every((tick) => tick.getUTCDate() === 1);
  const shown: Label[] = [];
  let [end, last] = [-Infinity, null as Date | null];
  for (const tick of ticks) {
    const newDay = last === null || utcDay(tick) > utcDay(last);
    const newYear = last === null || tick.getUTCFullYear() !== last.getUTCFullYear();
    const text = inHours
      ? `${newDay ? `${byDay(tick)}, ` : ''}${byHour(tick)}`
      : months
        ? (newYear ? monthAndYear : byMonth)(tick)
        : (newYear ? dayAndYear : byDay)(tick);
    const at = x(tick);
    if (at < end + 10 || at + textWidth(text, 12, 'text') > right) continue;
    shown.push({ x: at, y, text, anchor: 'start' });
    [end, last] = [at + textWidth(text, 12, 'text'), tick];
  }
  return shown;
}

const isMidnight = (tick: Date): boolean => Number(utcDay.floor(tick)) === Number(tick);
