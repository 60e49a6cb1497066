import type { XmlNode } from '../export/xml.ts';
import { path, stroke, weights } from './ink.ts';

/** Where to cut: a thin outline, and at its corners marks that stay on the sheet. */
export function cutLines(width: number, height: number): XmlNode[] {
  const [off, long] = [1, 3];
  const corners = [
    [0, 0, -1, -1],
    [width, 0, 1, -1],
    [0, height, -1, 1],
    [width, height, 1, 1],
  ] as const;
  return [
    stroke(path('M', 0, 0, 'H', width, 'V', height, 'H', 0, 'Z'), weights.construction, { 'data-cut': 'card' }),
    stroke(
      path(
        ...corners.flatMap(([x, y, right, down]) => [
          ...['M', x + right * off, y, 'H', x + right * (off + long)],
          ...['M', x, y + down * off, 'V', y + down * (off + long)],
        ]),
      ),
      weights.construction,
    ),
  ];
}
