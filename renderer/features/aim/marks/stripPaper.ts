import { isWeak, onBar, type StripRow } from '../../../../core/aim/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { ok, type Result } from '../../../../core/model/problem.ts';
import { unitOf } from '../../../../core/units/index.ts';
import type { StripPaper } from '../../../print/index.ts';
import type { MarksView } from './derive.ts';
import { isSame } from './isSame.ts';
import { knownAt, labelOf, noMarks, restsOn } from './paperWords.ts';
import { readingsOf } from './readings.ts';
import { readText } from './words.ts';

/** What was shot in between the rows, or past the last of them up to an end, for every shot mark has a line of its own. */
function shotBetween({ picture }: Pick<MarksView, 'picture'>, rows: readonly StripRow[], to: number): StripRow[] {
  const from = rows[0]?.distance ?? Infinity;
  const counting = picture.from === 'proven' ? picture.proven.filter(({ leftOut }) => leftOut === null) : [];
  const distances = counting
    .map(({ distance }) => distance)
    .filter((distance, i, all) => !all.slice(0, i).some((other) => isSame(other, distance)))
    .filter((distance) => distance >= from && distance <= to && !rows.some((row) => isSame(row.distance, distance)));
  return readingsOf({ picture, strip: rows }, distances).map((reading, i) => ({
    distance: distances[i] ?? 0,
    reading,
    bar: reading === null ? 'off' : onBar(reading, picture.scale),
  }));
}

/** The strip for the bar out of its rows, as far as an end that need not be a whole distance. */
export function stripPaper(
  view: MarksView,
  asked: readonly StripRow[],
  units: UnitChoice,
  to = asked.at(-1)?.distance ?? 0,
): Result<StripPaper> {
  const { fit, scale } = view.picture;
  if (fit?.ok !== true) return noMarks(view);
  const rows = [...asked, ...shotBetween(view, asked, to)].sort((a, b) => a.distance - b.distance);
  const digits = readText(0, scale).split('.')[1]?.length ?? 0;
  return ok({
    title: 'Sight marks',
    proven: view.picture.from === 'proven',
    note: restsOn(view, fit.value, units),
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
