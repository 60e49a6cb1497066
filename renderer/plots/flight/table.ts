import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import { inFigures, type CsvTable } from '../../export/index.ts';
import type { FlightData } from './data.ts';

/** The flight over the line of sight with its band, in the shown units. */
export function flightTable({ samples }: FlightData, units: UnitChoice): CsvTable {
  const [perDistance, perHeight] = [factorOf('distance', units), factorOf('drop', units)];
  const unit = unitOf('drop', units);
  return {
    columns: [`distance (${unitOf('distance', units)})`, `over the line (${unit})`, `low (${unit})`, `high (${unit})`],
    rows: samples.map(({ distance, value, low, high }) => [
      inFigures(distance / perDistance),
      ...[value, low, high].map((height) => inFigures(height / perHeight)),
    ]),
  };
}
