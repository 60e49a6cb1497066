import type { Hand } from '../../../core/model/archer.ts';
import type { Box } from '../../plots/boxes.ts';
import { figureBox } from '../dimension/figureBox.ts';
import { TAIL, type Span } from '../dimension/lines.ts';
import type { DrawnBow } from './figures.ts';
import { sizeOf, type FigureText, type Standing } from './standing.ts';

/** A detail drawn larger than the bow: its places are px on its own little sheet. */
interface Detail {
  readonly width: number;
  readonly height: number;
  /** px to the metre, and how that is said. */
  readonly k: number;
  readonly scale: string;
  readonly figure: Standing;
  readonly dimension: Span;
  readonly leader: readonly (readonly [number, number])[] | null;
  /** Places are made for a right-hander; this puts them on the sheet. */
  readonly x: (px: number) => number;
}

export interface NockingDetail extends Detail {
  readonly string: number;
  readonly shaftTop: number;
  readonly shaftBottom: number;
  readonly square: number;
  /** From where the line square to the string is drawn: short of the figure. */
  readonly squareFrom: number;
  readonly squareName: { readonly box: Box; readonly anchor: 'start' | 'end' };
}

export interface CentreDetail extends Detail {
  readonly string: number;
  /** Middle of the shaft where the centre shot is read, and where the button or the wall meets it. */
  readonly read: number;
  readonly meets: number;
  readonly radius: number;
  readonly middle: number;
  readonly wall: readonly [left: number, top: number, bottom: number];
  readonly line: number;
}

const PX_PER_METRE = 96 / 0.0254;
const scales = [
  [2, '2 : 1'],
  [1.5, '3 : 2'],
  [1, '1 : 1'],
  [0.75, '3 : 4'],
  [0.5, '1 : 2'],
  [1 / 3, '1 : 3'],
] as const;

/** The largest scale at which so much fits into so many px. */
function scaleFor(size: number, room: number): { k: number; scale: string } {
  const [times, scale] = scales.find(([share]) => size * share * PX_PER_METRE <= room) ?? ([0.25, '1 : 4'] as const);
  return { k: times * PX_PER_METRE, scale };
}

/** A: the nocked arrow at the string, and how far its underside is above square. */
export function nockingDetail(bow: DrawnBow, texts: FigureText, width: number): NockingDetail {
  const { k, scale } = scaleFor(Math.max(bow.shaft, bow.shaft + Math.max(0, bow.nocking), -bow.nocking), 76);
  const own = sizeOf(texts);
  const string = width * 0.84;
  const shaftTop = 24 + Math.max(0, -bow.nocking * k - bow.shaft * k);
  const shaftBottom = shaftTop + bow.shaft * k;
  const square = shaftBottom + bow.nocking * k;
  const line = Math.max(width * 0.54, own.width + 12);
  const middle = (shaftBottom + square) / 2;
  const at = Math.max(middle, Math.max(shaftBottom, bow.nocking < 0 ? square : 0) + 16);
  const moved = at > Math.max(shaftBottom, square) + 2;
  const below = Math.max(shaftBottom, square) + 15;
  return over(bow.hand, {
    width,
    height: Math.max(at - own.middle + own.height, below + 4, square + 26),
    k,
    scale,
    string,
    shaftTop,
    shaftBottom,
    square,
    squareFrom: line - 5,
    figure: { box: figureBox(own, line - 8, at, 'end'), anchor: 'end' },
    dimension: { axis: 'up', from: shaftBottom, to: square, line, objectFrom: null, objectTo: null },
    leader: moved
      ? [
          [line, at],
          [line - 6, at],
        ]
      : null,
    squareName: { box: { left: line + 8, right: line + 52, top: below - 11, bottom: below + 3 }, anchor: 'start' },
    x: (px) => px,
  });
}

/** B: the shaft from behind where its centre shot is read, and the string's line through the limbs. */
export function centreDetail(bow: DrawnBow, rest: number, texts: FigureText, width: number): CentreDetail {
  const share = bow.datum === 'button' ? 1 : Math.min(1, rest / bow.arrow);
  const reach = Math.max(Math.abs(bow.centre), 0.002) + bow.shaft / 2;
  const { k, scale } = scaleFor(reach, Math.min(52, width * 0.27));
  const own = sizeOf(texts);
  const string = width * 0.6;
  const radius = (bow.shaft / 2) * k;
  const read = string - bow.centre * k;
  const meets = string - bow.centre * share * k;
  const middle = 22 + Math.max(radius, 20);
  const line = middle + Math.max(radius, 20) + 18;
  const [left, right] = [Math.min(read, string), Math.max(read, string)];
  const beside = left - TAIL - 6 - own.width;
  const wall = Math.min(width - 26, Math.max(meets + radius + 22, string + 30));
  const at = beside >= 0 ? line : line + 24;
  const box =
    beside >= 0
      ? figureBox(own, left - TAIL - 6, line, 'end')
      : figureBox(own, Math.max(own.width, Math.min(width, (left + right) / 2 + own.width / 2)), at, 'end');
  return over(bow.hand, {
    width,
    height: Math.max(box.bottom, line + 12),
    k,
    scale,
    string,
    read,
    meets,
    radius,
    middle,
    wall: [wall, 6, line - 8],
    line,
    figure: { box, anchor: 'end' },
    dimension: {
      axis: 'across',
      from: left,
      to: right,
      line,
      objectFrom: null,
      objectTo: null,
      leadTo: beside >= 0 ? left - TAIL - 4 : null,
    },
    leader: null,
    x: (px) => px,
  });
}

/** Turned over for a left-hander, as the drawing is. */
function over<D extends Detail>(hand: Hand, detail: D): D {
  if (hand === 'right') return detail;
  const x = (px: number) => detail.width - px;
  const box = ({ left, right, top, bottom }: Box): Box => ({ left: x(right), right: x(left), top, bottom });
  const { dimension, figure } = detail;
  const lead = dimension.leadTo ?? null;
  const turned: D = {
    ...detail,
    x,
    figure: { box: box(figure.box), anchor: 'start' },
    dimension:
      dimension.axis === 'up'
        ? { ...dimension, line: x(dimension.line) }
        : { ...dimension, from: x(dimension.from), to: x(dimension.to), leadTo: lead === null ? null : x(lead) },
    leader: detail.leader === null ? null : detail.leader.map(([a, b]) => [x(a), b] as const),
  };
  return 'squareName' in turned
    ? { ...turned, squareName: { box: box((turned as unknown as NockingDetail).squareName.box), anchor: 'end' as const } }
    : turned;
}
