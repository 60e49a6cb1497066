import { inFigures, type CsvTable } from '../../export/index.ts';
import type { TimelineData } from './data.ts';

/** A wall time as people write it, year first. */
const when = (at: number): string => new Date(at).toISOString().slice(0, 16).replace('T', ' ');

/** "8 3/4" and "−2" as a spreadsheet reads them. */
function inDecimals(text: string): number | string {
  const parts = text
    .replace('−', '')
    .split(' ')
    .map((part) => {
      const [above = Number.NaN, below = 1] = part.split('/').map(Number);
      return above / below;
    });
  const size = parts.reduce((sum, part) => sum + part, 0);
  if (!Number.isFinite(size)) return text;
  return text.startsWith('−') ? -size : size;
}

/** Group sizes, then the steps of each setting and how it stands now, then the snapshots. */
export const timelineTable = ({ sizes, lanes, flags }: TimelineData): CsvTable => ({
  columns: ['what', 'when', 'figure', 'low', 'high', 'unit', 'arrows'],
  rows: [
    ...sizes.points.map(({ at, value, low, high, shots, tried }) => [
      tried === undefined ? sizes.name : `${sizes.name}: ${tried}`,
      when(at),
      ...[value, low, high].map(inFigures),
      sizes.small,
      shots,
    ]),
    ...lanes.flatMap(({ name, unit, steps, tried = [], now }) => [
      ...steps.map(({ at, text }) => [name, when(at), inDecimals(text), null, null, unit, null]),
      ...tried.map(({ at, text }) => [`${name}, tried`, when(at), inDecimals(text), null, null, unit, null]),
      ...(now === null ? [] : [[name, 'now', inDecimals(now.text), null, null, unit, null]]),
    ]),
    ...flags.map(({ name, at, trial }) => [
      `${trial === true ? 'trial' : 'snapshot'}: ${name}`,
      when(at),
      null,
      null,
      null,
      null,
      null,
    ]),
  ],
});
