import { limits } from '../model/limits.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import { readTable } from './readTable.ts';
import { layoutOf, type ShotLayout } from './shotColumns.ts';
import type { TableRead, TableRow } from './table.ts';

/** How the figures of a table of shots are to be taken. */
export interface ShotsAsked {
  /** In which order the columns stand where no heads say it; null leaves it to the table. */
  readonly layout: ShotLayout | null;
  /** The unit of bare numbers that no head gives one; empty for the person's own. */
  readonly unit: string;
  /** Where the table's nought lies, from the centre of the face, x right and y up [m]. */
  readonly origin: { readonly x: number; readonly y: number };
  /** Which way the table's second figure grows. */
  readonly yGrows: 'up' | 'down';
}

/** A line of the table as a shot: metres from the centre of the face, x right, y up. */
export interface ReadShot {
  readonly line: number;
  readonly x: number;
  readonly y: number;
  readonly arrow: number | null;
  readonly end: number | null;
  readonly leftOut: string | null;
}

export interface ShotsRead {
  readonly shots: readonly ReadShot[];
  readonly read: TableRead;
  /** The order of the columns that was found or chosen; null where heads said it. */
  readonly layout: ShotLayout | null;
}

/** Places on a face are kept to the tenth of a millimetre. */
const tenth = (metres: number): number => Math.round(metres * 1e4) / 1e4 + 0;
const keyOf = (shot: Omit<ReadShot, 'line' | 'leftOut'>): string => `${shot.x} ${shot.y} ${shot.arrow} ${shot.end}`;

/**
 * Reads a pasted table or the text of a CSV file as shots, and says of every line what became of it.
 *
 * @equation x = x₀ + x', y = y₀ ± y', to the tenth of a millimetre; a shot farther out than can be is left out, one that stands there already is kept and told
 * @param text - what was pasted [text]
 * @param asked - unit, origin, direction and order of the columns [record]
 * @param units - the person's choice of units [record]
 * @param there - shots that the group has already, so that a table pasted twice is seen [list]
 * @param most - lines that are read at most [-]
 * @returns the shots in the order of their lines, every line with its fate, and the order of the columns [record]
 * @validity any text; blank lines are passed over; nothing is NaN and no shot farther than 3 m from the centre on either axis
 * @source own derivation
 * @example readShots('x (cm);y (cm)\n1,2;-0,8', { layout: null, unit: '', origin: { x: 0, y: 0 }, yGrows: 'up' }, defaultPreferences.units).shots[0].y // -0.008
 */
export function readShots(
  text: string,
  asked: ShotsAsked,
  units: UnitChoice,
  there: readonly Omit<ReadShot, 'line'>[] = [],
  most: number = 20_000,
): ShotsRead {
  const { layout, columns } = layoutOf(text, asked, units);
  const read = readTable(text, columns, units, most);
  const place = (name: string) => columns.findIndex((column) => column.name === name);
  const [x, y, arrow, end, out, reason] = ['x', 'y', 'arrow', 'end', 'left out', 'reason'].map(place);
  const reasonAt = read.columns[reason ?? -1]?.place ?? -1;
  const known = new Set(there.map(keyOf));
  const lines = new Map<string, number>();
  const shots: ReadShot[] = [];
  const rows = read.rows.map((row): TableRow => {
    if (row.fate !== 'taken') return row;
    const value = (at: number | undefined) => row.values[at ?? -1] ?? null;
    const shot = {
      line: row.line,
      x: tenth(asked.origin.x + (value(x) ?? 0)),
      y: tenth(asked.origin.y + (asked.yGrows === 'up' ? 1 : -1) * (value(y) ?? 0)),
      arrow: value(arrow),
      end: value(end),
      leftOut: value(out) === 1 ? reasonOf(row.cells[reasonAt]) : null,
    };
    if (Math.max(Math.abs(shot.x), Math.abs(shot.y)) > limits.shotOffset.max) {
      const why = `From there it lies more than ${textQuantity(limits.shotOffset.max, 'setting', units)} from the centre of the face.`;
      return { ...row, fate: 'left out', why, values: row.values.map(() => null) };
    }
    const key = keyOf(shot);
    const first = lines.get(key);
    lines.set(key, first ?? row.line);
    shots.push(shot);
    const same = first !== undefined ? `line ${first}` : known.has(key) ? 'a shot of the group' : null;
    if (same === null) return row;
    const told = `The same as ${same}; kept all the same.`;
    return { ...row, why: row.why === null ? told : `${row.why} ${told}` };
  });
  const leftOut = rows.filter(({ fate }) => fate === 'left out').length;
  return { shots, layout, read: { ...read, rows, taken: shots.length, leftOut } };
}

/** A reason that was written out with an apostrophe before it, lest it be taken for a formula, comes back without. */
const reasonOf = (cell: string | undefined): string => {
  const reason = (cell ?? '')
    .replace(/^'(?=[=+\-@\t\r])/, '')
    .trim()
    .slice(0, 200)
    .trim();
  return reason === '' ? 'left out in the table it came from' : reason;
};
