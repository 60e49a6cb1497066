import { inFigures, type CsvTable } from '../../export/index.ts';
import type { OverlayData } from './marks.ts';

/** Each centre off the origin with the radius that holds it, then the shots where they are drawn. */
export const overlayTable = ({ entries, origin, unit }: OverlayData): CsvTable => ({
  columns: ['set-up', 'what', `right of the ${origin} (${unit})`, `above it (${unit})`, `holds the centre with 95 % (${unit})`],
  rows: entries.flatMap(({ name, centre, radius, shots }) => [
    [name, 'centre', inFigures(centre.x), inFigures(centre.y), inFigures(radius)],
    ...shots.map(({ x, y }) => [name, 'shot', inFigures(x), inFigures(y), null]),
  ]),
});
