import { textWidth, type Lettering } from './textWidth.ts';

/** Lines of words, none wider than there is room; a word that is wider stands alone, and a figure stays with its fraction and its unit. */
export function wrapped(words: string, width: number, size: number, lettering: Lettering = 'text'): readonly string[] {
  const lines: string[] = [];
  for (const word of words.replace(/(\d) (?=\S)/g, '$1\u00a0').split(' ')) {
    const last = lines.at(-1);
    const longer = `${last ?? ''} ${word}`;
    if (last !== undefined && textWidth(longer, size, lettering) <= width) lines[lines.length - 1] = longer;
    else if (word !== '') lines.push(word);
  }
  return lines.map((line) => line.replaceAll('\u00a0', ' '));
}
