import type { UnitChoice } from '../../../core/model/preferences.ts';
import { MOST_READINGS, type SpeedReading } from '../../../core/model/readings.ts';
import {
  blankCell,
  figureCell,
  togetherFromTable,
  togetherOf,
  type EntryColumn,
  type EntryRow,
  type TogetherSheet,
} from '../../design/entry/index.ts';

export type SpeedKey = 'mass' | 'speed';
export type SpeedRow = EntryRow<SpeedKey>;

export const speedColumns: readonly EntryColumn<SpeedKey>[] = [
  { key: 'mass', name: 'arrow’s mass', kind: 'figure', measure: 'arrowMass', also: ['mass', 'arrow', 'weight'] },
  { key: 'speed', name: 'speed', kind: 'figure', measure: 'arrowSpeed', also: ['velocity'] },
];

export const blankSpeed: SpeedRow = { mass: blankCell, speed: blankCell };

const sheet: TogetherSheet<SpeedKey> = {
  columns: speedColumns,
  blank: blankSpeed,
  most: MOST_READINGS,
  belong: 'An arrow’s mass and its speed belong together.',
  called: 'timed arrows',
};

export const speedRows = (speeds: readonly SpeedReading[], units: UnitChoice): readonly SpeedRow[] =>
  speeds.map(({ mass, speed }) => ({
    mass: figureCell(mass, 'arrowMass', units),
    speed: figureCell(speed, 'arrowSpeed', units),
  }));

export const speedsOf = (rows: readonly SpeedRow[], units: UnitChoice) => togetherOf(sheet, rows, units);

export const speedsFromTable = (text: string, units: UnitChoice) => togetherFromTable(sheet, text, units);
