import type { Hand } from '../../../core/model/archer.ts';
import { inch } from '../../../core/units/exact.ts';
import type { Box } from '../../plots/boxes.ts';
import { figureBox, figureSize, type FigureSize } from '../dimension/figureBox.ts';
import { lane, type Wish } from '../dimension/lanes.ts';
import type { Span } from '../dimension/lines.ts';
import { nockedArrow, POINT, type NockedArrow } from './arrow.ts';
import type { DrawnBow } from './drawn.ts';
import { bowShape } from './geometry.ts';
import type { BowShape } from './shape.ts';

/** The figures that stand on the drawing itself. */
export const onDrawing = ['upper', 'brace', 'lower', 'tiller', 'string', 'length', 'arrow'] as const;
export type OnDrawing = (typeof onDrawing)[number];

export interface Standing {
  readonly box: Box;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface BowLayout {
  readonly width: number;
  readonly height: number;
  /** Drawn at one to so many, on a screen of 96 px to the inch. */
  readonly scale: number;
  readonly shape: BowShape;
  readonly arrow: NockedArrow;
  /** px from the left for a distance from the string, in the view from the side; and from the string's line in the view from behind. */
  readonly x: (u: number) => number;
  readonly xBehind: (z: number) => number;
  readonly y: (v: number) => number;
  readonly figures: Readonly<Record<OnDrawing, Standing>>;
  readonly dimensions: Readonly<Record<Exclude<OnDrawing, 'tiller'>, Span>>;
  /** From a dimension line to its figure, where that had to move. */
  readonly leaders: readonly (readonly [x: number, y: number])[][];
  readonly keys: Readonly<Record<'A' | 'B', { readonly box: Box; readonly ring: readonly [x: number, y: number, r: number] }>>;
  /** Free ground beside the lower limb, for what is set and not drawn; null where there is none. */
  readonly corner: Box | null;
  /** From where to where the maker wants the brace height, on its dimension line; null without the maker's range. */
  readonly band: Box | null;
  /** From the grip out to that band, where it lies beyond the dimension line; nothing where the line reaches it. */
  readonly bandReach: readonly (readonly [x: number, y: number])[];
}

export interface FigureText {
  readonly text: string;
  readonly name: readonly string[];
  /** A finding's mark stands beside it. */
  readonly marked: boolean;
}

export interface BowTexts {
  /** What each figure says, and its name line by line. */
  readonly figures: Readonly<Record<OnDrawing, FigureText>>;
}

const PX_PER_METRE = 96 / inch;
/** The two plates above the drawing, and its foot [px]. */
const HEAD = 50;
const FOOT = 10;
/** Right of the string: the figures' column, two upright dimensions, the view from behind, the edge [px]. */
const COLUMN = 22;
const STRING_LINE = 124;
const LENGTH_LINE = 178;
const BEHIND = 230;
const EDGE = 20;
/** The arrow's point keeps so far from the edge [px]. */
const MARGIN = 8;
/** No bow is drawn smaller than one to so many. */
const SMALLEST = 40;
const LANE_GAP = 3;

/** Under a figure that begins or ends at its line the name is set in as far as the figure is [px]. */
const SET_IN = 6;

export function sizeOf({ text, name, marked }: FigureText): FigureSize {
  const size = figureSize(text, name, marked);
  return { ...size, width: Math.max(size.field, figureSize('', name).width + SET_IN) };
}

/** Where the middle of the arrow's figure stands, from the string [px]; null where there is no room for it. */
function arrowFigureAt(
  bow: DrawnBow,
  shape: BowShape,
  k: number,
  figure: number,
  wide: number,
): { at: number; inside: boolean } | null {
  const [end, front] = [bow.arrow * k, shape.front * k];
  // Before the bow, else beyond the point.
  if (end - front - 16 >= figure) return { at: (end + front) / 2, inside: true };
  return end + 12 + figure <= wide ? { at: end + 12 + figure / 2, inside: false } : null;
}

/** The largest usual scale at which the whole bow, its arrow and the arrow's figure stay on the sheet. */
function scaleFor(bow: DrawnBow, shape: BowShape, wide: number, high: number, figure: number): number {
  const k = Math.min(high / (shape.top - shape.bottom), wide / Math.max(bow.arrow + POINT, shape.front));
  let scale = Math.max(4, Math.ceil(PX_PER_METRE / k - 1e-9));
  while (scale < SMALLEST && arrowFigureAt(bow, shape, PX_PER_METRE / scale, figure, wide) === null) scale += 1;
  return scale;
}

/**
 * Where everything on the drawing stands. Made for a right-hander, whose arrow points left; the whole is turned over for a left-hander, texts
 * excepted. Labels keep within the sheet first, then in their order, then as near to their dimension as they can.
 */
export function bowLayout(bow: DrawnBow, texts: BowTexts, width: number, height: number): BowLayout {
  const shape = bowShape(bow);
  const arrow = nockedArrow(bow, shape);
  const xs = width - BEHIND - EDGE;
  const size = (which: OnDrawing): FigureSize => sizeOf(texts.figures[which]);
  const scale = scaleFor(bow, shape, xs - MARGIN, height - HEAD - FOOT, size('arrow').width);
  const k = PX_PER_METRE / scale;
  const y0 = HEAD + (height - HEAD - FOOT) / 2 + ((shape.top + shape.bottom) / 2) * k;
  const X = (u: number) => xs - u * k;
  const Y = (v: number) => y0 - v * k;

  // The column right of the string. A is a key letter, and stands in the same lane.
  const column = ['upper', 'A', 'brace', 'lower', 'tiller'] as const;
  const lineY = { upper: Y(shape.roots.upper[1]), brace: Y(shape.grip[1]), lower: Y(shape.roots.lower[1]) };
  const keyY = Y(bow.nocking) - 9;
  const wish = (which: (typeof column)[number]): Wish => {
    if (which === 'A') return { at: keyY, size: 18 };
    const { height: high, middle } = size(which);
    const y = which === 'tiller' ? lineY.lower + size('lower').height : lineY[which];
    return { at: y - middle + high / 2, size: high };
  };
  const places = lane(column.map(wish), HEAD, height - FOOT, LANE_GAP);
  const inColumn = (which: (typeof column)[number]) => places[column.indexOf(which)] ?? { from: 0, to: 0, at: 0, moved: false };
  const columnFigure = (which: 'upper' | 'brace' | 'lower' | 'tiller'): Standing => {
    const own = size(which);
    return { box: figureBox(own, xs + COLUMN, inColumn(which).from + own.middle, 'start'), anchor: 'start' };
  };
  const columnSpan = (which: 'upper' | 'brace' | 'lower', at: number): Span => ({
    axis: 'across',
    from: X(at),
    to: xs,
    line: lineY[which],
    leadTo: inColumn(which).moved ? xs + 6 : xs + COLUMN - 2,
    gap: [xs - 0.5, xs + 3],
  });
  const leaders = (['upper', 'brace', 'lower'] as const)
    .filter((which) => inColumn(which).moved)
    .map((which) => [
      [xs + 6, lineY[which]] as const,
      [xs + COLUMN - 8, inColumn(which).from + size(which).middle] as const,
      [xs + COLUMN - 2, inColumn(which).from + size(which).middle] as const,
    ]);

  // The two upright dimensions between the views.
  const [stringTop, stringBottom] = ends(shape);
  const upright = (
    which: 'string' | 'length',
    line: number,
    middle: number,
  ): { standing: Standing; gap: readonly [number, number] } => {
    const own = size(which);
    const [least, most] = [xs + STRING_LINE + 3 + own.width / 2, xs + BEHIND - inch * k - 3 - own.width / 2];
    const at = which === 'string' ? line : Math.max(least, Math.min(most, line));
    const box = figureBox(own, at, middle - own.height / 2 + own.middle, 'middle');
    return { standing: { box, anchor: 'middle' }, gap: [box.top - 3, box.bottom + 3] };
  };
  const halfOf = (which: OnDrawing) => size(which).height / 2 + LANE_GAP;
  const [above, below] = [inColumn('upper').from, inColumn('tiller').to];
  const stringAt = Math.min((Y(stringTop) + above) / 2, above - halfOf('string'));
  const lengthAt = Math.max((Y(shape.bottom) + below) / 2, below + halfOf('length'));
  const stringFigure = upright('string', xs + STRING_LINE, Math.max(stringAt, HEAD + halfOf('string')));
  const lengthFigure = upright('length', xs + LENGTH_LINE, Math.min(lengthAt, height - halfOf('length')));

  // The arrow's length, above the arrow and before the bow; where that is too narrow, beyond its point.
  const own = size('arrow');
  const arrowLine = Math.min(Y(arrow.end[1]), y0) - Math.max(own.height - own.middle + 8, 34);
  const place = arrowFigureAt(bow, shape, k, own.width, xs - MARGIN) ?? { at: xs - own.width / 2, inside: false };
  const arrowBox = figureBox(own, xs - place.at, arrowLine, 'middle');
  const arrowFigure: Standing = { box: arrowBox, anchor: 'middle' };

  const key = (x: number, y: number, letterX: number, letterY: number, r: number) => ({
    box: { left: letterX, right: letterX + 12, top: letterY - 9, bottom: letterY + 9 },
    ring: [x, y, r] as const,
  });
  const behindX = xs + BEHIND;
  const nockY = Y(bow.nocking + bow.shaft / 2);
  const cornerRight = X(Math.max(shape.front, bow.brace)) - 16;
  const cornerTop = y0 + 34;
  const range = bow.braceRange;
  const made: Omit<BowLayout, 'x' | 'xBehind'> = {
    width,
    height,
    scale,
    shape,
    arrow,
    y: Y,
    figures: {
      upper: columnFigure('upper'),
      brace: columnFigure('brace'),
      lower: columnFigure('lower'),
      tiller: columnFigure('tiller'),
      string: stringFigure.standing,
      length: lengthFigure.standing,
      arrow: arrowFigure,
    },
    dimensions: {
      upper: columnSpan('upper', shape.roots.upper[0]),
      brace: columnSpan('brace', shape.grip[0]),
      lower: columnSpan('lower', shape.roots.lower[0]),
      string: {
        axis: 'up',
        from: Y(stringTop),
        to: Y(stringBottom),
        line: xs + STRING_LINE,
        objectFrom: xs,
        objectTo: xs,
        gap: stringFigure.gap,
      },
      length: {
        axis: 'up',
        from: Y(shape.top),
        to: Y(shape.bottom),
        line: xs + LENGTH_LINE,
        objectFrom: behindX - 4,
        objectTo: behindX - 4,
        gap: lengthFigure.gap,
      },
      arrow: {
        axis: 'across',
        from: X(bow.arrow),
        to: xs,
        line: arrowLine,
        objectFrom: Y(arrow.end[1]),
        objectTo: null,
        gap: place.inside ? [arrowBox.left - 3, arrowBox.right + 3] : null,
        leadTo: place.inside ? null : arrowBox.right + 2,
      },
    },
    leaders,
    keys: {
      A: key(xs, nockY, xs + 15, inColumn('A').at, 11),
      B: key(behindX, nockY, behindX - 30, nockY - 12, 13),
    },
    corner: { left: 0, right: cornerRight, top: cornerTop, bottom: height },
    bandReach:
      range === null || range[1] < shape.grip[0]
        ? []
        : [
            [X(shape.grip[0]), lineY.brace],
            [X(range[1]), lineY.brace],
          ],
    band: range === null ? null : { left: X(range[1]), right: X(range[0]), top: lineY.brace - 6, bottom: lineY.brace + 6 },
  };
  return turned({ ...made, x: X, xBehind: (z) => behindX + z * k }, bow.hand);
}

/** How high and how low the string reaches. */
const ends = ({ string }: BowShape): readonly [number, number] => [
  Math.max(...string.map(([, v]) => v)),
  Math.min(...string.map(([, v]) => v)),
];

/** The drawing turned over for a left-hander: places change sides, texts stay as they are. */
function turned(layout: BowLayout, hand: Hand): BowLayout {
  if (hand === 'right') return layout;
  const over = (x: number) => layout.width - x;
  const box = ({ left, right, top, bottom }: Box): Box => ({ left: over(right), right: over(left), top, bottom });
  const standing = ({ box: own, anchor }: Standing): Standing => ({
    box: box(own),
    anchor: anchor === 'start' ? 'end' : anchor === 'end' ? 'start' : 'middle',
  });
  const pair = (two: readonly [number, number] | null | undefined) => (two ? ([over(two[1]), over(two[0])] as const) : null);
  const some = (x: number | null | undefined) => (x === null || x === undefined ? null : over(x));
  const span = (one: Span): Span =>
    one.axis === 'across'
      ? { ...one, from: over(one.from), to: over(one.to), gap: pair(one.gap), leadTo: some(one.leadTo) }
      : { ...one, line: over(one.line), objectFrom: some(one.objectFrom), objectTo: some(one.objectTo) };
  const all = <K extends string, A, B>(record: Readonly<Record<K, A>>, change: (one: A) => B) =>
    Object.fromEntries(Object.entries<A>(record).map(([name, one]) => [name, change(one)])) as Record<K, B>;
  return {
    ...layout,
    x: (u) => over(layout.x(u)),
    xBehind: (z) => over(layout.xBehind(z)),
    figures: all(layout.figures, standing),
    dimensions: all(layout.dimensions, span),
    leaders: layout.leaders.map((line) => line.map(([x, y]) => [over(x), y] as const)),
    keys: all(layout.keys, ({ box: own, ring: [x, y, r] }) => ({ box: box(own), ring: [over(x), y, r] as const })),
    corner: layout.corner === null ? null : box(layout.corner),
    bandReach: layout.bandReach.map(([x, y]) => [over(x), y] as const),
    band: layout.band === null ? null : box(layout.band),
  };
}
