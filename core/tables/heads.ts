import { limits } from '../model/limits.ts';
import { dimensionOf } from '../units/dimensions.ts';
import { findUnit, isUnit } from '../units/find.ts';
import type { TableColumn, TableRead } from './table.ts';

/** In which cell of a line each column stands, and the unit of its bare numbers; a column that is nowhere has no place. */
export type Places = readonly { readonly place: number | null; readonly unit: string | null }[];

/** A head of more letters than this is a sentence. */
const LONGEST_HEAD = 30;

/**
 * What a line of heads says: where the columns stand, and in which units.
 *
 * @equation a head names the column whose longest name it holds; its unit stands in brackets, after a stroke or as its last word, or alone on a line of units; a line that names every needed column orders them, any other leaves the order as it was
 * @param cells - the cells of the line [list]
 * @param columns - the columns that were asked for [list]
 * @param before - the places found so far [list]
 * @returns the new places, or null when the line is no line of heads [list]
 * @validity any cells; a line with a figure at the front of a cell is no line of heads
 * @source common practice
 * @example readHeads(['force (lb)', 'draw (in)'], [{ name: 'draw', measure: 'readingDraw' }, { name: 'force', measure: 'readingForce' }], [{ place: 0, unit: null }, { place: 1, unit: null }]).map((found) => found.place) // [1, 0]
 */
export function readHeads(cells: readonly string[], columns: readonly TableColumn[], before: Places): Places | null {
  if (cells.some((cell) => /^[-+−]?[.,]?\d/.test(cell))) return null;
  const named = placesNamed(cells, columns);
  const ordered = columns.every(({ optional }, i) => optional === true || named[i] !== null);
  const places = columns.map((_, i) => (ordered ? (named[i] ?? null) : (before[i]?.place ?? null)));
  const units = columns.map((column, i) => unitIn(cells[places[i] ?? -1] ?? '', column, named[i] === places[i]));
  if (!ordered && named.every((place) => place === null) && units.every((unit) => unit === null)) return null;
  return places.map((place, i) => ({ place, unit: units[i] ?? (ordered ? null : (before[i]?.unit ?? null)) }));
}

/**
 * The heads of columns that are not read.
 *
 * @equation cells with a word in them that no column was found under, where the line names every needed column; a unit alone names nothing
 * @param cells - the cells of the line of heads [list]
 * @param columns - the columns that were asked for [list]
 * @returns places and heads; none where the line orders nothing [list]
 * @validity a line that readHeads takes for heads
 * @source own derivation
 * @example unreadHeads(['Wind', 'draw', 'force'], [{ name: 'draw', measure: 'readingDraw' }, { name: 'force', measure: 'readingForce' }]) // [{ "place": 0, "head": "Wind" }]
 */
export function unreadHeads(cells: readonly string[], columns: readonly TableColumn[]): TableRead['unread'] {
  const named = placesNamed(cells, columns);
  if (!columns.every(({ optional }, i) => optional === true || named[i] !== null)) return [];
  return cells.flatMap((head, place) =>
    named.includes(place) || !/\p{L}/u.test(head) || isUnit(head) ? [] : [{ place, head: head.slice(0, LONGEST_HEAD) }],
  );
}

/** Each column takes the cell that names it best; a cell is taken once. */
function placesNamed(cells: readonly string[], columns: readonly TableColumn[]): (number | null)[] {
  const claims = columns
    .flatMap((column, i) => cells.map((cell, place) => ({ i, place, strength: strengthOf(cell, column) })))
    .filter(({ strength }) => strength > 0)
    .sort((a, b) => b.strength - a.strength || a.place - b.place);
  const places: (number | null)[] = columns.map(() => null);
  for (const { i, place } of claims) if (places[i] === null && !places.includes(place)) places[i] = place;
  return places;
}

function strengthOf(cell: string, { name, also = [] }: TableColumn): number {
  const words = ` ${cell.toLowerCase().replace(/[^\p{L}\d-]+/gu, ' ')} `;
  return Math.max(0, ...[name, ...also].map((one) => (words.includes(` ${one} `) ? one.length : 0)));
}

/** A title above the table may end in a unit too: where nothing names the column, the unit must stand alone or in brackets. */
function unitIn(cell: string, column: TableColumn, named: boolean): string | null {
  if (!('measure' in column)) return null;
  const bracketed = /[([]([^)\]]*)[)\]]/.exec(cell)?.[1];
  const last = /[\s/,:]([^\s,:]+)$/.exec(` ${cell.trim()}`)?.[1] ?? '';
  const words = bracketed !== undefined ? [bracketed] : named ? [last, last.replace(/^[^/]*\//, '')] : [cell];
  const dimension = dimensionOf[limits[column.measure].use];
  // The y of a place is no yard.
  const own = (word: string) => named && [column.name, ...(column.also ?? [])].includes(word.trim().toLowerCase());
  return words.find((word) => word !== '' && !own(word) && findUnit(word, dimension) !== null)?.trim() ?? null;
}
