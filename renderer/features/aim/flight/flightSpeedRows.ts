import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { MOST_READINGS, type FlightSpeed } from '../../../../core/model/readings.ts';
import { readTable, type TableRead } from '../../../../core/tables/index.ts';
import {
  blankCell,
  figureCell,
  isBlank,
  rowsOfTable,
  tableColumns,
  wrongIn,
  type EntryColumn,
  type EntryRow,
} from '../../../design/entry/index.ts';

type Key = 'distance' | 'speed';
export type FlightSpeedRow = EntryRow<Key>;

export const flightSpeedColumns: readonly EntryColumn<Key>[] = [
  { key: 'distance', name: 'distance', kind: 'figure', measure: 'speedDistance', also: ['range', 'at', 'place'] },
  { key: 'speed', name: 'speed', kind: 'figure', measure: 'arrowSpeed', also: ['velocity'] },
];

export const blankFlightSpeed: FlightSpeedRow = { distance: blankCell, speed: blankCell };

export const flightSpeedRows = (speeds: readonly FlightSpeed[], units: UnitChoice): readonly FlightSpeedRow[] =>
  speeds.map(({ distance, speed }) => ({
    distance: figureCell(distance, 'speedDistance', units),
    speed: figureCell(speed, 'arrowSpeed', units),
  }));

/** What the rows come to, which row each is of, or why they cannot be kept as they stand. */
export function flightSpeedsOf(
  rows: readonly FlightSpeedRow[],
  units: UnitChoice,
): { readonly speeds: readonly FlightSpeed[]; readonly rowOf: readonly number[]; readonly wrong: string | null } {
  const speeds: FlightSpeed[] = [];
  const rowOf: number[] = [];
  let wrong: string | null = null;
  rows.forEach((row, index) => {
    if (isBlank(row, blankFlightSpeed)) return;
    const unread = flightSpeedColumns
      .map((column) => wrongIn(column, row[column.key], units))
      .find((sentence) => sentence !== null);
    const { distance, speed } = row;
    if (distance.si !== null && speed.si !== null) {
      speeds.push({ distance: distance.si, speed: speed.si });
      rowOf.push(index);
    } else wrong ??= `Row ${index + 1}: ${unread ?? 'A speed and the distance that it was read at belong together.'}`;
  });
  if (wrong === null && speeds.length > MOST_READINGS)
    wrong = `At most ${MOST_READINGS} speeds were expected; these are ${speeds.length}.`;
  return { speeds, rowOf, wrong };
}

export function flightSpeedsFromTable(
  text: string,
  units: UnitChoice,
): { readonly rows: readonly FlightSpeedRow[]; readonly read: TableRead } {
  const columns = tableColumns(flightSpeedColumns).map((column) => ({ ...column, optional: false }));
  const read = readTable(text, columns, units, MOST_READINGS);
  return { rows: rowsOfTable(read, flightSpeedColumns, blankFlightSpeed, units), read };
}
