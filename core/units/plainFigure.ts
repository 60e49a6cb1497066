import type { Dimension } from './dimensions.ts';
import { unitNamed } from './find.ts';
import type { Unit } from './table.ts';

/** A figure with nothing to think about: decimals after a point, or after a comma where it cannot part thousands; a unit after one space. */
const PLAIN = /^(-?)(\d{1,6})(?:\.(\d{1,6})|,(\d\d?))?(?: ([a-z]{1,3}))?$/;

/**
 * The quickest way to read the figures that tables are full of; whatever is not quite so plain is left to the whole reader.
 *
 * @equation ± figure × factor of its unit + its nought, as the whole reader has it
 * @param text - what was typed [text]
 * @param dimension - the dimension that was expected [choice]
 * @param own - the unit of a bare number [record]
 * @returns the SI value; null where the text is not as plain as that, which says nothing against it [SI]
 * @validity any text
 * @source own derivation
 * @example plainFigure('-8.5 mm', 'length', { symbol: 'mm', also: [], factor: 0.001, zero: 0 }) // -0.0085
 */
export function plainFigure(text: string, dimension: Dimension, own: Unit): number | null {
  const found = PLAIN.exec(text);
  if (found === null) return null;
  const [, sign, whole = '', point, comma, word] = found;
  const unit = word === undefined ? own : unitNamed(word, dimension);
  if (unit === null) return null;
  const value = Number(`${whole}.${point ?? comma ?? '0'}`) * unit.factor;
  return (sign === '-' && value !== 0 ? -value : value) + unit.zero;
}
