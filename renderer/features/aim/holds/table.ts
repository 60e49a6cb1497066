import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf, unitOf, type Use } from '../../../../core/units/index.ts';
import { inFigures, type CsvTable } from '../../../export/index.ts';
import type { HoldLine } from './derive.ts';

const columns: readonly (readonly [name: string, key: 'hold' | 'over' | 'ground' | 'crawl', use: Use])[] = [
  ['tip against the centre', 'hold', 'drop'],
  ['with the tip on it the arrow strikes', 'over', 'drop'],
  ['marker on the ground', 'ground', 'distance'],
  ['crawl', 'crawl', 'setting'],
];

/** Points of aim with their bands, in the shown units; above the centre positive. */
export function holdsTable(lines: readonly HoldLine[], units: UnitChoice): CsvTable {
  const cells = (band: Band | null, use: Use) =>
    [band?.value, band?.low, band?.high].map((end) => (end === undefined ? null : inFigures(end / factorOf(use, units))));
  return {
    columns: [
      `distance (${unitOf('distance', units)})`,
      ...columns.flatMap(([name, , use]) => ['', ', low', ', high'].map((end) => `${name}${end} (${unitOf(use, units)})`)),
    ],
    rows: lines.map(({ distance, row }) => [
      inFigures(distance / factorOf('distance', units)),
      ...columns.flatMap(([, key, use]) => cells(row?.[key] ?? null, use)),
    ]),
  };
}
