import { expect } from 'vitest';
import { wrongIn, wrongSentence, wrongTitle } from './plainText.ts';

/** Nothing wrong anywhere in what a room handed out. */
export function sound(what: string, found: unknown): void {
  expect(wrongIn(found, what)).toEqual([]);
}

export const titles = (...texts: readonly string[]) => expect(texts.flatMap(wrongTitle)).toEqual([]);
export const sentences = (...texts: readonly (string | null)[]) =>
  expect(texts.filter((text) => text !== null && text !== '').flatMap((text) => wrongSentence(text ?? ''))).toEqual([]);
