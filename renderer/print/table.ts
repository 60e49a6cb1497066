import type { XmlNode } from '../export/xml.ts';
import { textWidth } from '../plots/textWidth.ts';
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
}

/** How wide each column stands [mm]. */
export const columnWidths = ({ head, rows, strong }: PrintedTable, { type }: TableSize): readonly number[] =>
  head.map((name, i) =>
    Math.max(
      textWidth(name, 0.9 * type, 'name'),
      ...rows.map((row, r) => textWidth(row[i] ?? '', type, strong[r] === true ? 'strong' : 'text')),
    ),
  );

export const widthOf = (columns: readonly number[], { gap }: TableSize): number =>
  columns.reduce((sum, width) => sum + width, 0) + gap * Math.max(0, columns.length - 1);

/** Rows under their heads, figures to the right, a hairline under each. */
export function drawTable(table: PrintedTable, size: TableSize, columns: readonly number[], x: number, top: number): XmlNode[] {
  const { type, line, gap } = size;
  const ends: number[] = [];
  for (const width of columns) ends.push((ends.at(-1) ?? x - gap) + gap + width);
  const wide = widthOf(columns, size);
  const base = (row: number) => top + line * (row + 1) + 0.72 * line;
  return [
    ...table.head.map((name, i) => written(name, ends[i] ?? x, top + 0.72 * line, 'name', 0.9 * type, 'end')),
    stroke(path('M', x, top + line, 'H', x + wide), weights.inner),
    ...table.rows.flatMap((row, r) => [
      ...row.map((text, i) => written(text, ends[i] ?? x, base(r), table.strong[r] === true ? 'strong' : 'text', type, 'end')),
      stroke(path('M', x, top + line * (r + 2), 'H', x + wide), weights.construction, { stroke: '#999999' }),
    ]),
  ];
}

export const heightOf = (rows: number, { line }: TableSize): number => line * (rows + 1);
