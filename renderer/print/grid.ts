import { xml, type XmlNode } from '../export/xml.ts';
import { refuse, ok, type Result } from '../../core/model/problem.ts';
import { levelCheck } from './checkLine.ts';
import { sizes } from './ink.ts';
import { MARGIN, type Page } from './pages.ts';
import type { PaperHead } from './papers.ts';
import { paragraph } from './paragraph.ts';
import { frameOf, type Sheet, sheetOf } from './sheet.ts';
import { checkText, correction } from './trueSize.ts';

/** Between one card and the next, for the cutting marks of both [mm]. */
const GAP = 9;
/** Above the foot of the sheet: the check line and what it is for [mm]. */
const CHECK_ROOM = 20;

interface Cards {
  readonly title: string;
  readonly note: string;
  readonly width: number;
  readonly height: number;
  /** Each from its own upper left corner. */
  readonly cards: readonly (readonly XmlNode[])[];
  /** One of each, or as many as the sheet holds. */
  readonly copies: 'one' | 'full';
  readonly proven: boolean;
}

/** Cards at true size, side by side and one under the other, over a check line. */
export function cardSheet(
  { title, note, width, height, cards, copies, proven }: Cards,
  head: PaperHead,
  page: Page,
  checkLine: number | null,
): Result<Sheet> {
  const factor = correction(checkLine);
  const frame = frameOf(page, title, note, head, proven);
  const [wide, high] = [factor * width + GAP, factor * height + GAP];
  const top = frame.top + 4;
  const across = Math.floor((page.width - 2 * MARGIN + GAP) / wide);
  const down = Math.floor((frame.bottom - CHECK_ROOM - top + GAP) / high);
  if (across * down < cards.length)
    return refuse(
      'too-many-cards',
      `These distances take ${cards.length} cards and the sheet has room for ${across * down}. Choose a longer step, or print the farther ones by themselves.`,
    );
  const times = copies === 'full' ? Math.floor((across * down) / cards.length) : 1;
  const checkY = frame.bottom - CHECK_ROOM + 9;
  return ok(
    sheetOf(page, title, `${title}. ${note}`, [
      ...frame.nodes,
      ...Array.from({ length: times }, () => cards)
        .flat()
        .map((nodes, i) => {
          const [x, y] = [MARGIN + (i % across) * wide, top + Math.floor(i / across) * high];
          return xml('g', { transform: `translate(${x} ${y})${factor === 1 ? '' : ` scale(${factor})`}` }, nodes);
        }),
      ...levelCheck(MARGIN, checkY, factor),
      ...paragraph(
        `${checkText(factor)} Cut along the outlines.`,
        { x: MARGIN + 95, top: checkY - 4, width: page.width - 2 * MARGIN - 95 },
        sizes.note,
        'note',
      ).nodes,
    ]),
  );
}
