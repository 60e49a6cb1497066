import { refuse, type Result } from '../../../core/model/problem.ts';
import { cardFrame } from '../cardFrame.ts';
import { cardSheet } from '../grid.ts';
import type { Page } from '../pages.ts';
import type { CardPaper, PaperHead } from '../papers.ts';
import type { Sheet } from '../sheet.ts';
import { drawTable } from '../table.ts';
import { card, cardHead, cardLayout } from './layout.ts';

export interface CardOptions {
  /** Heads of the columns that are left out. */
  readonly without: readonly string[];
  readonly copies: 'one' | 'full';
}

/** The table without some of its columns; the distance stays. */
function chosenColumns(paper: CardPaper, { without }: Pick<CardOptions, 'without'>): CardPaper {
  const kept = paper.head.map((name, i) => i === 0 || !without.includes(name));
  const only = <T>(row: readonly T[]) => row.filter((_, i) => kept[i]);
  return { ...paper, head: only(paper.head), rows: paper.rows.map(only) };
}

/** What tells one card from another, and from one that holds. */
const whichOf = ({ proven }: CardPaper, place: number, count: number): string =>
  [proven ? '' : 'not proven', count === 1 ? '' : `${place + 1} of ${count}`].filter((words) => words !== '').join(', ');

/** The range card for the quiver, as many as the rows need. */
export function rangeCardSheet(
  given: CardPaper,
  head: PaperHead,
  page: Page,
  options: CardOptions,
  checkLine: number | null,
): Result<Sheet> {
  const paper = chosenColumns(given, options);
  if (paper.rows.length === 0) return refuse('no-distances', 'None of these distances has a mark. Choose others.');
  const { size, columns, cards, tooWide } = cardLayout(paper);
  if (tooWide) return refuse('too-wide', 'These columns are wider than a card. Leave one out.');
  const drawn = cards.map((blocks, i) => [
    ...cardFrame(card, head, whichOf(paper, i, cards.length), paper.proven),
    ...blocks.flatMap(({ x, rows }) =>
      drawTable(
        {
          head: paper.head,
          rows: rows.map((row) => paper.rows[row] ?? []),
          strong: rows.map((row) => paper.strong[row] === true),
        },
        size,
        columns,
        x,
        cardHead,
      ),
    ),
  ]);
  return cardSheet(
    {
      title: paper.proven ? paper.title : `${paper.title}, not proven`,
      note: paper.note,
      ...card,
      cards: drawn,
      copies: options.copies,
      proven: paper.proven,
    },
    head,
    page,
    checkLine,
  );
}
