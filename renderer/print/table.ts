import type { XmlNode } from '../export/xml.ts';
import { textWidth } from '../plots/textWidth.ts';
import { wrapped } from '../plots/wrapped.ts';
import { path, stroke, weights, written } from './ink.ts';

export interface PrintedTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly strong: readonly boolean[];
}

export interface TableSize {
  readonly type: number;
  readonly line: number;
  /** Between one column and the next [mm]. */
  readonly gap: number;
  /** Lines that the name of a column may take. */
  readonly headLines: number;
}

/** The names of columns, against the type of their figures [-]. */
const HEAD = 0.86;
/** A wrapped name, against the line of the figures [-]. */
const HEAD_LINE = 0.8;

const headLines = (name: string, width: number, { type }: TableSize) => wrapped(name, width + 0.01, HEAD * type, 'name');

/** The least width in which a name takes few lines [mm]. */
function headWidth(name: string, size: TableSize): number {
  const whole = textWidth(name, HEAD * size.type, 'name');
  const words = name.split(' ');
  // Wherever a line may end, it is as wide as some run of words.
  const runs = words.flatMap((_, i) => words.slice(i).map((_word, j) => words.slice(i, i + j + 1).join(' ')));
  const widths = runs.map((run) => textWidth(run, HEAD * size.type, 'name')).sort((a, b) => a - b);
  const fits = (width: number) =>
    headLines(name, width, size).length <= size.headLines &&
    headLines(name, width, size).every((line) => textWidth(line, HEAD * size.type, 'name') <= width + 0.02);
  return widths.find(fits) ?? whole;
}

/** How wide each column stands [mm]. */
export const columnWidths = ({ head, rows, strong }: PrintedTable, size: TableSize): readonly number[] =>
  head.map((name, i) =>
    Math.max(
      headWidth(name, size),
      ...rows.map((row, r) => textWidth(row[i] ?? '', size.type, strong[r] === true ? 'strong' : 'text')),
    ),
  );

export const widthOf = (columns: readonly number[], { gap }: TableSize): number =>
  columns.reduce((sum, width) => sum + width, 0) + gap * Math.max(0, columns.length - 1);

/** How high the heads stand over columns of these widths [mm]. */
export const headHeight = (head: readonly string[], columns: readonly number[], size: TableSize): number =>
  size.line * (1 + HEAD_LINE * (Math.max(1, ...head.map((name, i) => headLines(name, columns[i] ?? 0, size).length)) - 1));

/** Rows under their heads, figures to the right, a hairline under each. */
export function drawTable(table: PrintedTable, size: TableSize, columns: readonly number[], x: number, top: number): XmlNode[] {
  const { type, line, gap } = size;
  const ends: number[] = [];
  for (const width of columns) ends.push((ends.at(-1) ?? x - gap) + gap + width);
  const wide = widthOf(columns, size);
  const under = top + headHeight(table.head, columns, size);
  return [
    ...table.head.flatMap((name, i) =>
      headLines(name, columns[i] ?? 0, size).map((text, row, { length }) =>
        written(text, ends[i] ?? x, under - (0.28 + (length - 1 - row) * HEAD_LINE) * line, 'name', HEAD * type, 'end'),
      ),
    ),
    stroke(path('M', x, under, 'H', x + wide), weights.inner),
    ...table.rows.flatMap((row, r) => [
      ...row.map((text, i) =>
        written(text, ends[i] ?? x, under + line * (r + 0.72), table.strong[r] === true ? 'strong' : 'text', type, 'end'),
      ),
      stroke(path('M', x, under + line * (r + 1), 'H', x + wide), weights.construction, { stroke: '#999999' }),
    ]),
  ];
}
