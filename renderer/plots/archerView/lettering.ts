import { touches, type Box } from '../boxes.ts';
import { label, placer, type Label } from '../labels.ts';
import { viewFrame } from './frame.ts';
import type { Placed } from './placed.ts';

/** What is written on the picture, ready in the person's units. */
export interface HoldTexts {
  /** "294 cm"; nothing on the centre itself. */
  readonly figure: string;
  /** "274 to 312", or nothing where it would only repeat the figure. */
  readonly band: string;
  /** "below the centre". */
  readonly side: string;
  /** "12 cm left"; null where it is held straight over or under the centre. */
  readonly across: string | null;
  /** "14.8 m", and its band; null where there is no marker. */
  readonly marker: { readonly figure: string; readonly band: string } | null;
}

/** Between the lowest line of a block and the next [px]. */
const ROW = 16;

/** All texts of the picture with the bow to the right, none of which touch; the lines of the ground are named as far as there is room. */
export function lettering(marks: Placed, texts: HoldTexts, here: string): Label[] {
  const { width, height, foot, ground, frame } = marks;
  const { edge } = viewFrame;
  const bounds: Box = { left: edge - 1, right: width - edge + 1, top: 4, bottom: height - 4 };
  const { place, placed } = placer(inTheWay(marks), bounds);
  const right = width - edge;
  place([foot, foot + 8, foot - 8].map((y) => [label(here, right, y + 5, 'end', 'strong', 14)]));
  if (marks.sideways !== null && texts.across !== null) place(acrossAt(marks.sideways, texts.across));
  place(holdBlocks(marks, texts));
  if (marks.marker !== null && texts.marker !== null) place(markerBlocks(marks, texts.marker));
  place(horizonNames(frame.horizon, edge, right).filter(([name]) => name !== undefined && standsClear(name, placed)));
  for (const { y, figure } of ground) place([[label(String(figure), right, y + 4, 'end', 'text', 12)]]);
  return placed;
}

/** Over or under the line, at one side or the other. */
const horizonNames = (y: number, left: number, right: number): Label[][] =>
  (
    [
      [left, 'start'],
      [right, 'end'],
    ] as const
  ).flatMap(([x, anchor]) => [y - 5, y + 14].map((at) => [label('horizon', x, at, anchor, 'name', 13)]));

/** Words nearer to each other than this on a line read as one sentence [px]. */
const WORDS_APART = 14;

const standsClear = ({ box }: Label, placed: readonly Label[]): boolean =>
  !placed.some((other) => touches({ ...box, left: box.left - WORDS_APART, right: box.right + WORDS_APART }, other.box));

/** Figure, band and side of the hold beside its dimension, or beside what is held where there is none. */
function holdBlocks({ dimension, held, butt, height, frame }: Placed, { figure, band, side }: HoldTexts): Label[][] {
  const x = (dimension?.x ?? butt.x - 7) - 9;
  const rows = (middle: number): Label[] =>
    block(
      [
        ['strong', figure],
        ['note', band],
        ['name', side],
      ],
      x,
      middle,
    );
  const middle = dimension === null ? held.y : (dimension.from + dimension.to) / 2;
  const steps = Array.from({ length: 20 }, (_, i) => (i % 2 === 0 ? -1 : 1) * Math.ceil(i / 2) * 8);
  const blocks = steps.map((step) => rows(Math.max(34, Math.min(height - 34, middle + step))));
  // The horizon would run through the words; but a little aside of its dimension they still belong to it.
  const near = blocks.slice(0, NEAR_STEPS).filter((rows) => rows.every(({ box }) => clearOf(box, frame.horizon)));
  return [...near, ...blocks];
}

/** So many steps of 8 px, by turns up and down, leave the words beside what they measure. */
const NEAR_STEPS = 11;

const clearOf = ({ top, bottom }: Box, line: number): boolean => bottom < line - 3 || top > line + 3;

/** Under the tip, on the side away from the bow. */
function markerBlocks({ held, arrow }: Placed, { figure, band }: { figure: string; band: string }): Label[][] {
  const x = held.x - (arrow?.halfBelow ?? 0) - 10;
  return [44, 40, 48, 52].map((down) =>
    block(
      [
        ['strong', figure],
        ['note', band],
        ['name', 'ground marker'],
      ],
      x,
      held.y + down,
    ),
  );
}

const acrossAt = ({ y, from, to }: { y: number; from: number; to: number }, text: string): Label[][] =>
  [(from + to) / 2, from, to].map((x) => [label(text, x, y - 8, 'middle', 'strong', 14)]);

/** Rows of text, those that say nothing left out, about a middle. */
function block(
  rows: readonly (readonly [lettering: 'strong' | 'note' | 'name', text: string])[],
  x: number,
  middle: number,
): Label[] {
  const said = rows.filter(([, text]) => text !== '');
  const first = middle - ((said.length - 1) * ROW) / 2 + 5;
  return said.map(([kind, text], i) => label(text, x, first + i * ROW, 'end', kind, kind === 'strong' ? 16 : 13));
}

function inTheWay({ butt, arrow, held, bow, dimension, interval, sideways, height }: Placed): Box[] {
  const boxes: Box[] = [
    { left: butt.x - 4, right: butt.x + butt.side + 4, top: butt.y - 4, bottom: butt.y + butt.side + 4 },
    { left: bow.x, right: bow.x + bow.width, top: 0, bottom: height },
  ];
  if (arrow !== null)
    boxes.push({ left: held.x - arrow.halfBelow - 4, right: held.x + arrow.halfBelow + 4, top: held.y - 2, bottom: height });
  if (dimension !== null) boxes.push(upright(dimension.x, dimension.from, dimension.to));
  if (interval !== null) boxes.push(upright(interval.x, interval.high, interval.low));
  if (sideways !== null) {
    const [left, right] = [Math.min(sideways.from, sideways.to), Math.max(sideways.from, sideways.to)];
    boxes.push({ left, right, top: sideways.y - 3, bottom: sideways.y + 3 });
  }
  return boxes;
}

const upright = (x: number, from: number, to: number): Box => ({
  left: x - 5,
  right: x + 5,
  top: Math.min(from, to),
  bottom: Math.max(from, to),
});
