import { wholeCount } from '../units/index.ts';
import type { TableRead } from './table.ts';

/** Heads that are named; one who pasted more sees what is meant. */
const MOST_NAMED = 3;

/**
 * What became of a pasted table, in one sentence.
 *
 * @equation lines taken, lines left out, whether there were heads, and columns whose heads nobody knows
 * @param read - a table that was read [record]
 * @returns the sentence [text]
 * @validity any table, an empty one too
 * @source own derivation
 * @example tableTold(readTable('10 in, 5 lb', [{ name: 'draw', measure: 'readingDraw' }, { name: 'force', measure: 'readingForce' }], defaultPreferences.units)) // "1 line taken."
 */
export function tableTold({ rows, taken, leftOut, tooMany, unread, known }: TableRead): string {
  if (rows.length === 0) return 'There is nothing in it.';
  const lines = (count: number) => `${wholeCount(count)} ${count === 1 ? 'line' : 'lines'}`;
  const heads = rows.some(({ fate }) => fate === 'header') ? ', with heads' : '';
  const left = leftOut === 0 ? '' : `, ${wholeCount(leftOut)} left out`;
  const strange = unread.map(({ place, head }) => `column ${place + 1}, “${head}”,`);
  const first = strange.slice(0, MOST_NAMED).join(' and ').replace(/^c/, 'C');
  const others = strange.length > MOST_NAMED ? ` and ${strange.length - MOST_NAMED} more` : '';
  const dropped =
    strange.length === 0
      ? ''
      : ` ${first}${others} ${strange.length === 1 ? 'is' : 'are'} not read: heads that are known are ${known.join(', ')}.`;
  return `${taken === 0 ? 'No line' : lines(taken)} taken${left}${heads}.${dropped}${tooMany === null ? '' : ` ${tooMany}`}`;
}
