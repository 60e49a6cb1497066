import type { Band } from '../../model/band.ts';
import type { FittedMarks } from './types.ts';

/** Nobody's mark is called weak for less than this on the bar [m]: from memory, four times what a pin is set to. */
const LEAST = 1e-3;

/**
 * Whether a mark is too unsure to be shot by.
 *
 * @equation half of its 95 % interval above what one arrow scatters, s r, and above 1 mm
 * @param reading - with its 95 % interval, in the scale's numbers [record]
 * @param fit - for spread, sight radius and unit [record]
 * @returns true when it is [choice]
 * @validity any reading
 * @source from memory
 * @example isWeak({ value: 50, low: 45, high: 55 }, fitMarks(exampleMarks, exampleScale, examplePriors).value) // true
 */
export function isWeak({ low, high }: Band, { priors, scale }: Pick<FittedMarks, 'priors' | 'scale'>): boolean {
  const half = ((high - low) / 2) * scale.unit;
  return half > Math.max(LEAST, priors.spreadPerMetre * priors.sightRadius.value);
}
