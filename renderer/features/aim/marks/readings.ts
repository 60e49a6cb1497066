import { type MarksPicture, readingsNow, type StripRow } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import { isSame } from './isSame.ts';

/**
 * Intervals to first order are there at once; the worker's keep the bends of the model and come a moment later. From then on table, headline,
 * plots and papers all have the worker's, since two intervals for one distance are one too many. The reading itself is the same in both.
 */
export function readingsOf(
  { picture, strip }: { readonly picture: MarksPicture; readonly strip: readonly StripRow[] | null },
  distances: readonly number[],
): readonly (Band | null)[] {
  const readings = readingsNow(picture, distances);
  return strip === null ? readings : readings.map((reading, i) => finer(reading, distances[i] ?? 0, strip));
}

/** Between two rows of the strip each end as far off as the two have it, in proportion; beyond them as it was. */
function finer(reading: Band | null, distance: number, strip: readonly StripRow[]): Band | null {
  const own = strip.find((row) => isSame(row.distance, distance));
  if (own !== undefined) return own.reading;
  const after = strip.findIndex((row) => row.distance > distance);
  const [near, far] = [strip[after - 1], strip[after]];
  if (reading === null || near?.reading == null || far?.reading == null) return reading;
  const part = (distance - near.distance) / (far.distance - near.distance);
  const between = (a: number, b: number) => a + part * (b - a);
  const [a, b] = [near.reading, far.reading];
  return {
    value: reading.value,
    low: reading.value - between(a.value - a.low, b.value - b.low),
    high: reading.value + between(a.high - a.value, b.high - b.value),
  };
}
