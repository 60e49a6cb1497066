import { line, max, min, scaleLinear } from 'd3';
import { touches } from '../boxes.ts';
import { label, type Label } from '../labels.ts';
import { ticksUp, widthUp, type Tick } from '../ticks.ts';

/** A value at a place on the axis, with its 95 % interval. */
export interface AlongPoint {
  readonly at: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Drawn full: it is among those that the reading is about. */
  readonly strong: boolean;
}

interface Unit {
  readonly factor: number;
  readonly symbol: string;
}

export interface AlongPanel {
  readonly title: string;
  readonly unit: Unit;
  readonly points: readonly AlongPoint[];
  readonly line: readonly { readonly at: number; readonly value: number }[];
  /** Nought is on the scale and has a line of its own. */
  readonly zero: boolean;
  /** A place on the axis with its interval, and what is said at it. */
  readonly place: { readonly at: number; readonly low: number; readonly high: number; readonly text: string } | null;
}

/** Values against one setting: panels below each other on one axis. */
export interface AlongData {
  readonly axis: string;
  /** The settings that were tried, as they are written; the last with its unit. */
  readonly settings: readonly { readonly at: number; readonly text: string }[];
  readonly panels: readonly AlongPanel[];
}

export interface AlongMarks {
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly across: readonly Tick[];
  readonly axisName: Label;
  readonly axisY: number;
  readonly panels: readonly {
    readonly title: Label;
    readonly top: number;
    readonly bottom: number;
    readonly up: readonly Tick[];
    readonly zero: number | null;
    readonly line: string;
    readonly place: { readonly x: number; readonly from: number; readonly to: number; readonly label: Label } | null;
    readonly points: readonly {
      readonly x: number;
      readonly y: number;
      readonly from: number;
      readonly to: number;
      /** The interval runs on beyond the panel. */
      readonly open: readonly [low: boolean, high: boolean];
      readonly strong: boolean;
    }[];
  }[];
}

const frame = { title: 24, panel: 138, gap: 10, axis: 40, right: 26 } as const;
/** An interval of few arrows would flatten all the others: past so many times the values' own reach it runs out of the panel. */
const REACH = 2.2;
const NAME = 13;

export function alongMarks(data: AlongData, width: number): AlongMarks {
  const scales = data.panels.map((panel, i) => {
    const top = i * (frame.title + frame.panel + frame.gap) + frame.title;
    return { panel, top, y: scaleLinear(domainOf(panel), [top + frame.panel - 8, top + 8]) };
  });
  const left = Math.ceil(Math.max(0, ...scales.map(({ panel, y }) => widthUp(y, panel.unit)))) + 8;
  const right = width - frame.right;
  const places = data.panels.flatMap(({ points, line: drawn }) => [...points, ...drawn].map(({ at }) => at));
  const [least, most] = [min(places) ?? 0, max(places) ?? 1];
  const pad = most > least ? 0.07 * (most - least) : 0.001;
  const x = scaleLinear([least - pad, most + pad], [left, right]);
  const axisY = data.panels.length * (frame.title + frame.panel + frame.gap) - frame.gap;
  return {
    height: axisY + frame.axis,
    left,
    right,
    axisY,
    across: settingTicks(data.settings, x, axisY, width),
    axisName: label(data.axis, left, axisY + 35, 'start', 'name', NAME),
    panels: scales.map(({ panel, top, y }) => {
      const bottom = top + frame.panel;
      const within = (value: number) => Math.max(top, Math.min(bottom, y(value)));
      return {
        title: label(panel.title, 0, top - 9, 'start', 'name', NAME),
        top,
        bottom,
        up: ticksUp(y, panel.unit, left - 8),
        zero: panel.zero ? y(0) : null,
        line:
          line<{ at: number; value: number }>(
            ({ at }) => x(at),
            ({ value }) => y(value),
          ).digits(1)([...panel.line]) ?? '',
        place: placeOf(panel, x, left, right, top),
        points: panel.points.map(({ at, value, low, high, strong }) => ({
          x: x(at),
          y: y(value),
          from: within(low),
          to: within(high),
          open: [y(low) > bottom, y(high) < top] as const,
          strong,
        })),
      };
    }),
  };
}

function domainOf({ points, line: drawn, zero }: AlongPanel): [number, number] {
  const values = [...points, ...drawn].map(({ value }) => value);
  const [least, most] = [min(values) ?? 0, max(values) ?? 1];
  const reach = Math.max(most - least, 0.25 * Math.abs(most), 1e-6) * REACH;
  const low = Math.max(min(points, ({ low: end }) => end) ?? least, least - reach);
  const high = Math.min(max(points, ({ high: end }) => end) ?? most, most + reach);
  return zero ? [Math.min(low, 0), Math.max(high, 0)] : [low, high];
}

function placeOf({ place }: AlongPanel, x: (si: number) => number, left: number, right: number, top: number) {
  if (place === null) return null;
  const within = (px: number) => Math.max(left, Math.min(right, px));
  const at = within(x(place.at));
  const anchor = at > (left + right) / 2 ? 'end' : 'start';
  return {
    x: at,
    from: within(x(place.low)),
    to: within(x(place.high)),
    // In the lane of the title, where no grid and no band runs through it.
    label: label(place.text, anchor === 'end' ? at - 6 : at + 6, top - 5, anchor, 'name', NAME),
  };
}

/** A tick at each setting that was tried; the last is always written, of the others those that have room. */
function settingTicks(settings: AlongData['settings'], x: (si: number) => number, y: number, width: number): readonly Tick[] {
  const ticks: Tick[] = [];
  let after: Label | null = null;
  for (const { at, text } of settings.toReversed()) {
    const written = label(text, x(at), y + 17, 'middle', 'text', 12);
    const one: Label = written.box.right > width ? label(text, width, y + 17, 'end', 'text', 12) : written;
    const free = after === null || !touches({ ...one.box, right: one.box.right + 5 }, after.box);
    ticks.unshift({ at: x(at), label: free ? one : null });
    if (free) after = one;
  }
  return ticks;
}
