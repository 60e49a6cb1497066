import type { Shot } from '../../../../core/model/group.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../../core/units/index.ts';
import type { CsvTable } from '../../../export/csv.ts';

/** Enough that the tenth of a millimetre, to which shots are kept, comes back. */
const DIGITS = 4;

/** A group's shots as a table, those that were left out too, with the reason. */
export function shotsTable(shots: readonly Shot[], units: UnitChoice): CsvTable {
  const unit = unitOf('setting', units);
  const place = (metres: number) => Number((metres / factorOf('setting', units)).toFixed(DIGITS)) + 0;
  return {
    columns: ['arrow', 'end', `x (${unit})`, `y (${unit})`, 'left out', 'reason'],
    rows: shots.map(({ arrow, end, x, y, leftOut }) => [
      arrow,
      end,
      place(x),
      place(y),
      leftOut === null ? 'no' : 'yes',
      leftOut ?? '',
    ]),
  };
}
