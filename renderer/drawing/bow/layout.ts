import { inch } from '../../../core/units/exact.ts';
import { figureBox, type FigureSize } from '../dimension/figureBox.ts';
import { lane, type Wish } from '../dimension/lanes.ts';
import type { Span } from '../dimension/lines.ts';
import { nockedArrow, POINT } from './arrow.ts';
import type { DrawnBow } from './figures.ts';
import { bowShape } from './geometry.ts';
import type { BowShape } from './shape.ts';
import { sizeOf, type BowLayout, type BowTexts, type OnDrawing, type Standing } from './standing.ts';
import { turned } from './turned.ts';

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
/** Round the arrowhead at a dimension's end no figure stands [px]. */
const END_FREE = 12;

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
  // Between the string's ends, whose extension lines cross the column; a bow too small for that lends it the whole sheet.
  const [stringTop, stringBottom] = ends(shape);
  const wishes = column.map(wish);
  const between = [Math.max(HEAD, Y(stringTop) + END_FREE / 2), Math.min(height - FOOT, Y(stringBottom) - END_FREE / 2)] as const;
  const fits = between[1] - between[0] >= wishes.reduce((sum, one) => sum + one.size + LANE_GAP, 0);
  const places = lane(wishes, fits ? between[0] : HEAD, fits ? between[1] : height - FOOT, LANE_GAP);
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
  const upright = (which: 'string' | 'length', line: number, middle: number): Standing => {
    const own = size(which);
    const [least, most] = [xs + STRING_LINE + 3 + own.width / 2, xs + BEHIND - inch * k - 3 - own.width / 2];
    const at = which === 'string' ? line : Math.max(least, Math.min(most, line));
    return { box: figureBox(own, at, middle - own.height / 2 + own.middle, 'middle'), anchor: 'middle' };
  };
  const halfOf = (which: OnDrawing) => size(which).height / 2 + LANE_GAP;
  const [above, below] = [inColumn('upper').from, inColumn('tiller').to];
  // Above the upper limb's figure, inside the dimension; where that is too narrow, outside over its end.
  const [top, room] = [Y(stringTop) + END_FREE, above - Y(stringTop) - END_FREE - 2 * halfOf('string')];
  const stringAt =
    room >= 0 ? Math.min((Y(stringTop) + above) / 2, above - halfOf('string')) : top - 2 * END_FREE - halfOf('string');
  const stringFigure = upright('string', xs + STRING_LINE, Math.max(stringAt, HEAD + halfOf('string')));
  const lengthAt = Math.min((Y(shape.bottom) + below) / 2, Y(shape.bottom) - END_FREE - halfOf('length'));
  const lengthFigure = upright('length', xs + LENGTH_LINE, lengthAt);
  const gapOf = ({ box }: Standing) => [box.top - 3, box.bottom + 3] as const;

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
      string: stringFigure,
      length: lengthFigure,
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
        gap: room >= 0 ? gapOf(stringFigure) : null,
        leadTo: room >= 0 ? null : stringFigure.box.bottom + 2,
      },
      length: {
        axis: 'up',
        from: Y(shape.top),
        to: Y(shape.bottom),
        line: xs + LENGTH_LINE,
        objectFrom: behindX - 4,
        objectTo: behindX - 4,
        gap: gapOf(lengthFigure),
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
