import type { XmlNode } from '../export/xml.ts';
import type { Lettering } from '../plots/textWidth.ts';
import { wrapped } from '../plots/wrapped.ts';
import { shortened, written } from './ink.ts';

/** Of a line, against its type [-]. */
const LEADING = 1.36;

interface Paragraph {
  readonly nodes: readonly XmlNode[];
  /** The top of what may stand under it [mm]. */
  readonly bottom: number;
}

/** Lines of words under a height; with a most of lines, what is over is cut off with a sign of it. */
export function paragraph(
  words: string,
  place: { readonly x: number; readonly top: number; readonly width: number },
  size: number,
  lettering: Lettering = 'text',
  most = Infinity,
): Paragraph {
  const { x, top, width } = place;
  // What is measured here and what a reader's own typeface takes differ a little.
  const all = wrapped(words, 0.985 * width, size, lettering);
  const kept = all.length <= most ? all : [...all.slice(0, most - 1), all.slice(most - 1).join(' ')];
  const line = LEADING * size;
  return {
    nodes: kept.map((text, i) =>
      written(shortened(text, width, size, lettering), x, top + 0.95 * size + i * line, lettering, size),
    ),
    bottom: top + kept.length * line,
  };
}
