import type { XmlNode } from '../export/xml.ts';
import { arrowhead, path, sizes, stroke, weights, written } from './ink.ts';
import { CHECK } from './trueSize.ts';

/** Its end marks reach so far to either side [mm]. */
const END = 2;

const line = (d: string): XmlNode => stroke(d, weights.dimension, { 'data-check': CHECK });

/** Down beside a strip, as printers stretch a page one way more than the other. */
export function uprightCheck(x: number, top: number, factor: number): XmlNode[] {
  const bottom = top + CHECK * factor;
  const middle = (top + bottom) / 2;
  return [
    line(path('M', x, top, 'V', bottom)),
    stroke(path('M', x - END, top, 'H', x + END, 'M', x - END, bottom, 'H', x + END), weights.inner),
    arrowhead(x, top, 'up'),
    arrowhead(x, bottom, 'down'),
    written(`${CHECK} mm`, x + 1.6, middle, 'strong', sizes.plate),
    written('check line', x + 1.6, middle + 4, 'name', sizes.text),
  ];
}

/** Along the foot of a page of cards. */
export function levelCheck(left: number, y: number, factor: number): XmlNode[] {
  const right = left + CHECK * factor;
  return [
    line(path('M', left, y, 'H', right)),
    stroke(path('M', left, y - END, 'V', y + END, 'M', right, y - END, 'V', y + END), weights.inner),
    arrowhead(left, y, 'left'),
    arrowhead(right, y, 'right'),
    written(`${CHECK} mm`, right + 3, y + 1.3, 'strong', sizes.plate),
    written('check line', right + 17, y + 1.1, 'name', sizes.text),
  ];
}
