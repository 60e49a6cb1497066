import { textWidth } from '../textWidth.ts';

/** What is read at a place: the place in ink, then figures, the most asked for first. */
export interface Said {
  readonly where: string;
  readonly figures: readonly string[];
}

export interface Line {
  readonly where: string;
  readonly figures: string;
  readonly x: number;
}

const GAP = 8;

/** The reading as one line over the place it speaks of; what does not fit into the width is left out, from the end. */
export function readoutLine({ where, figures }: Said, at: number, width: number): Line {
  for (let count = figures.length; ; count--) {
    const text = figures.slice(0, count).join(', ');
    const wide = textWidth(where, 14, 'strong') + (count === 0 ? 0 : GAP + textWidth(text, 13, 'note'));
    if (wide <= width || count === 0) return { where, figures: text, x: Math.max(0, Math.min(width - wide, at - wide / 2)) };
  }
}
