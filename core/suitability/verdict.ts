/** How a shaft stands to what is needed. */
export type Fit = 'stiff' | 'in range' | 'weak';
export type Verdict = Fit | 'cannot tell';

/** A range of needed deflection on the standard tester [m]; below it a shaft is stiff, above it weak. */
export interface Needed {
  readonly low: number;
  readonly high: number;
}

/** A shaft on the very limit, but for rounding, is in range. */
const ROUNDING = 1e-9;

/**
 * How a figure that grows with weakness stands to its band.
 *
 * @equation stiff below low, weak above high, else in range
 * @param figure - deflection or column figure of the shaft [-]
 * @param band - low and high, in the same unit [record]
 * @returns stiff, in range or weak [choice]
 * @validity RangeError for a figure that is not finite
 * @source own derivation
 * @example fitOf(1.2, { low: 1.3, high: 1.6 }) // "stiff"
 */
export function fitOf(figure: number, band: Needed): Fit {
  if (!Number.isFinite(figure)) throw new RangeError(`figure must be finite, not ${figure}.`);
  if (figure < band.low * (1 - ROUNDING)) return 'stiff';
  if (figure > band.high * (1 + ROUNDING)) return 'weak';
  return 'in range';
}

/**
 * One verdict from the fits at both ends of an uncertain draw weight.
 *
 * @equation the common fit when both ends agree, else cannot tell
 * @param atLow - fit at the low end of the weight [choice]
 * @param atHigh - fit at the high end of the weight [choice]
 * @returns stiff, in range, weak or cannot tell [choice]
 * @validity any two fits
 * @source own derivation
 * @example settled('stiff', 'in range') // "cannot tell"
 */
export function settled(atLow: Fit, atHigh: Fit): Verdict {
  return atLow === atHigh ? atLow : 'cannot tell';
}
