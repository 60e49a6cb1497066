import { isWeak, type StripRow } from '../../../../core/aim/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { ok, type Result } from '../../../../core/model/problem.ts';
import { unitOf } from '../../../../core/units/index.ts';
import type { StripPaper } from '../../../print/index.ts';
import type { MarksView } from './derive.ts';
import { knownAt, labelOf, noMarks, restsOn } from './paperWords.ts';
import { readText } from './words.ts';

/** The strip for the bar out of its rows. */
export function stripPaper(view: MarksView, rows: readonly StripRow[], units: UnitChoice): Result<StripPaper> {
  const { fit, scale } = view.picture;
  if (fit?.ok !== true) return noMarks(view);
  const digits = readText(0, scale).split('.')[1]?.length ?? 0;
  return ok({
    title: 'Sight marks',
    note: restsOn(view, fit.value),
    unit: scale.unit,
    grows: scale.grows,
    distanceUnit: unitOf('distance', units),
    rows: rows.map(({ distance, reading }) => ({
      distance,
      label: labelOf(distance, units),
      reading,
      weak: reading !== null && isWeak(reading, fit.value),
      known: knownAt(view, distance),
    })),
    ...(scale.lowest === undefined ? {} : { lowest: scale.lowest }),
    ...(scale.highest === undefined ? {} : { highest: scale.highest }),
    digits,
  });
}
