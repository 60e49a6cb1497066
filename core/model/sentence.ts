/** "A", "A and B", "A, B and C". */
export const together = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1) ?? ''}`;

const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** "four", "14": a count of things in a sentence. */
export const countWord = (count: number): string => words[count] ?? String(count);
