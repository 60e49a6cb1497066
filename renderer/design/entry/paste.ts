import type { UnitChoice } from '../../../core/model/preferences.ts';
import { readTable, type TableRead, type TableRow } from '../../../core/tables/index.ts';
import { figureCell, tableColumns, type Cell, type EntryColumn, type EntryRow } from './cells.ts';

/** More than one cell: the browser's own paste would put it all into one. */
export const isTable = (text: string): boolean => /[\t\n\r]/.test(text.trim());

const cellOf = (column: EntryColumn, value: number, units: UnitChoice): Cell =>
  column.kind === 'figure' ? figureCell(value, column.measure, units) : { text: String(value), si: value };

/** The cells that one taken line of a table fills. */
export function pastedCells<K extends string>(
  columns: readonly EntryColumn<K>[],
  values: readonly (number | null)[],
  units: UnitChoice,
): Partial<Record<K, Cell>> {
  const cells: Partial<Record<K, Cell>> = {};
  columns.forEach((column, i) => {
    const value = values[i] ?? null;
    if (value !== null) cells[column.key] = cellOf(column, value, units);
  });
  return cells;
}

/** The rows that the taken lines of a whole table come to; `cellsOf` puts its figures in the order of the columns. */
export const rowsOfTable = <K extends string>(
  read: TableRead,
  columns: readonly EntryColumn<K>[],
  blank: EntryRow<K>,
  units: UnitChoice,
  cellsOf = (values: readonly (number | null)[]): readonly (number | null)[] => values,
): readonly EntryRow<K>[] =>
  read.rows
    .filter(({ fate }) => fate === 'taken')
    .map(({ values }) => ({ ...blank, ...pastedCells(columns, cellsOf(values), units) }));

/** A table pasted into a cell fills from there to the right and down. A line that is blank or left out leaves its row as it is. */
export function pasteAt<K extends string>(
  rows: readonly EntryRow<K>[],
  blank: EntryRow<K>,
  columns: readonly EntryColumn<K>[],
  at: { readonly row: number; readonly column: number },
  text: string,
  units: UnitChoice,
  most: number,
): { readonly rows: readonly EntryRow<K>[]; readonly read: TableRead } {
  const into = columns.slice(at.column);
  const read = readTable(text, tableColumns(into), units, most);
  const top = read.rows.find(({ fate }) => fate === 'taken')?.line ?? 0;
  const rowOf = (line: number) => at.row + line - top;
  const fates = read.rows.map((one): TableRow =>
    one.fate === 'taken' && rowOf(one.line) >= most
      ? { ...one, fate: 'left out', why: `This table holds ${most} rows, and the rest is below them.` }
      : one,
  );
  const next = [...rows];
  for (const { fate, line, values } of fates) {
    if (fate !== 'taken') continue;
    const row = rowOf(line);
    while (next.length <= row) next.push(blank);
    next[row] = { ...(next[row] ?? blank), ...pastedCells(into, values, units) };
  }
  const count = (fate: TableRow['fate']) => fates.filter((one) => one.fate === fate).length;
  return { rows: next, read: { ...read, rows: fates, taken: count('taken'), leftOut: count('left out') } };
}
