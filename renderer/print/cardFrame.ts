import type { XmlNode } from '../export/xml.ts';
import { textWidth } from '../plots/textWidth.ts';
import { cutLines } from './cut.ts';
import { heading, path, shortened, sizes, stroke, weights, written } from './ink.ts';
import type { PaperHead } from './papers.ts';
import { paragraph } from './paragraph.ts';
import { HOLDS, HOLDS_NO_MORE, SHORT_CARE } from './sheet.ts';

/** A card is held in the hand: smaller than anything on a sheet [mm]. */
const FINE = 2.1;

interface Card {
  readonly width: number;
  readonly height: number;
  readonly edge: number;
}

/** What every card carries in a quiver: who and what it is for, and what to mind. */
export function cardFrame({ width, height, edge }: Card, head: PaperHead, which: string, proven = true): XmlNode[] {
  const room = width - 2 * edge;
  const right = which === '' ? head.date : `${which}, ${head.date}`;
  const small = sizes.small - 0.2;
  const holds = proven ? 'text' : 'strong';
  const foot = height - edge;
  return [
    ...cutLines(width, height),
    heading(shortened(head.archer, room - textWidth(right, small, 'note') - 2, 3.4, 'name'), edge, edge + 2.4, 3.4),
    written(right, width - edge, edge + 2.2, 'note', small, 'end'),
    ...paragraph(
      `${head.bow}; ${head.arrows}; ${head.form}; ${head.units}`,
      { x: edge, top: edge + 3.3, width: room },
      FINE,
      'note',
      2,
    ).nodes,
    stroke(path('M', edge, foot - 4.6, 'H', width - edge), weights.construction),
    written(shortened(proven ? HOLDS : HOLDS_NO_MORE, room, FINE, holds), edge, foot - 2.2, holds, FINE),
    written(shortened(SHORT_CARE, room, FINE, 'text'), edge, foot + 0.3, 'text', FINE),
  ];
}
