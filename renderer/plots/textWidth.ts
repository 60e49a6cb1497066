/** How a plot is lettered: ticks, notes, figures, and italic names. */
export type Lettering = 'text' | 'note' | 'strong' | 'name';

// Advance widths of the characters from the space to the tilde, in hundredths of the type size, measured in the browser: Source Sans 3 at
// 400 and at 600, Source Serif 4 italic at 400. A label's box must be known before it is drawn, or labels could touch.
const sans =
  '20 29 43 50 50 82 61 25 30 30 42 50 25 31 25 35 50 50 50 50 50 50 50 50 50 50 25 25 50 50 50 42 85 54 59 57 61 53 49 62 65 26 48 58 49 73 65 66 57 66 57 53 54 64 51 79 51 48 54 30 35 30 50 50 54 50 55 46 55 50 29 50 54 25 25 49 25 83 55 54 55 55 35 42 34 54 47 72 45 47 42 30 24 30 50';
const strong =
  '20 31 48 51 51 84 64 27 32 32 44 51 27 32 27 34 51 51 51 51 51 51 51 51 51 51 27 27 51 51 51 44 87 56 60 58 62 54 51 63 66 28 49 60 50 74 66 67 58 67 59 54 55 65 54 80 54 50 54 32 34 32 51 50 55 52 56 46 56 51 32 52 56 26 26 52 27 84 56 55 56 56 37 43 36 56 49 75 48 49 44 32 25 32 51';
const serifItalic =
  '23 30 46 57 52 93 70 26 38 38 48 53 30 31 30 34 54 54 54 54 54 54 54 54 54 54 30 30 53 53 53 46 88 68 62 61 70 60 57 67 77 36 36 69 58 93 75 67 57 67 65 50 59 72 65 92 67 59 56 34 33 34 53 51 40 55 52 43 56 44 32 51 58 32 27 50 30 87 60 53 54 52 43 38 35 60 51 78 56 51 49 39 29 39 53';

const widths: Readonly<Record<Lettering, readonly number[]>> = {
  text: sans.split(' ').map(Number),
  note: sans.split(' ').map(Number),
  strong: strong.split(' ').map(Number),
  name: serifItalic.split(' ').map(Number),
};

/** Signs outside the table (minus, times, degree) are as wide as a figure, or less. */
const OTHER = 55;

/** How wide a text stands, px. */
export function textWidth(text: string, size: number, lettering: Lettering): number {
  const table = widths[lettering];
  let sum = 0;
  for (const character of text) sum += table[character.charCodeAt(0) - 32] ?? OTHER;
  return (sum * size) / 100;
}
