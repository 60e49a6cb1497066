import { inFigures, type CsvTable } from '../../export/index.ts';
import type { HeightsData } from './marks.ts';

/** How much higher the one arrow strikes than the other, distance by distance, with the band. */
export const heightsTable = ({ samples, distanceUnit, unit, reference, other }: HeightsData): CsvTable => ({
  columns: [`distance (${distanceUnit})`, `${other} over ${reference} (${unit})`, `low (${unit})`, `high (${unit})`],
  rows: samples.map(({ distance, value, low, high }) => [distance, ...[value, low, high].map(inFigures)]),
});
