import { touches, type Box } from '../../plots/boxes.ts';
import { label, type Label } from '../../plots/labels.ts';
import { textWidth } from '../../plots/textWidth.ts';
import { figureBox, figureSize, type FigureSize } from '../dimension/figureBox.ts';
import type { Span } from '../dimension/lines.ts';
import type { ArrowPicture } from './picture.ts';
import type { ArrowScale } from './scale.ts';

/** The fields of the record that a finding’s mark stands beside: it takes room. */
export type Marked = ReadonlySet<string>;

/** A figure's field on the drawing. */
export interface FieldSpot {
  readonly box: Box;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface ArrowDimensions {
  readonly length: FieldSpot & { readonly span: Span };
  readonly balance: FieldSpot & { readonly span: Span | null };
  /** Figure and name of the front of centre; empty when it is not known or nowhere free. */
  readonly foc: readonly Label[];
  /** The middle of the shaft, from which the front of centre counts. */
  readonly middle: string;
}

/** Heights of the two dimension lines, px. */
const lengthY = 13;
const balanceY = 55;
/** Between a figure and the line it breaks [px]. */
const AIR = 5;

const gapOf = (box: Box, size: FigureSize): readonly [number, number] => {
  const middle = (box.left + box.right) / 2;
  return [middle - size.field / 2 - AIR, middle + size.field / 2 + AIR];
};

/** The shaft's length, the balance point and the front of centre, over the arrow; no text touches another or a line that crosses it. */
export function arrowDimensions(
  picture: ArrowPicture,
  texts: { readonly length: string; readonly balance: string; readonly foc: string | null },
  marked: Marked,
  scale: ArrowScale,
  arrowTop: number,
): ArrowDimensions {
  const [throat, end] = [scale.at(0), scale.at(picture.length)];
  const middle = (throat + end) / 2;
  const lengthSize = figureSize(texts.length, ['length'], marked.has('length'));
  const lengthBox = figureBox(lengthSize, middle, lengthY, 'middle');
  const balanceSize = figureSize(texts.balance, ['balance point'], marked.has('balance'));
  const chain: Box = { left: middle - 4, right: middle + 4, top: balanceY - 10, bottom: arrowTop + 40 };
  const extension: Box = { left: end - 4, right: end + 4, top: 0, bottom: arrowTop };
  const at = picture.balance === null ? null : scale.at(picture.balance.at);

  const boxAt = (x: number) => figureBox(balanceSize, x, balanceY, 'middle');
  const half = balanceSize.width / 2;
  const stretch = (from: number, to: number) => (to - from >= balanceSize.width + 30 ? [boxAt((from + to) / 2)] : []);
  const beyond = (at ?? throat) + 28 + half;
  const places = [
    ...(at === null
      ? stretch(throat, middle)
      : [...stretch(throat, Math.min(at, middle)), ...stretch(middle, at), ...stretch(throat, at)]),
    boxAt(beyond),
    boxAt(middle + 12 + half),
  ];
  const free = (box: Box) => box.right <= scale.width && !touches(box, chain) && !touches(box, extension);
  const balanceBox = places.find(free) ?? boxAt((throat + middle) / 2);
  const gap = gapOf(balanceBox, balanceSize);
  const span: Span | null =
    at === null
      ? null
      : {
          axis: 'across',
          from: throat,
          to: at,
          line: balanceY,
          objectFrom: null,
          objectTo: arrowTop,
          gap: gap[0] > throat && gap[1] < at ? gap : null,
          leadTo: gap[0] > at ? gap[0] + 2 : null,
        };

  return {
    length: {
      box: lengthBox,
      anchor: 'middle',
      span: {
        axis: 'across',
        from: throat,
        to: end,
        line: lengthY,
        objectFrom: arrowTop,
        objectTo: arrowTop,
        gap: gapOf(lengthBox, lengthSize),
      },
    },
    balance: { box: balanceBox, anchor: 'middle', span },
    foc: at === null || texts.foc === null ? [] : focLabels(texts.foc, at, middle, [balanceBox, chain, extension], scale.width),
    middle: `M${middle} ${balanceY - 8}V${arrowTop + 24}`,
  };
}

function focLabels(text: string, at: number, middle: number, obstacles: readonly Box[], width: number): readonly Label[] {
  const widest = Math.max(textWidth(text, 16, 'strong'), textWidth('front of centre', 13, 'name'));
  const atX = (x: number) => [
    label(text, x, balanceY + 5, 'start', 'strong', 16),
    label('front of centre', x, balanceY + 24, 'start', 'name', 13),
  ];
  const line: Box = { left: Math.min(at, middle), right: at, top: balanceY - 3, bottom: balanceY + 3 };
  const starts = [at + 12, at + 26, middle + 12, middle - 14 - widest, ...obstacles.map((box) => box.right + 14)];
  const fits = (x: number) =>
    x >= 0 && x + widest <= width && atX(x).every(({ box }) => ![...obstacles, line].some((obstacle) => touches(box, obstacle)));
  const start = starts.find(fits);
  return start === undefined ? [] : atX(start);
}
