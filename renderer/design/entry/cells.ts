import { limits, type Measure } from '../../../core/model/limits.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Result } from '../../../core/model/problem.ts';
import { readEntry, type TableColumn } from '../../../core/tables/index.ts';
import { decimalsOf } from '../../../core/units/decimals.ts';
import { factorOf, showQuantity, unitOf } from '../../../core/units/index.ts';

interface AnyColumn<K extends string> {
  readonly key: K;
  /** In the head and, with its row, the accessible name of every cell. */
  readonly name: string;
  /** What stands in the head in place of name and unit, where the table is wide. */
  readonly head?: string;
  readonly also?: readonly string[];
}

/** What a column of an entry table takes. */
export type EntryColumn<K extends string = string> = AnyColumn<K> &
  (
    | { readonly kind: 'figure'; readonly measure: Measure; readonly read?: (text: string) => Result<number | null> }
    | { readonly kind: 'number'; readonly most: number }
    | { readonly kind: 'choice'; readonly options: readonly { readonly value: string; readonly text: string }[] }
    | { readonly kind: 'tick' }
    | { readonly kind: 'words'; readonly most: number }
    /** Shown, not entered. */
    | { readonly kind: 'told' }
  );

/** What stands in a cell, and for a figure its exact value: what is shown is rounded, what is kept is not. */
export interface Cell {
  readonly text: string;
  readonly si: number | null;
}
export type EntryRow<K extends string = string> = Readonly<Record<K, Cell>>;

export const blankCell: Cell = { text: '', si: null };
export const wordCell = (text: string): Cell => ({ text, si: null });

export const isBlank = <K extends string>(row: EntryRow<K>, blank: EntryRow<K>): boolean =>
  (Object.keys(blank) as K[]).every((key) => row[key].text.trim() === blank[key].text);

/** A blank row stands at the end for whoever goes on typing. */
export function withSpare<K extends string>(
  rows: readonly EntryRow<K>[],
  blank: EntryRow<K>,
  most: number,
): readonly EntryRow<K>[] {
  const last = rows.at(-1);
  return (last !== undefined && isBlank(last, blank)) || rows.length >= most ? rows : [...rows, blank];
}

/** One decimal more than on a drawing, where there is one: a scale that reads tenths of a grain is believed. */
export function figureCell(si: number | null, measure: Measure, units: UnitChoice): Cell {
  if (si === null) return blankCell;
  const { use } = limits[measure];
  const { figure } = showQuantity(si, use, units);
  if (use === 'length' || use === 'turns' || use === 'count') return { text: figure, si };
  const digits = decimalsOf(use, units, si / factorOf(use, units)) + 1;
  const finer = showQuantity(si, use, units, { digits }).figure.replace(/\.?0+$/, '');
  return { text: finer.length > figure.length ? finer : figure, si };
}

/** What was typed into a cell, read at once. */
export function typedCell(column: EntryColumn, text: string, units: UnitChoice): Cell {
  const read = readOf(column, text, units);
  return { text, si: read?.ok === true ? read.value : null };
}

/** A cell that is left: a figure that was understood is shown as all of its column are. */
export const settledCell = (column: EntryColumn, cell: Cell, units: UnitChoice): Cell =>
  column.kind === 'figure' && cell.si !== null ? figureCell(cell.si, column.measure, units) : cell;

/** Why a cell cannot be kept; null when it can. */
export function wrongIn(column: EntryColumn, cell: Cell, units: UnitChoice): string | null {
  if (cell.si !== null || cell.text.trim() === '') return null;
  const read = readOf(column, cell.text, units);
  return read === null || read.ok ? null : read.problem.sentence;
}

function readOf(column: EntryColumn, text: string, units: UnitChoice): Result<number | null> | null {
  if (column.kind === 'figure') return column.read?.(text) ?? readEntry(column.measure, text, units, '');
  if (column.kind !== 'number') return null;
  const number = /^\s*\d{1,9}\s*$/.test(text) ? Number(text) : 0;
  if (text.trim() === '') return { ok: true, value: null };
  const sentence = `For ${column.name}, a whole number from 1 to ${column.most} was expected.`;
  return number >= 1 && number <= column.most
    ? { ok: true, value: number }
    : { ok: false, problem: { code: 'not-a-number', sentence } };
}

export const headOf = (column: EntryColumn, units: UnitChoice): string => {
  if (column.head !== undefined) return column.head;
  const unit = column.kind === 'figure' ? unitOf(limits[column.measure].use, units) : '';
  return unit === '' ? column.name : `${column.name}, ${unit}`;
};

/** The columns as readTable asks for them; what cannot stand in a pasted table ends the list. */
export function tableColumns(columns: readonly EntryColumn[]): TableColumn[] {
  const found: TableColumn[] = [];
  for (const column of columns) {
    const base = { name: column.name, ...(column.also === undefined ? {} : { also: column.also }), optional: found.length > 0 };
    if (column.kind === 'figure') found.push({ ...base, measure: column.measure });
    else if (column.kind === 'number') found.push({ ...base, whole: [1, column.most] });
    else break;
  }
  return found;
}
