import type { UnitChoice } from '../../../core/model/preferences.ts';
import { readTable, type TableRead } from '../../../core/tables/index.ts';
import { isBlank, tableColumns, wrongIn, type EntryColumn, type EntryRow } from './cells.ts';
import { rowsOfTable } from './paste.ts';

/** A sheet of rows in which all figures belong together: an arrow's mass and its speed. */
export interface TogetherSheet<K extends string> {
  readonly columns: readonly EntryColumn<K>[];
  readonly blank: EntryRow<K>;
  readonly most: number;
  /** What is said of a row that lacks one. */
  readonly belong: string;
  /** What the rows are called where there are too many. */
  readonly called: string;
}

/** What the rows come to, which row each is of, or why they cannot be kept as they stand. */
export function togetherOf<K extends string>(
  { columns, blank, most, belong, called }: TogetherSheet<K>,
  rows: readonly EntryRow<K>[],
  units: UnitChoice,
): { readonly found: readonly Readonly<Record<K, number>>[]; readonly rowOf: readonly number[]; readonly wrong: string | null } {
  const found: Record<K, number>[] = [];
  const rowOf: number[] = [];
  let wrong: string | null = null;
  rows.forEach((row, index) => {
    if (isBlank(row, blank)) return;
    const figures = columns.map(({ key }) => row[key].si);
    if (figures.every((figure) => figure !== null)) {
      found.push(Object.fromEntries(columns.map(({ key }, i) => [key, figures[i]])) as Record<K, number>);
      rowOf.push(index);
      return;
    }
    const unread = columns.map((column) => wrongIn(column, row[column.key], units)).find((sentence) => sentence !== null);
    wrong ??= `Row ${index + 1}: ${unread ?? belong}`;
  });
  if (wrong === null && found.length > most) wrong = `At most ${most} ${called} were expected; these are ${found.length}.`;
  return { found, rowOf, wrong };
}

/** The rows of a pasted table, in which no column may be missing. */
export function togetherFromTable<K extends string>(
  { columns, blank, most }: TogetherSheet<K>,
  text: string,
  units: UnitChoice,
): { readonly rows: readonly EntryRow<K>[]; readonly read: TableRead } {
  const needed = tableColumns(columns).map((column) => ({ ...column, optional: false }));
  const read = readTable(text, needed, units, most);
  return { rows: rowsOfTable(read, columns, blank, units), read };
}
