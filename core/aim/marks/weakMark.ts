import type { Band } from '../../model/band.ts';
import { markError, usualShots, Z95 } from './markModel.ts';
import type { FittedMarks } from './types.ts';

/** What can be narrowed by a quarter with an end or two is worth shooting: from memory. */
const NARROWED = 0.75;
/** Marks that miss one another by so many times what chance does say nothing surely: from memory. */
const TORN = 3;

/**
 * Whether a mark is so unsure that the usual arrows shot in there would narrow its interval by a quarter or more.
 *
 * @equation √(σ² + v σ²/(v + σ²)) ≤ 0.75 √(v + σ²), σ the error of a mark that six arrows settle and √(v + σ²) half of the interval over 1.96 S; all are with S above 3
 * @param reading - with its 95 % interval, in the scale's numbers [record]
 * @param fit - for the archer's spread, sight radius, unit and S [record]
 * @returns true when it is [choice]
 * @validity any reading
 * @source own derivation; from memory
 * @example isWeak({ value: 50, low: 45, high: 55 }, fitMarks(exampleMarks, exampleScale, examplePriors).value) // true
 */
export function isWeak({ low, high }: Band, { priors, scale, wider }: Pick<FittedMarks, 'priors' | 'scale' | 'wider'>): boolean {
  if (wider > TORN) return true;
  const own = markError(priors, usualShots) ** 2;
  const now = (((high - low) / 2) * scale.unit) / (Z95 * wider);
  const known = Math.max(0, now * now - own);
  return own + (known * own) / (known + own) <= NARROWED ** 2 * now * now;
}
