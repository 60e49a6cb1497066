import { isWeak, type StripRow } from '../../../../core/aim/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../../core/units/index.ts';
import { inFigures, type CsvTable } from '../../../export/index.ts';
import type { MarksView } from './derive.ts';
import { farText, halfText, readText } from './words.ts';

/** The strip in a sentence, for those who hear it. */
export function stripSentence(rows: readonly StripRow[], { picture: { scale } }: MarksView, units: UnitChoice): string {
  const told = rows.filter(({ reading }) => reading !== null);
  const [first, last] = [told[0], told.at(-1)];
  if (first?.reading == null || last?.reading == null) return 'No distance of the strip is in reach.';
  const ends = [first, last].map(({ distance, reading }) =>
    reading === null ? '' : `${readText(reading.value, scale)} for ${farText(distance, units)}, ${halfText(reading, scale)}`,
  );
  return `The sight's strip: ${ends.join('; ')}.`;
}

export function stripTable(rows: readonly StripRow[], { picture }: MarksView, units: UnitChoice): CsvTable {
  const fit = picture.fit?.ok === true ? picture.fit.value : null;
  return {
    columns: [`distance (${unitOf('distance', units)})`, 'mark', '95 % from', '95 % to', 'sure enough', 'on the bar'],
    rows: rows.map(({ distance, reading, bar }) => [
      inFigures(distance / factorOf('distance', units)),
      ...(reading === null ? [null, null, null] : [reading.value, reading.low, reading.high].map(inFigures)),
      reading === null || fit === null ? null : isWeak(reading, fit) ? 'no' : 'yes',
      reading === null ? null : bar,
    ]),
  };
}
