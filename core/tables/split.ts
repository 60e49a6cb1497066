import { isUnit } from '../units/find.ts';

/** What may stand between the cells of a line, in the order in which it is tried. */
export const separators = ['\t', ';', 'columns', ',', 'spaces', 'none'] as const;
export type Separator = (typeof separators)[number];

/**
 * The cells of one line.
 *
 * @equation cut at every separator outside quotation marks; "columns" are two spaces or more; at single spaces, a fraction and a unit stay with the number before them
 * @param line - one line of a table [text]
 * @param separator - what stands between its cells [choice]
 * @returns the cells without outer spaces and quotation marks, empty ones at the end left off [list]
 * @validity any line; a quotation mark that is not the first and last sign of its cell is an inch mark
 * @source common practice
 * @example splitLine('28 1/4 in 36 lb', 'spaces') // ["28 1/4 in", "36 lb"]
 */
export function splitLine(line: string, separator: Separator): readonly string[] {
  const cells = cut(line, separator).map((cell) => cell.trim());
  while (cells.length > 0 && cells.at(-1) === '') cells.pop();
  return cells;
}

function cut(line: string, separator: Separator): string[] {
  if (separator === 'none') return [unquoted(line)];
  if (separator === 'columns') return line.trim().split(/\s*\t\s*|\s{2,}/);
  if (separator === 'spaces') return together(line.trim().split(/\s+/));
  if (!line.includes('"')) return line.split(separator);
  const cells: string[] = [];
  let rest = line;
  for (;;) {
    const quoted = /^ *"((?:[^"]|"")*)" */.exec(rest);
    const whole = quoted !== null && (quoted[0].length === rest.length || rest.startsWith(separator, quoted[0].length));
    const at = whole ? quoted[0].length : rest.indexOf(separator);
    const end = whole && at === rest.length ? -1 : at;
    cells.push(whole ? (quoted[1] ?? '').replaceAll('""', '"') : end < 0 ? rest : rest.slice(0, end));
    if (end < 0) return cells;
    rest = rest.slice(end + 1);
  }
}

const unquoted = (cell: string): string => /^\s*"((?:[^"]|"")*)"\s*$/.exec(cell)?.[1]?.replaceAll('""', '"') ?? cell;

/** "28", "1/4", "in" are one figure, written apart. */
function together(words: readonly string[]): string[] {
  const cells: string[] = [];
  for (const word of words) {
    const before = cells.at(-1);
    const fraction = /^\d+[/⁄]\d+/.test(word) && /^[-−+]?\d+$/.test(before ?? '');
    const unit = /[\d¼½¾⅛⅜⅝⅞]$/.test(before ?? '') && !/^\d/.test(word) && isUnit(word);
    if (before !== undefined && (fraction || unit)) cells[cells.length - 1] = `${before} ${word}`;
    else cells.push(word);
  }
  return cells;
}
