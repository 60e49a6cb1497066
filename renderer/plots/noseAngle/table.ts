import type { BareFletchedAt } from '../../../core/aim/index.ts';
import type { Band } from '../../../core/model/band.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import { inFigures, type CsvTable } from '../../export/index.ts';
import { arrows } from './marks.ts';

/** Both arrows' noses and places by distance, with their bands, in the shown units. */
export function noseTable(samples: readonly BareFletchedAt[], units: UnitChoice): CsvTable {
  const unit = unitOf('setting', units);
  const band = ({ value, low, high }: Band, factor: number) => [value, low, high].map((figure) => inFigures(figure / factor));
  const heads = (what: string, in_: string) => [`${what} (${in_})`, `${what}, low (${in_})`, `${what}, high (${in_})`];
  return {
    columns: [
      `distance (${unitOf('distance', units)})`,
      ...arrows.flatMap((arrow) => [...heads(`${arrow}, nose`, '°'), ...heads(`${arrow}, aside`, unit)]),
      ...heads('bare farther aside', unit),
    ],
    rows: samples.map((one) => [
      inFigures(one.distance / factorOf('distance', units)),
      ...arrows.flatMap((arrow) => [
        ...band(one[arrow].angle, Math.PI / 180),
        ...band(one[arrow].aside, factorOf('setting', units)),
      ]),
      ...band(one.apart, factorOf('setting', units)),
    ]),
  };
}
