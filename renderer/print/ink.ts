import { faces } from '../export/faces.ts';
import { xml, type XmlNode } from '../export/xml.ts';
import { label, type Anchor, type Label } from '../plots/labels.ts';
import { type Lettering, textWidth } from '../plots/textWidth.ts';

/** Weights of lines on paper [mm]. */
export const weights = { outline: 0.5, inner: 0.25, dimension: 0.18, construction: 0.13 } as const;

/** Type on paper [mm]: from 6 1/2 pt, which is the least that is read at arm's length, to the head of a sheet. */
export const sizes = { title: 5.4, plate: 3.8, text: 3, note: 2.65, small: 2.3 } as const;

const INK = '#000000';
const SOFT = '#444444';

const fixed = (mm: number): string => String(Number(mm.toFixed(4)));

/** Path data out of letters and places [mm]. */
export const path = (...parts: readonly (string | number)[]): string =>
  parts.map((part) => (typeof part === 'number' ? fixed(part) : part)).join(' ');

type Given = XmlNode['attributes'];

export const stroke = (d: string, weight: number, given: Given = {}): XmlNode =>
  xml('path', { d, fill: 'none', stroke: INK, 'stroke-width': weight, ...given });

export const filled = (d: string, given: Given = {}): XmlNode => xml('path', { d, fill: INK, ...given });

export const dot = (cx: number, cy: number, r: number, given: Given = {}): XmlNode =>
  xml('circle', { cx, cy, r, fill: INK, ...given });

export const ring = (cx: number, cy: number, r: number, weight: number): XmlNode =>
  xml('circle', { cx, cy, r, fill: '#ffffff', stroke: INK, 'stroke-width': weight });

const looks: Readonly<Record<Lettering, Given>> = {
  text: { 'font-family': faces.text },
  note: { 'font-family': faces.text, fill: SOFT },
  strong: { 'font-family': faces.text, 'font-weight': 600 },
  name: { 'font-family': faces.head, 'font-style': 'italic', fill: SOFT },
};

export const letters = ({ text, x, y, anchor, lettering, size }: Label, given: Given = {}): XmlNode =>
  xml(
    'text',
    {
      x: fixed(x),
      y: fixed(y),
      'font-size': size,
      fill: INK,
      ...looks[lettering],
      ...(anchor === 'start' ? {} : { 'text-anchor': anchor }),
      ...given,
    },
    [text],
  );

/** A text at a place: where its box is not asked for. */
export const written = (
  text: string,
  x: number,
  y: number,
  lettering: Lettering,
  size: number,
  anchor: Anchor = 'start',
): XmlNode => letters(label(text, x, y, anchor, lettering, size));

/** The head of a sheet: the one upright line in the serif. */
export const heading = (text: string, x: number, y: number, size: number): XmlNode =>
  letters(label(text, x, y, 'start', 'name', size), { 'font-style': 'normal', 'font-weight': 430, fill: INK });

/** A text that fits, or as much of it as does. */
export function shortened(text: string, width: number, size: number, lettering: Lettering): string {
  if (textWidth(text, size, lettering) <= width) return text;
  let kept = text;
  while (kept !== '' && textWidth(`${kept}…`, size, lettering) > width) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}…`;
}

/** A slender arrowhead with its point at a place, as on every dimension line. */
export const arrowhead = (x: number, y: number, towards: 'up' | 'down' | 'left' | 'right'): XmlNode => {
  const [long, half] = [2, 0.5];
  const back = towards === 'up' || towards === 'left' ? long : -long;
  return towards === 'up' || towards === 'down'
    ? filled(path('M', x, y, 'L', x - half, y + back, 'L', x + half, y + back, 'Z'))
    : filled(path('M', x, y, 'L', x + back, y - half, 'L', x + back, y + half, 'Z'));
};
