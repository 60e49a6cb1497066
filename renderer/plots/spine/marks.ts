import { label, type Label } from '../labels.ts';
import { textWidth } from '../textWidth.ts';
import type { SpineScale } from './axis.ts';

/** A view of what this bow wants: a range of deflection on the standard tester [m]. */
export interface SpineView {
  readonly name: string;
  readonly needed: { readonly low: number; readonly high: number };
  readonly says: string;
  readonly level: 'ok' | 'caution' | 'unknown';
}

/** The shaft on the axis: a mark, or a band where its deflection follows from a tube and not from a tester [m]. */
export interface ShaftMark {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** "this shaft, 0.720 in" */
  readonly text: string;
  /** "0.720 in = 36 lb wood" */
  readonly wood: string;
}

interface SpineRow {
  readonly view: SpineView;
  readonly y: number;
  readonly from: number;
  readonly to: number;
  readonly middle: number;
}

interface SpineMarks {
  readonly rows: readonly SpineRow[];
  readonly axisY: number;
  readonly shaft: { readonly at: number; readonly from: number; readonly to: number };
  readonly labels: {
    readonly shaft: Label;
    readonly views: readonly { readonly name: Label; readonly says: Label }[];
    readonly ticks: readonly Label[];
    readonly ends: readonly Label[];
    readonly wood: Label;
  };
  readonly height: number;
}

/** Heights in px: the shaft's name above, then one row a view, then the axis. */
const rowHeight = 28;
const top = 34;

/** Every view of the wanted spine on one axis, never merged; the measured shaft is one line through them all. */
export function spineMarks(views: readonly SpineView[], shaft: ShaftMark, scale: SpineScale): SpineMarks {
  const { left, right, width, at } = scale;
  const axisY = top + views.length * rowHeight;
  const shaftAt = at(shaft.value);
  const rows = views.map((view, i) => ({
    view,
    y: top + 8 + i * rowHeight,
    from: at(view.needed.low),
    to: at(view.needed.high),
    middle: at((view.needed.low + view.needed.high) / 2),
  }));
  const fits = shaftAt + 9 + textWidth(shaft.text, 13, 'strong') <= width;
  return {
    rows,
    axisY,
    shaft: { at: shaftAt, from: at(shaft.low), to: at(shaft.high) },
    labels: {
      shaft: label(shaft.text, shaftAt + (fits ? 9 : -9), 20, fits ? 'start' : 'end', 'strong', 13),
      views: rows.map(({ view, y }) => ({
        name: label(view.name, 0, y + 4, 'start', 'text', 13),
        says: label(view.says, width, y + 4, 'end', view.level === 'unknown' ? 'text' : 'strong', 13),
      })),
      ticks: scale.ticks.map((tick) => label(tick.text, tick.at, axisY + 17, 'middle', 'text', 12)),
      ends: [
        label('deflection', 0, axisY + 17, 'start', 'text', 12),
        label('stiffer', left, axisY + 34, 'start', 'name', 13),
        label('weaker', right, axisY + 34, 'end', 'name', 13),
      ],
      wood: label(shaft.wood, width, axisY + 34, 'end', 'text', 12),
    },
    height: axisY + 42,
  };
}
