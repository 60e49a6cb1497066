import { exampleMarks, examplePriors, exampleScale, fitMarks, readingAt } from '../../core/aim/index.ts';
import { inch } from '../../core/units/exact.ts';
import type { PaperHead, StripPaper, StripRow } from '../../renderer/print/index.ts';

/** An invented archer's papers. */
export const head: PaperHead = {
  archer: 'Wren Alder, left hand',
  bow: '66 in take-down, 34 lb on the fingers',
  arrows: 'Wren’s dozen, 27 3/4 in, 100 gr point',
  form: 'under the jaw, split, 112 mm from arrow to eye',
  date: '26 November 2026',
  units: 'metres; scale of 1 mm, growing downwards',
};

export const rowOf = (distance: number, reading: number, given: Partial<StripRow> = {}): StripRow => ({
  distance,
  label: String(distance),
  reading: { value: reading, low: reading - 0.5, high: reading + 0.5 },
  weak: false,
  known: false,
  ...given,
});

/** A strip over rows, on a scale of sixteenths of an inch unless it says otherwise. */
export const paperOf = (rows: readonly StripRow[], given: Partial<StripPaper> = {}): StripPaper => ({
  title: 'Sight strip',
  proven: true,
  note: 'Still air, level ground.',
  unit: inch / 16,
  grows: 'down',
  distanceUnit: 'm',
  digits: 1,
  rows,
  ...given,
});

/** Every metre of the set-up that core's own examples go by. */
export function fittedPaper(from: number, to: number): StripPaper {
  const fit = fitMarks(exampleMarks, exampleScale, examplePriors);
  if (!fit.ok) throw new Error(fit.problem.sentence);
  const rows = Array.from({ length: to - from + 1 }, (_, i): StripRow => {
    const distance = from + i;
    const known = exampleMarks.some((mark) => mark.distance === distance);
    return { distance, label: String(distance), reading: readingAt(fit.value, distance), weak: distance > 62, known };
  });
  return paperOf(rows, { ...exampleScale });
}
