import type { Dimension } from './dimensions.ts';
import { table, type Unit } from './table.ts';

const spelling = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .normalize('NFKC')
    .replaceAll('.', '')
    .replace(/ ?\bper\b ?| ?\/ ?/g, '/')
    .replace(/[ *-]/g, '·')
    .replace(/^·+|·+$/g, '');

const index = new Map(
  Object.entries(table).map(([dimension, units]) => [
    dimension as Dimension,
    new Map(units.flatMap((unit) => [unit.symbol, ...unit.also].map((name): [string, Unit] => [spelling(name), unit]))),
  ]),
);

/**
 * The unit of just this name, written as plainly as it can be.
 *
 * @equation the name stands in the table, letter for letter
 * @param word - the unit in small letters [text]
 * @param dimension - the dimension that was expected [choice]
 * @returns the unit; null where findUnit may still know the word [record]
 * @validity any text
 * @source own derivation
 * @example unitNamed('mm', 'length').factor // 0.001
 */
export function unitNamed(word: string, dimension: Dimension): Unit | null {
  return index.get(dimension)?.get(word) ?? null;
}

/**
 * The unit that a word means within a dimension.
 *
 * @equation spelling without case, dots and outer spaces; "per" is a slash; space, dash and star are a product
 * @param word - the unit as typed [text]
 * @param dimension - the dimension that was expected [choice]
 * @returns the unit, or null when the dimension has none of that name [record]
 * @validity any text
 * @source nist-sp811
 * @example findUnit('Feet per second', 'speed').symbol // "ft/s"
 */
export function findUnit(word: string, dimension: Dimension): Unit | null {
  return index.get(dimension)?.get(spelling(word)) ?? null;
}

/**
 * Whether a word is a unit of anything at all, so that a wrong unit can be told from a slip of the pen.
 *
 * @equation the word is found in some dimension
 * @param word - the unit as typed [text]
 * @returns true when some dimension has it [choice]
 * @validity any text
 * @source nist-sp811
 * @example isUnit('lbs.') // true
 */
export function isUnit(word: string): boolean {
  const spelt = spelling(word);
  return [...index.values()].some((units) => units.has(spelt));
}
