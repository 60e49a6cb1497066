import type { Band } from '../../model/band.ts';
import { markError, usualShots, Z95 } from './markModel.ts';
import type { FittedMarks } from './types.ts';

/** From memory: what can be made twice as sure by one end or two is worth shooting. */
const TWICE = 2;

/**
 * Whether a mark is so unsure that the usual arrows shot in there would make it at least twice as sure.
 *
 * @equation half of the 95 % interval above 2 × 1.96 σ, σ the error of a mark that six arrows settle
 * @param reading - with its 95 % interval, in the scale's numbers [record]
 * @param fit - for the archer's spread, sight radius and unit [record]
 * @returns true when it is [choice]
 * @validity any reading
 * @source own derivation; from memory
 * @example isWeak({ value: 50, low: 45, high: 55 }, fitMarks(exampleMarks, exampleScale, examplePriors).value) // true
 */
export function isWeak({ low, high }: Band, { priors, scale }: Pick<FittedMarks, 'priors' | 'scale'>): boolean {
  return ((high - low) / 2) * scale.unit > TWICE * Z95 * markError(priors, usualShots);
}
