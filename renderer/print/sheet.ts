import { xml, type XmlNode } from '../export/xml.ts';
import { heading, path, shortened, sizes, stroke, weights, written } from './ink.ts';
import { MARGIN, type Page, SHORTER } from './pages.ts';
import type { PaperHead } from './papers.ts';
import { paragraph } from './paragraph.ts';

/** A whole sheet as it is printed, previewed and saved. */
export interface Sheet {
  readonly page: Page;
  readonly svg: XmlNode;
}

/** Said on every paper that somebody may carry away. */
export const HOLDS = 'Holds for this archer, bow, arrow and form: shoot it in before you rely on it.';
/** Said in its place on what is not proven. */
export const HOLDS_NO_MORE = 'Not proven for this archer, bow, arrow and form: shoot it in before you rely on it.';
const CARE = 'The bow maker’s figures, the rules of the range and your coach come first.';

export const SHORT_CARE = 'The bow’s maker, the rules of the range and your coach come first.';

const BLOCK = 15;
/** Shares of the width [-]. */
const columns = [
  ['archer', 'archer', 1],
  ['bow', 'bow', 1.5],
  ['arrows', 'arrows', 1.6],
  ['form', 'form', 1.35],
  ['date', 'date', 0.85],
  ['units', 'units and scale', 1.15],
] as const satisfies readonly (readonly [keyof PaperHead, string, number])[];

/** Who and what the sheet is about, as under every measured drawing. */
function titleBlock(head: PaperHead, page: Page): XmlNode[] {
  const top = page.height - MARGIN - BLOCK;
  const wide = page.width - 2 * MARGIN;
  const all = columns.reduce((sum, [, , share]) => sum + share, 0);
  let left = MARGIN;
  const nodes = [stroke(path('M', MARGIN, top, 'H', page.width - MARGIN), weights.inner)];
  for (const [key, name, share] of columns) {
    const width = (share / all) * wide;
    if (left > MARGIN) nodes.push(stroke(path('M', left, top, 'V', top + BLOCK), weights.construction));
    const x = left > MARGIN ? left + 2 : left;
    nodes.push(
      written(name, x, top + 3.4, 'name', sizes.small),
      ...paragraph(head[key], { x, top: top + 4.3, width: left + width - x - 1.5 }, sizes.note, 'text', 3).nodes,
    );
    left += width;
  }
  return nodes;
}

interface Frame {
  readonly nodes: readonly XmlNode[];
  /** What is free between head and foot [mm]. */
  readonly top: number;
  readonly bottom: number;
}

/** Head and foot of a sheet: what it is and what it rests on; what to mind, and who it is for. */
export function frameOf(page: Page, title: string, note: string, head: PaperHead, proven = true): Frame {
  const wide = page.width - 2 * MARGIN;
  const under = paragraph(note, { x: MARGIN, top: MARGIN + 7.6, width: wide }, sizes.text, 'note', 3);
  const bottom = page.height - MARGIN - BLOCK - 11;
  return {
    nodes: [
      heading(shortened(title, wide, sizes.title, 'name'), MARGIN, MARGIN + 4.6, sizes.title),
      ...under.nodes,
      written(proven ? HOLDS : HOLDS_NO_MORE, MARGIN, bottom + 4, 'strong', sizes.text),
      written(CARE, MARGIN, bottom + 8.1, 'text', sizes.text),
      ...titleBlock(head, page),
    ],
    top: under.bottom + 4,
    bottom,
  };
}

/** The sheet as one drawing in millimetres. */
export function sheetOf(page: Page, title: string, sentence: string, nodes: readonly XmlNode[]): Sheet {
  const height = page.height - SHORTER;
  return {
    page,
    svg: xml(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        width: `${page.width}mm`,
        height: `${height}mm`,
        viewBox: `0 0 ${page.width} ${height}`,
        role: 'img',
        'aria-label': sentence,
        // Letters as wide as they are measured, at every size.
        'text-rendering': 'geometricPrecision',
      },
      [
        xml('title', {}, [title]),
        xml('desc', {}, [sentence]),
        xml('rect', { width: page.width, height, fill: '#ffffff' }),
        ...nodes,
      ],
    ),
  };
}
