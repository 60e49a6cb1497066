import type { TableRead } from './table.ts';

/**
 * What became of a pasted table, in one sentence.
 *
 * @equation lines taken, lines left out, and whether there were heads
 * @param read - a table that was read [record]
 * @returns the sentence [text]
 * @validity any table, an empty one too
 * @source own derivation
 * @example tableTold(readTable('10 in, 5 lb', [{ name: 'draw', measure: 'readingDraw' }, { name: 'force', measure: 'readingForce' }], defaultPreferences.units)) // "1 line taken."
 */
export function tableTold({ rows, taken, leftOut, tooMany }: TableRead): string {
  if (rows.length === 0) return 'There is nothing in it.';
  const lines = (count: number) => `${count} ${count === 1 ? 'line' : 'lines'}`;
  const heads = rows.some(({ fate }) => fate === 'header') ? ', with heads' : '';
  const left = leftOut === 0 ? '' : `, ${leftOut} left out`;
  return `${taken === 0 ? 'No line' : lines(taken)} taken${left}${heads}.${tooMany === null ? '' : ` ${tooMany}`}`;
}
