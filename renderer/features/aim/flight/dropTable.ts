import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf, unitOf, type Use } from '../../../../core/units/index.ts';
import { inFigures, type CsvTable } from '../../../export/index.ts';
import type { TableRow } from '../derive.ts';

/** A column of the table: which figure, how it is shown, and its decimals. */
export interface DropColumn {
  readonly of: 'height' | 'drop' | 'time' | 'speed';
  readonly name: string;
  readonly use: Use;
  readonly digits: number;
}

export const dropColumns = (units: UnitChoice): readonly DropColumn[] => [
  { of: 'height', name: 'over the line', use: 'drop', digits: 0 },
  { of: 'drop', name: 'drop', use: 'drop', digits: 0 },
  { of: 'time', name: 'time', use: 'time', digits: 2 },
  { of: 'speed', name: 'speed left', use: 'speed', digits: units.speed === 'm/s' ? 1 : 0 },
];

/** The table as a file has it: figures and bands, in the shown units; what the arrow does not reach is blank. */
export function dropCsv(rows: readonly TableRow[], units: UnitChoice): CsvTable {
  const columns = dropColumns(units);
  const shown = (band: Band | undefined, use: Use) =>
    (['value', 'low', 'high'] as const).map((end) => (band === undefined ? null : inFigures(band[end] / factorOf(use, units))));
  return {
    columns: [
      `distance (${unitOf('distance', units)})`,
      ...columns.flatMap(({ name, use }) => {
        const unit = unitOf(use, units);
        return [`${name} (${unit})`, `${name}, low (${unit})`, `${name}, high (${unit})`];
      }),
    ],
    rows: rows.map(({ distance, figures }) => [
      inFigures(distance / factorOf('distance', units)),
      ...columns.flatMap(({ of, use }) => shown(figures?.[of], use)),
    ]),
  };
}
