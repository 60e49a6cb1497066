import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import { inFigures, type CsvTable } from '../../export/index.ts';
import type { LandingData } from './marks.ts';

/** The middle of the group as the archer sees it, where it may lie, and how its arrows scatter. */
export function landingTable({ centre, low, high, spread }: LandingData, units: UnitChoice): CsvTable {
  const per = factorOf('drop', units);
  const unit = unitOf('drop', units);
  const row = (what: string, x: number, y: number) => [what, inFigures(x / per), inFigures(y / per)];
  return {
    columns: ['what', `right of the middle (${unit})`, `above it (${unit})`],
    rows: [
      row('centre of the group', centre.x, centre.y),
      row('least of its band', low.x, low.y),
      row('most of its band', high.x, high.y),
      row('one standard deviation of the arrows', spread[0], spread[1]),
    ],
  };
}
