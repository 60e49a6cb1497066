import type { UnitChoice } from '../model/preferences.ts';
import { wholeCount } from '../units/index.ts';
import { readCell, type Style } from './readCell.ts';
import { readHeads, unreadHeads, type Places } from './heads.ts';
import { separators, splitLine, type Separator } from './split.ts';
import type { TableColumn, TableRead, TableRow } from './table.ts';

/** A line of this length is a paragraph, or another file altogether. */
const LONGEST_LINE = 400;
const LONGEST_SHOWN = 60;
/** Lines of a long table that settle what stands between its cells. */
const SAMPLE = 500;

interface Line {
  readonly line: number;
  readonly text: string;
}

interface Reading {
  readonly rows: readonly TableRow[];
  readonly columns: Places;
  readonly unread: TableRead['unread'];
  readonly taken: number;
}

/**
 * Reads a pasted table or the text of a CSV file, and says of every line what became of it.
 *
 * @equation of all ways to cut lines into cells and to take commas, the one that takes the most lines; a comma that could be thousands or decimals in every line is not guessed at
 * @param text - what was pasted [text]
 * @param columns - what the columns are taken for, in their usual order [list]
 * @param units - the person's choice of units, for bare numbers without a head that says one [record]
 * @param most - lines that are read at most [-]
 * @returns the lines with their fate, where the columns were found, and how many lines were taken [record]
 * @validity any text; blank lines are passed over; no value is NaN or outside its limits
 * @source own derivation
 * @example readTable('draw (in);force (lb)\n10;5,2', [{ name: 'draw', measure: 'readingDraw' }, { name: 'force', measure: 'readingForce' }], defaultPreferences.units).rows[1].values[0] // 0.254
 */
export function readTable(text: string, columns: readonly TableColumn[], units: UnitChoice, most: number = 2000): TableRead {
  const all = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .map((one, i): Line => ({ line: i + 1, text: one }))
    .filter((line) => /[^\s;,]/.test(line.text));
  const lines = all.slice(0, most);
  const commas = text.includes(',');
  const readBy = (some: readonly Line[]) => (separator: Separator) => {
    const read = inBestStyle((style) => readLines(some, columns, units, separator, style), commas, some.length);
    return { ...read, separator };
  };
  const possible = separators.filter((one) => one.length > 1 || lines.some((line) => line.text.includes(one)));
  // What stands between the cells of a long table can be told from some of its lines; what commas mean, only from all.
  const apart = Math.ceil(lines.length / SAMPLE);
  const some = apart < 4 ? lines : lines.filter((_, i) => i % apart === 0);
  const found = mostTaken(possible.map(readBy(some)));
  const best = some === lines ? found : readBy(lines)(found.separator);
  const leftOut = best.rows.filter(({ fate }) => fate === 'left out').length;
  const more = all.length - lines.length;
  const tooMany =
    more === 0 ? null : `Only the first ${wholeCount(most)} lines were read; ${wholeCount(more)} more were left out.`;
  const known = columns.map(({ name }) => name);
  return { rows: best.rows, columns: best.columns, unread: best.unread, known, taken: best.taken, leftOut, tooMany };
}

/** The first of those that take the most lines; "none" is always among them. */
const mostTaken = <R extends Reading>(readings: readonly R[]): R =>
  readings.reduce((best, one) => (one.taken > best.taken ? one : best));

/** Whether commas part decimals or thousands throughout is asked only when cell by cell it cannot be told. */
function inBestStyle(read: (style: Style) => Reading, commas: boolean, count: number): Reading {
  const each = read('each');
  if (!commas || each.taken === count) return each;
  const comma = read('comma');
  const point = read('point');
  if (Math.max(comma.taken, point.taken) <= each.taken || comma.taken === point.taken) return each;
  return comma.taken > point.taken ? comma : point;
}

function readLines(
  lines: readonly Line[],
  columns: readonly TableColumn[],
  units: UnitChoice,
  separator: Separator,
  style: Style,
): Reading {
  let places: Places = columns.map((_, place) => ({ place, unit: null }));
  let unread: TableRead['unread'] = [];
  /** How many cells a line has that is no longer than its heads. */
  let width = columns.length;
  const nothing = columns.map(() => null);
  const read: ReadOne = (column, cell, unit) => readCell(column, cell, style, units, unit);
  // Every row is written out whole: of ten thousand, copies cost more than the reading.
  const rows = lines.map(({ line, text: whole }): TableRow => {
    const trimmed = whole.trim();
    const text = trimmed.length > LONGEST_SHOWN ? `${trimmed.slice(0, LONGEST_SHOWN - 1)}…` : trimmed;
    if (whole.length > LONGEST_LINE) {
      const why = 'This line is too long for a line of a table.';
      return { line, text, cells: [], fate: 'left out', why, values: nothing };
    }
    const cells = splitLine(whole, separator);
    const heads = readHeads(cells, columns, places);
    if (heads !== null) {
      places = heads;
      unread = unreadHeads(cells, columns);
      width = cells.length;
      return { line, text, cells, fate: 'header', why: null, values: nothing };
    }
    const { fate, why, values } = readRow(cells, columns, places, width, read);
    return { line, text, cells, fate, why, values: values ?? nothing };
  });
  return { rows, columns: places, unread, taken: rows.filter(({ fate }) => fate === 'taken').length };
}

type ReadOne = (column: TableColumn, cell: string, unit: string) => ReturnType<typeof readCell>;

/** The values are null where the line was left out. */
function readRow(
  cells: readonly string[],
  columns: readonly TableColumn[],
  places: Places,
  width: number,
  read: ReadOne,
): { readonly fate: TableRow['fate']; readonly why: string | null; readonly values: TableRow['values'] | null } {
  const leave = (why: string) => ({ fate: 'left out' as const, why, values: null });
  if (!cells.some((cell) => /\d/.test(cell))) return leave('There is no figure on this line.');
  const values: (number | null)[] = [];
  let nothing = true;
  for (let i = 0; i < columns.length; i++) {
    const column = columns[i];
    if (column === undefined) continue;
    const at = places[i]?.place ?? null;
    const cell = at === null ? '' : (cells[at] ?? '');
    const value = cell === '' ? null : read(column, cell, places[i]?.unit ?? '');
    if (value?.ok === false) return leave(value.problem.sentence);
    const figure = value?.value ?? null;
    if (figure === null && column.optional !== true) return leave(`There is no ${column.name} on this line.`);
    if (figure !== null) nothing = false;
    values.push(figure);
  }
  if (nothing) return leave('There is nothing on this line that was asked for.');
  if (cells.length <= width) return { fate: 'taken', why: null, values };
  const rest = cells.slice(width).filter((cell) => cell !== '');
  const figures = rest.filter((cell) => /^[-+−]?[.,]?\d/.test(cell)).length;
  if (figures > 0) return leave(`At most ${width} figures were expected here, and there are ${width + figures}.`);
  return { fate: 'taken', why: rest.length === 0 ? null : 'The words at its end were not read.', values };
}
