import { inFigures, type CsvTable } from '../../export/index.ts';
import type { MarkLineData } from './marks.ts';

/** The known marks with what they are off by. */
export const markLineTable = ({ known, distanceFactor, distanceUnit, unit }: MarkLineData): CsvTable => ({
  columns: [`distance (${distanceUnit})`, `off the fitted line (${unit})`, 'fits', 'counts'],
  rows: known.map(({ distance, off, fits, counts }) => [
    inFigures(distance / distanceFactor),
    inFigures(off),
    fits ? 'yes' : 'no',
    counts ? 'yes' : 'no',
  ]),
});
