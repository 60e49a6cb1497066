import { area, line, scaleLinear, type ScaleLinear } from 'd3';
import { label, type Label } from '../labels.ts';
import { signed } from '../signed.ts';
import { textWidth } from '../textWidth.ts';
import { ticksAcross, type Tick } from '../ticks.ts';

/** Known marks against the fitted line; distances in SI, what they are off by in the shown unit of settings. */
export interface MarkLineData {
  /** Half of the line's 95 % along the distances, nearest first. */
  readonly line: readonly { readonly distance: number; readonly half: number }[];
  readonly known: readonly {
    readonly distance: number;
    readonly off: number;
    readonly fits: boolean;
    readonly counts: boolean;
  }[];
  /** SI value of one of the shown distances, and its name. */
  readonly distanceFactor: number;
  readonly distanceUnit: string;
  readonly unit: string;
}

export const markLineFrame = { height: 150, top: 24, axis: 24, right: 16 } as const;
const SIZE = 12;

export interface MarkLineMarks {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly axisY: number;
  readonly zero: number;
  readonly x: ScaleLinear<number, number>;
  readonly up: readonly { readonly y: number; readonly label: Label }[];
  readonly across: readonly Tick[];
  readonly band: string;
  readonly edges: readonly [string, string];
  readonly dots: readonly { readonly x: number; readonly y: number; readonly fits: boolean; readonly counts: boolean }[];
}

/** How far each known mark lies off the fitted line, within the line's own 95 %. */
export function markLineMarks(data: MarkLineData, width: number): MarkLineMarks {
  const { height, top, axis, right: edge } = markLineFrame;
  const axisY = height - axis;
  const known = Math.max(0, ...data.known.map(({ off }) => Math.abs(off)));
  const widest = Math.max(...data.line.map(({ half }) => half), 0);
  // A band that flares out far off the marks is cut, or the marks would lie on one line.
  const reach = Math.max(
    known * 1.15,
    Math.min(widest, 3 * Math.max(known, Math.min(...data.line.map(({ half }) => half)))),
    1e-6,
  );
  const y = scaleLinear([-reach, reach], [axisY - 4, top]);
  // Three at least: nought and one on either side.
  const [values = [0]] = [3, 4, 5, 6, 8].map((count) => y.ticks(count)).filter((some) => some.length > 2);
  const texts = values.map((tick) => ({ tick, text: signed(tick) }));
  const last = texts.at(-1);
  const shown = texts.map(({ tick, text }) => ({ tick, text: tick === last?.tick ? `${text} ${data.unit}` : text }));
  const left = Math.ceil(Math.max(...shown.map(({ text }) => textWidth(text, SIZE, 'text')))) + 8;
  const right = width - edge;
  const x = scaleLinear([data.line[0]?.distance ?? 0, data.line.at(-1)?.distance ?? 1], [left, right]);
  const path = (side: 1 | -1) =>
    line<MarkLineData['line'][number]>(
      ({ distance }) => x(distance),
      ({ half }) => y(side * half),
    ).digits(2)([...data.line]) ?? '';
  return {
    width,
    height,
    left,
    right,
    axisY,
    zero: y(0),
    x,
    up: shown.map(({ tick, text }) => ({ y: y(tick), label: label(text, left - 8, y(tick) + 4, 'end', 'text', SIZE) })),
    across: ticksAcross(x, { factor: data.distanceFactor, symbol: data.distanceUnit }, axisY, width),
    band:
      area<MarkLineData['line'][number]>()
        .x(({ distance }) => x(distance))
        .y0(({ half }) => y(-half))
        .y1(({ half }) => y(half))
        .digits(2)([...data.line]) ?? '',
    edges: [path(1), path(-1)],
    dots: data.known.map(({ distance, off, fits, counts }) => ({ x: x(distance), y: y(off), fits, counts })),
  };
}
