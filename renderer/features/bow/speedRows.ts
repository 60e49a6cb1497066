import type { UnitChoice } from '../../../core/model/preferences.ts';
import { MOST_READINGS, type SpeedReading } from '../../../core/model/readings.ts';
import { readTable, type TableRead } from '../../../core/tables/index.ts';
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

export type SpeedKey = 'mass' | 'speed';
export type SpeedRow = EntryRow<SpeedKey>;

export const speedColumns: readonly EntryColumn<SpeedKey>[] = [
  { key: 'mass', name: 'arrow’s mass', kind: 'figure', measure: 'arrowMass', also: ['mass', 'arrow', 'weight'] },
  { key: 'speed', name: 'speed', kind: 'figure', measure: 'arrowSpeed', also: ['velocity'] },
];

export const blankSpeed: SpeedRow = { mass: blankCell, speed: blankCell };

export const speedRows = (speeds: readonly SpeedReading[], units: UnitChoice): readonly SpeedRow[] =>
  speeds.map(({ mass, speed }) => ({
    mass: figureCell(mass, 'arrowMass', units),
    speed: figureCell(speed, 'arrowSpeed', units),
  }));

/** What the rows come to, or why they cannot be kept as they stand. */
export function speedsOf(
  rows: readonly SpeedRow[],
  units: UnitChoice,
): { readonly speeds: readonly SpeedReading[]; readonly wrong: string | null } {
  const speeds: SpeedReading[] = [];
  let wrong: string | null = null;
  rows.forEach((row, index) => {
    if (isBlank(row, blankSpeed)) return;
    const unread = speedColumns.map((column) => wrongIn(column, row[column.key], units)).find((sentence) => sentence !== null);
    const { mass, speed } = row;
    if (mass.si !== null && speed.si !== null) speeds.push({ mass: mass.si, speed: speed.si });
    else wrong ??= `Row ${index + 1}: ${unread ?? 'An arrow’s mass and its speed belong together.'}`;
  });
  if (wrong === null && speeds.length > MOST_READINGS)
    wrong = `At most ${MOST_READINGS} timed arrows were expected; these are ${speeds.length}.`;
  return { speeds, wrong };
}

export function speedsFromTable(
  text: string,
  units: UnitChoice,
): { readonly rows: readonly SpeedRow[]; readonly read: TableRead } {
  const columns = tableColumns(speedColumns).map((column) => ({ ...column, optional: false }));
  const read = readTable(text, columns, units, MOST_READINGS);
  return { rows: rowsOfTable(read, speedColumns, blankSpeed, units), read };
}
