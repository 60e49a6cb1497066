import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { MOST_READINGS, type FlightSpeed } from '../../../../core/model/readings.ts';
import {
  blankCell,
  figureCell,
  togetherFromTable,
  togetherOf,
  type EntryColumn,
  type EntryRow,
  type TogetherSheet,
} from '../../../design/entry/index.ts';

type Key = 'distance' | 'speed';
export type FlightSpeedRow = EntryRow<Key>;

export const flightSpeedColumns: readonly EntryColumn<Key>[] = [
  { key: 'distance', name: 'distance', kind: 'figure', measure: 'speedDistance', also: ['range', 'at', 'place'] },
  { key: 'speed', name: 'speed', kind: 'figure', measure: 'arrowSpeed', also: ['velocity'] },
];

export const blankFlightSpeed: FlightSpeedRow = { distance: blankCell, speed: blankCell };

const sheet: TogetherSheet<Key> = {
  columns: flightSpeedColumns,
  blank: blankFlightSpeed,
  most: MOST_READINGS,
  belong: 'A speed and the distance that it was read at belong together.',
  called: 'speeds',
};

export const flightSpeedRows = (speeds: readonly FlightSpeed[], units: UnitChoice): readonly FlightSpeedRow[] =>
  speeds.map(({ distance, speed }) => ({
    distance: figureCell(distance, 'speedDistance', units),
    speed: figureCell(speed, 'arrowSpeed', units),
  }));

export const flightSpeedsOf = (rows: readonly FlightSpeedRow[], units: UnitChoice) => togetherOf(sheet, rows, units);

export const flightSpeedsFromTable = (text: string, units: UnitChoice) => togetherFromTable(sheet, text, units);
