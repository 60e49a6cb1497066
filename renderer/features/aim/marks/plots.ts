import { type FittedMarks, isWeak, readingAt, type SightScale, type StripRow } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../../core/units/index.ts';
import type { MarkLineData } from '../../../plots/markLine/marks.ts';
import type { SightStripData } from '../../../plots/sightStrip/marks.ts';
import type { MarksView } from './derive.ts';
import { lineFit } from './lineFit.ts';
import { readingsOf } from './readings.ts';
import { inShownUnit } from './words.ts';

/** A reading as a place on the bar, downward [m]. */
const down = (reading: number, { unit, grows }: SightScale): number => (grows === 'down' ? 1 : -1) * reading * unit;

function placeOf({ value, low, high }: Band, scale: SightScale): Band {
  const [a, b] = [down(low, scale), down(high, scale)];
  return { value: down(value, scale), low: Math.min(a, b), high: Math.max(a, b) };
}

/** The strip as the plot draws it. */
export function stripData(view: MarksView, fit: FittedMarks, rows: readonly StripRow[], units: UnitChoice): SightStripData {
  const { proven, scale, from } = view.picture;
  const factor = factorOf('distance', units);
  const ends = [scale.lowest, scale.highest].map((end) => (end === undefined ? null : down(end, scale)));
  const [one = null, other = null] = ends;
  return {
    samples: rows.map(({ distance, reading }) => ({
      distance: distance / factor,
      place: reading === null ? null : placeOf(reading, scale),
      weak: reading !== null && isWeak(reading, fit),
    })),
    known: proven
      .filter(({ leftOut }) => from === 'proven' && leftOut === null)
      .map(({ distance, reading }) => ({ distance: distance / factor, place: down(reading, scale) })),
    ends: scale.grows === 'down' ? { upper: one, lower: other } : { upper: other, lower: one },
    distanceUnit: unitOf('distance', units),
  };
}

const SAMPLES = 60;

/** The known marks off the fitted line; null where no proven mark is fitted. */
export function lineData(view: MarksView, units: UnitChoice): MarkLineData | null {
  const { picture, rows } = view;
  const { fit, from, of, scale } = picture;
  const drawn = lineFit(view);
  if (fit?.ok !== true || drawn === null || from !== 'proven') return null;
  // The worker's intervals are of the fit that the page goes by.
  const read = (distances: readonly number[]) =>
    drawn === fit.value ? readingsOf(view, distances) : distances.map((distance) => readingAt(drawn, distance));
  const reached = rows.filter(({ reading }) => reading !== null).map(({ distance }) => distance);
  if (reached.length === 0) return null;
  const [near, far] = [Math.min(...reached), Math.max(...reached)];
  const named = inShownUnit(scale, units);
  const along = Array.from({ length: SAMPLES + 1 }, (_, i) => near + ((far - near) * i) / SAMPLES);
  const line = read(along).flatMap((reading, i) => {
    return reading === null ? [] : [{ distance: along[i] ?? 0, half: (reading.high - reading.low) / 2 }];
  });
  const fitted = read(of.map(({ distance }) => distance));
  return {
    line,
    known: of.flatMap(({ distance, reading, leftOut }, i) => {
      const there = fitted[i] ?? null;
      const verdict = fit.value.judged[i]?.verdict;
      if (there === null || verdict === undefined) return [];
      const fits = verdict === 'fits' || verdict === 'alone';
      return [{ distance, off: reading - there.value, fits, counts: leftOut === null }];
    }),
    distanceFactor: factorOf('distance', units),
    distanceUnit: unitOf('distance', units),
    unit: named ? unitOf('setting', units) : 'on the scale',
  };
}
