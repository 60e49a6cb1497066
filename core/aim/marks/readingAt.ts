import type { Band } from '../../model/band.ts';
import { usualShots } from './markModel.ts';
import { expectedPlace, readingBand } from './expectedFrom.ts';
import type { FittedMarks } from './types.ts';

/**
 * What the sight will read for a distance, with 95 %.
 *
 * @equation q(R) ± 1.96 S √(g C gᵀ + σ²), as a reading
 * @param fit - from `fitMarks` [record]
 * @param distance - R, from the eye [m]
 * @param shots - arrows that would settle a mark there: its own error counts; Infinity for that of pin and scale alone [-]
 * @returns the reading with its interval in the scale's numbers, whether or not it lies on the bar; null out of reach [record]
 * @validity level ground, still air; as long as archer, bow, arrow and form stay; throws RangeError for fewer shots than one
 * @source jcgm-100
 * @example readingAt(fitMarks(exampleMarks, exampleScale, examplePriors).value, 40).value.toFixed(0) // "66"
 */
export function readingAt(fit: FittedMarks, distance: number, shots: number = usualShots): Band | null {
  if (!(shots >= 1)) throw new RangeError('A number of arrows from 1 on was expected.');
  const expected = expectedPlace(fit, fit.wider, fit.priors, distance, shots);
  return expected === null ? null : readingBand(expected, fit.scale);
}

/** Where a reading stands against the ends of the bar: on it, off it, or on one side of an end only with some chance. */
export type OnBar = 'on' | 'off' | 'in doubt';

/**
 * Whether a reading is on the sight's bar.
 *
 * @equation on when the whole interval is, off when none of it is
 * @param reading - with its interval [record]
 * @param scale - with the ends of the bar, where they are known [record]
 * @returns on, off or in doubt [choice]
 * @validity ends that nobody gave are taken as far away
 * @source own derivation
 * @example onBar({ value: 129, low: 127, high: 131 }, exampleScale) // "in doubt"
 */
export function onBar(reading: Band, { lowest = -Infinity, highest = Infinity }: FittedMarks['scale']): OnBar {
  if (reading.high < lowest || reading.low > highest) return 'off';
  return reading.low >= lowest && reading.high <= highest ? 'on' : 'in doubt';
}
