import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import { inFigures, type CsvTable } from '../../export/index.ts';
import type { DrawnGroup } from './marks.ts';

/** Every shot as the archer sees it, those left out too, with the reason. */
export function shotsTable(groups: readonly Pick<DrawnGroup, 'name' | 'shots'>[], units: UnitChoice): CsvTable {
  const per = factorOf('setting', units);
  const unit = unitOf('setting', units);
  return {
    columns: ['group', 'end', 'arrow', `right of the centre (${unit})`, `above it (${unit})`, 'left out because'],
    rows: groups.flatMap(({ name, shots }) =>
      shots.map(({ x, y, end, arrow, leftOut }) => [name, end, arrow, inFigures(x / per), inFigures(y / per), leftOut]),
    ),
  };
}
