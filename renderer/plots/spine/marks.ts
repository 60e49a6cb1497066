import { extent, scaleLinear } from 'd3';

/** A view of what this bow wants: a range of deflection on the standard tester [m], or why it does not say. */
export interface SpineView {
  readonly name: string;
  readonly needed: { readonly low: number; readonly high: number } | null;
  readonly says: string;
  readonly level: 'ok' | 'caution' | 'unknown';
}

interface SpineMarks {
  readonly left: number;
  readonly right: number;
  readonly rows: readonly {
    readonly view: SpineView;
    readonly y: number;
    readonly from: number;
    readonly to: number;
    readonly middle: number;
  }[];
  readonly axisY: number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
  readonly measured: { readonly at: number; readonly anchor: 'start' | 'end' };
  readonly height: number;
}

/** Heights in px: the measured shaft's name above, then one row a view, then the axis. */
const rowHeight = 30;
const top = 34;
const nameWidth = 118;
const saysWidth = 104;

/** Every view of the wanted spine on one axis, never merged; the measured shaft is one line through them all. */
export function spineMarks(
  views: readonly SpineView[],
  measured: number,
  width: number,
  perUnit: number,
  unit: string,
): SpineMarks {
  const known = views.flatMap((view) => (view.needed === null ? [] : [view.needed.low, view.needed.high]));
  const all = [...known, measured].map((si) => si / perUnit);
  const [least = 0, most = 0] = extent(all);
  const margin = Math.max(0.15 * (most - least), 0.06 * most);
  const left = nameWidth;
  const right = width - saysWidth;
  const x = scaleLinear([Math.max(0, least - margin), most + margin], [left, right]).nice(6);
  const values = x.ticks(Math.max(3, Math.floor((right - left) / 70)));
  const at = x(measured / perUnit);
  return {
    left,
    right,
    rows: views.map((view, i) => ({
      view,
      y: top + 8 + i * rowHeight,
      from: view.needed === null ? 0 : x(view.needed.low / perUnit),
      to: view.needed === null ? 0 : x(view.needed.high / perUnit),
      middle: view.needed === null ? 0 : x((view.needed.low + view.needed.high) / 2 / perUnit),
    })),
    axisY: top + views.length * rowHeight,
    ticks: values.map((value, i) => ({
      at: x(value),
      text: `${x.tickFormat(5)(value)}${i === values.length - 1 ? ` ${unit}` : ''}`,
    })),
    measured: { at, anchor: at > (left + right) / 2 ? 'end' : 'start' },
    height: top + views.length * rowHeight + 46,
  };
}
