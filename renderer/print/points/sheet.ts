import { refuse, type Result } from '../../../core/model/problem.ts';
import { xml, type XmlNode } from '../../export/xml.ts';
import { textWidth } from '../../plots/textWidth.ts';
import { cardFrame } from '../cardFrame.ts';
import { cardSheet } from '../grid.ts';
import { path, shortened, sizes, stroke, weights, written } from '../ink.ts';
import type { Page } from '../pages.ts';
import type { PaperHead, PointPaper, PointRow } from '../papers.ts';
import type { Sheet } from '../sheet.ts';
import { drawPicture, pointPicture } from './picture.ts';

export interface PointOptions {
  readonly pictures: boolean;
  readonly ground: boolean;
  readonly copies: 'one' | 'full';
}

/** ISO/IEC 7810, ID-3: what fits the pocket of a passport [mm]. */
const card = { width: 88, height: 125, edge: 3.6 } as const;
const HEAD = 13.2;
const FOOT = 8.4;
/** A line with its picture and one without [mm]. */
const PICTURED = 17;
const PLAIN = 8.4;

/** White over and under a picture [mm]. */
const ABOVE = 1.3;
/** The upright middle of the pictures, and where the words begin [mm]. */
const MIDDLE = 32;
const WORDS = 46;

const HELD = 3.4;
/** Said after "86 cm below". */
const OF = 'the centre';

function drawRow(row: PointRow, paper: PointPaper, options: PointOptions, high: number): XmlNode[] {
  const { width, edge } = card;
  const x = options.pictures ? WORDS : 22;
  const room = width - edge - x;
  const wide = textWidth(row.hold, HELD, 'strong') + 1;
  const ground = options.ground && row.ground !== null ? row.ground : null;
  const base = high / 2 + (ground === null ? 1.1 : -0.4);
  // What is not known of speed and drag lets it lie so: no interval of 95 %.
  const beside = row.band === '' ? '' : `anywhere from ${row.band}`;
  return [
    written(row.label, edge, high / 2 + 1.5, 'strong', 4.4),
    written(row.hold, x, base - 1.1, 'strong', HELD),
    ...(row.side === 'on' || wide + textWidth(OF, sizes.small, 'text') > room
      ? []
      : [written(OF, x + wide, base - 1.1, 'text', sizes.small)]),
    written(shortened(beside, room, sizes.small, 'note'), x, base + 2.2, 'note', sizes.small),
    ...(ground === null ? [] : [written(shortened(ground, room, sizes.small, 'text'), x, base + 5.4, 'text', sizes.small)]),
    ...(options.pictures
      ? [
          xml(
            'g',
            { transform: `translate(0 ${ABOVE})` },
            drawPicture(pointPicture(row.holdM, paper.face, high - 2 * ABOVE), MIDDLE),
          ),
        ]
      : []),
    stroke(path('M', edge, high, 'H', width - edge), weights.construction, { stroke: '#999999' }),
  ];
}

/** Where to hold the tip of the arrow at each distance, a line each, as many cards as they need. */
export function pointCardSheet(
  paper: PointPaper,
  head: PaperHead,
  page: Page,
  options: PointOptions,
  checkLine: number | null,
): Result<Sheet> {
  if (paper.rows.length === 0) return refuse('no-distances', 'None of these distances has a point of aim. Choose others.');
  const high = options.pictures ? PICTURED : PLAIN;
  const most = Math.floor((card.height - HEAD - FOOT) / high);
  const count = Math.ceil(paper.rows.length / most);
  const each = Math.ceil(paper.rows.length / count);
  const cards = Array.from({ length: count }, (_, i) => [
    ...cardFrame(card, head, count === 1 ? '' : `${i + 1} of ${count}`),
    ...paper.rows
      .slice(i * each, (i + 1) * each)
      .map((row, place) => xml('g', { transform: `translate(0 ${HEAD + place * high})` }, drawRow(row, paper, options, high))),
  ]);
  return cardSheet(
    { title: paper.title, note: paper.note, ...card, cards, copies: options.copies, proven: true },
    head,
    page,
    checkLine,
  );
}
