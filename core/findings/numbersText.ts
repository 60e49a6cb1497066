import { together } from '../model/sentence.ts';

/** More numbers than this are counted and not listed. */
const MOST_LISTED = 5;

/**
 * Arrows by their numbers, in a title.
 *
 * @equation "Arrow 3", "Arrows 3 and 8"; of more than five the first four and how many more
 * @param numbers - the numbers on the arrows, lowest first [list]
 * @returns for instance "Arrows 3, 5 and 8" [text]
 * @validity one number or more
 * @source own derivation
 * @example numbersText([3, 5, 8]) // "Arrows 3, 5 and 8"
 */
export function numbersText(numbers: readonly number[]): string {
  const words = numbers.map(String);
  const told =
    numbers.length > MOST_LISTED ? [...words.slice(0, MOST_LISTED - 1), `${numbers.length - MOST_LISTED + 1} more`] : words;
  return `${numbers.length === 1 ? 'Arrow' : 'Arrows'} ${together(told)}`;
}
