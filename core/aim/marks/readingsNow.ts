import type { Band } from '../../model/band.ts';
import { movedMarks } from './movedMarks.ts';
import type { MarksPicture } from './marksPicture.ts';
import { usualShots } from './markModel.ts';
import { readingAt } from './readingAt.ts';

/**
 * A reading with what may have moved it since on top.
 *
 * @equation value + Δ, half widths in quadrature on either side
 * @param reading - as the marks that were shot in have it, with 95 % [record]
 * @param moved - Δ with 95 %, in the scale's numbers [record]
 * @returns the reading to try first, with 95 % [record]
 * @validity a move that is independent of the fit
 * @source jcgm-100
 * @example withMove({ value: 50, low: 47, high: 53 }, { value: 2, low: -2, high: 6 }) // {"value":52,"low":47,"high":57}
 */
export function withMove(reading: Band, moved: Band): Band {
  const value = reading.value + moved.value;
  return {
    value,
    low: value - Math.hypot(reading.value - reading.low, moved.value - moved.low),
    high: value + Math.hypot(reading.high - reading.value, moved.high - moved.value),
  };
}

/**
 * What the sight reads for each distance as the set-up stands.
 *
 * @equation readingAt of the fit; of marks that are no longer proven, withMove by movedMarks
 * @param picture - from marksPicture [record]
 * @param distances - R [m]
 * @param shots - arrows that would settle a mark there; Infinity for pin and scale alone [-]
 * @returns a reading with 95 % for each, or null out of reach and where there is no fit [list]
 * @validity as readingAt
 * @source jcgm-100
 * @example readingsNow({ fit: null, change: null }, [50]) // [null]
 */
export function readingsNow(
  { fit, change }: Pick<MarksPicture, 'fit' | 'change'>,
  distances: readonly number[],
  shots: number = usualShots,
): readonly (Band | null)[] {
  if (fit?.ok !== true) return distances.map(() => null);
  return distances.map((distance) => {
    const reading = readingAt(fit.value, distance, shots);
    if (reading === null || change === null) return reading;
    const [moved] = movedMarks(fit.value, change, [distance]);
    return moved === undefined ? null : withMove(reading, moved.moved);
  });
}
