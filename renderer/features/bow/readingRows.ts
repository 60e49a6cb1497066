import { AMO_ADDS } from '../../../core/bow/index.ts';
import { limits } from '../../../core/model/limits.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { MOST_READINGS, type ForceReading } from '../../../core/model/readings.ts';
import { readTable, type TableColumn, type TableRead } from '../../../core/tables/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import {
  blankCell,
  figureCell,
  isBlank,
  rowsOfTable,
  tableColumns,
  wrongIn,
  type EntryColumn,
  type EntryRow,
} from '../../design/entry/index.ts';

/** Where a draw is read from: to the AMO's line, 1 3/4 in beyond the pivot, or to the pivot of the grip itself. */
export type DrawDatum = 'AMO' | 'grip';

export type ReadingKey = 'draw' | 'force' | 'down';
export type ReadingRow = EntryRow<ReadingKey>;

const draw: EntryColumn<ReadingKey> = {
  key: 'draw',
  name: 'draw',
  kind: 'figure',
  measure: 'readingDraw',
  also: ['draw length'],
};
const force: EntryColumn<ReadingKey> = {
  key: 'force',
  name: 'force',
  kind: 'figure',
  measure: 'readingForce',
  also: ['weight', 'pull', 'up', 'drawing', 'force up'],
};
const down: EntryColumn<ReadingKey> = {
  key: 'down',
  name: 'letting down',
  kind: 'figure',
  measure: 'readingForce',
  also: ['down', 'let down', 'let-down', 'force down', 'letdown'],
};

export const readingColumns = (letDown: boolean): readonly EntryColumn<ReadingKey>[] =>
  letDown ? [draw, force, down] : [draw, force];

export const blankReading: ReadingRow = { draw: blankCell, force: blankCell, down: blankCell };

/** The readings as rows: what was read while letting down stands beside what was read at that draw on the way up. */
export function readingRows(readings: readonly ForceReading[], units: UnitChoice): readonly ReadingRow[] {
  const rows: { draw: number; force: number | null; down: number | null }[] = [];
  for (const reading of readings) {
    const beside = reading.way === 'draw' ? undefined : rows.find((row) => row.draw === reading.draw && row.down === null);
    if (beside !== undefined) beside.down = reading.force;
    else if (reading.way === 'draw') rows.push({ draw: reading.draw, force: reading.force, down: null });
    else rows.push({ draw: reading.draw, force: null, down: reading.force });
  }
  return rows.map((row) => ({
    draw: figureCell(row.draw, 'readingDraw', units),
    force: figureCell(row.force, 'readingForce', units),
    down: figureCell(row.down, 'readingForce', units),
  }));
}

interface Kept {
  /** Upward ones first, in the order of the rows, then those of letting down. */
  readonly readings: readonly ForceReading[];
  /** The row that each reading stands in. */
  readonly rowOf: readonly number[];
  /** Why the rows cannot be kept as they stand. */
  readonly wrong: string | null;
}

/** What the rows come to, as AMO draws. */
export function readingsOf(rows: readonly ReadingRow[], datum: DrawDatum, units: UnitChoice): Kept {
  const add = datum === 'grip' ? AMO_ADDS : 0;
  const up: [ForceReading, number][] = [];
  const back: [ForceReading, number][] = [];
  let wrong: string | null = null;
  const refuse = (index: number, sentence: string) => (wrong ??= `Row ${index + 1}: ${sentence}`);
  rows.forEach((row, index) => {
    if (isBlank(row, blankReading)) return;
    const unread = readingColumns(true).map((column) => wrongIn(column, row[column.key], units));
    const first = unread.find((sentence) => sentence !== null);
    if (first !== undefined) return refuse(index, first ?? '');
    if (row.draw.si === null) return refuse(index, 'A force needs the draw that it was read at.');
    if (row.force.si === null && row.down.si === null) return refuse(index, 'A draw needs the force that was read at it.');
    const at = row.draw.si + add;
    if (at > limits.readingDraw.max)
      return refuse(index, `From the grip it is a draw of ${textQuantity(at, 'length', units)}, which is more than can be.`);
    if (row.force.si !== null) up.push([{ draw: at, force: row.force.si, way: 'draw' }, index]);
    if (row.down.si !== null) back.push([{ draw: at, force: row.down.si, way: 'let-down' }, index]);
  });
  const all = [...up, ...back];
  if (wrong === null && all.length > MOST_READINGS)
    wrong = `At most ${MOST_READINGS} readings were expected; these are ${all.length}.`;
  return { readings: all.map(([reading]) => reading), rowOf: all.map(([, index]) => index), wrong };
}

const wayColumn: TableColumn = {
  name: 'way',
  also: ['direction', 'drawing or letting down'],
  words: [
    ['draw', 'drawing', 'up', 'd'],
    ['let-down', 'let down', 'letting down', 'letdown', 'down', 'l'],
  ],
  optional: true,
};

/** A table of readings: draw and force, and either a second force, of letting down, or a word that says which way each was read. */
export function readingsFromTable(
  text: string,
  units: UnitChoice,
): { readonly rows: readonly ReadingRow[]; readonly read: TableRead } {
  const columns = readingColumns(true);
  const two = tableColumns(columns.slice(0, 2)).map((column) => ({ ...column, optional: false }));
  const three = tableColumns(columns).map((column, i) => ({ ...column, optional: i > 1 }));
  const forces = readTable(text, three, units, MOST_READINGS);
  const words = readTable(text, [...two, wayColumn], units, MOST_READINGS);
  const byWord = words.taken > forces.taken || (words.taken === forces.taken && words.rows.some(({ values }) => values[2] === 1));
  const read = byWord ? words : forces;
  const rows = rowsOfTable(read, columns, blankReading, units, ([at = null, pull = null, third = null]) =>
    byWord ? (third === 1 ? [at, null, pull] : [at, pull, null]) : [at, pull, third],
  );
  return { rows, read };
}
