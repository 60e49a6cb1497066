import type { CardPaper } from '../papers.ts';
import { columnWidths, headHeight, type TableSize, widthOf } from '../table.ts';

/** ISO/IEC 7810, ID-1: what fits a card's pocket [mm]. */
export const card = { width: 85.6, height: 53.98, edge: 3.2 } as const;

/** Head and foot of a card [mm]. */
export const cardHead = 12.6;
const FOOT = 8.3;

/** Type from what is read in the hand to the least, with its line [mm]; of each the fewest lines of heads first. */
const tableSizes: readonly TableSize[] = [3.3, 3.1, 2.9, 2.7, 2.5, 2.35].flatMap((type) =>
  [1, 2, 3].map((headLines) => ({ type, line: 1.38 * type, gap: type, headLines })),
);
/** Between two blocks of rows side by side [mm]. */
const BETWEEN = 5;
/** Columns stand no farther apart than the eye keeps to its row [mm]. */
const WIDEST_GAP = 9;

interface CardBlock {
  readonly x: number;
  readonly rows: readonly number[];
}

/** Which rows stand on which card, in how many blocks. */
export interface CardLayout {
  readonly size: TableSize;
  readonly columns: readonly number[];
  readonly cards: readonly (readonly CardBlock[])[];
  /** Whether the columns are wider than a card. */
  readonly tooWide: boolean;
}

function laidOut(paper: CardPaper, size: TableSize): CardLayout {
  const columns = columnWidths(paper, size);
  const wide = widthOf(columns, size);
  const room = card.width - 2 * card.edge;
  const across = Math.max(1, Math.floor((room + BETWEEN) / (wide + BETWEEN)));
  const down = Math.max(1, Math.floor((card.height - cardHead - FOOT - headHeight(paper.head, columns, size)) / size.line));
  const count = Math.max(1, Math.ceil(paper.rows.length / (across * down)));
  // Blocks alike in length: a last one with a single row would look forgotten.
  const blocks = Math.max(1, Math.min(across * count, Math.ceil(paper.rows.length / down)));
  const each = Math.max(1, Math.ceil(paper.rows.length / blocks));
  const beside = Math.min(across, blocks);
  // What is free across the card goes between the columns.
  const gaps = Math.max(1, beside * (columns.length - 1));
  const gap = Math.min(WIDEST_GAP, size.gap + Math.max(0, room - beside * wide - (beside - 1) * 2 * BETWEEN) / gaps);
  const spread = { ...size, gap };
  const step = beside > 1 ? (room - widthOf(columns, spread)) / (beside - 1) : 0;
  const rows = paper.rows.map((_, i) => i);
  const all = Array.from({ length: Math.ceil(rows.length / each) }, (_, i) => ({
    x: card.edge + (i % beside) * step,
    rows: rows.slice(i * each, (i + 1) * each),
  }));
  return {
    size: spread,
    columns,
    cards: Array.from({ length: Math.ceil(all.length / beside) }, (_, i) => all.slice(i * beside, (i + 1) * beside)),
    tooWide: wide > room,
  };
}

/** As few cards as can be, and on them the largest type that takes no more. */
export function cardLayout(paper: CardPaper): CardLayout {
  const all = tableSizes.map((size) => laidOut(paper, size));
  const fitting = all.filter(({ tooWide }) => !tooWide);
  const fewest = Math.min(...fitting.map(({ cards }) => cards.length));
  return fitting.find(({ cards }) => cards.length === fewest) ?? (all.at(-1) as CardLayout);
}
