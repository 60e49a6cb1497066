import { yard } from '../../units/exact.ts';

/**
 * A distance in a sentence, in both units that ranges are laid out in.
 *
 * @equation "50 m (55 yd)", a decimal only where there is one
 * @param distance - [m]
 * @returns the words [text]
 * @validity any finite distance
 * @source own derivation
 * @example farWords(50) // "50 m (55 yd)"
 */
export function farWords(distance: number): string {
  return `${Number(distance.toFixed(1))} m (${(distance / yard).toFixed(0)} yd)`;
}

/**
 * A reading of a sight's scale in a sentence.
 *
 * @equation as many decimals as a tenth of a millimetre on the bar has
 * @param reading - in the scale's numbers [-]
 * @param unit - one unit of the scale [m]
 * @returns the words [text]
 * @validity any finite reading
 * @source own derivation
 * @example readWords(52.34, 0.001) // "52.3"
 */
export function readWords(reading: number, unit: number): string {
  const decimals = Math.min(4, Math.max(0, Math.ceil(Math.log10(unit / 1e-4) - 1e-9)));
  return reading.toFixed(decimals);
}
