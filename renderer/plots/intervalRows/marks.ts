import { scaleLinear } from 'd3';
import { label, type Label } from '../labels.ts';
import { textWidth } from '../textWidth.ts';
import { ticksAcross, type Tick } from '../ticks.ts';

export interface IntervalRow {
  readonly name: string;
  readonly value: number;
  /** 95 %; null for a value that has none. */
  readonly interval: readonly [low: number, high: number] | null;
  /** The one that is asked about. */
  readonly strong: boolean;
}

export interface IntervalPanel {
  readonly title: string;
  readonly rows: readonly IntervalRow[];
  readonly against: number | null;
}

interface Unit {
  readonly factor: number;
  readonly symbol: string;
}

export interface IntervalMarks {
  readonly height: number;
  readonly names: readonly Label[];
  readonly panels: readonly {
    readonly title: Label;
    readonly left: number;
    readonly right: number;
    readonly against: number | null;
    readonly rows: readonly {
      readonly y: number;
      readonly at: number;
      readonly from: number;
      readonly to: number;
      /** The interval goes on past the edge of the panel. */
      readonly open: readonly [low: boolean, high: boolean];
      readonly bar: boolean;
      readonly strong: boolean;
    }[];
    readonly ticks: readonly Tick[];
  }[];
  readonly top: number;
  readonly axisY: number;
}

const lane = { row: 19, title: 22, axis: 24, gap: 26, edge: 6 } as const;
const NAME = 13;
/** An interval of few shots may be ten times as long as the rest: past so many times the values' own reach it runs out of the panel. */
const REACH = 2.5;

/** Rows of values with their intervals on one scale, panels side by side; the same names serve them all. */
export function intervalMarks(panels: readonly IntervalPanel[], width: number, unit: Unit): IntervalMarks {
  const rows = panels[0]?.rows ?? [];
  const nameWidth = rows.reduce((most, row) => Math.max(most, textWidth(row.name, NAME, 'name')), 0);
  const from = Math.ceil(nameWidth) + 14;
  const each = (width - from - lane.gap * (panels.length - 1) - lane.edge) / Math.max(1, panels.length);
  const axisY = lane.title + rows.length * lane.row + 4;
  const domain = domainOf(panels);
  const yOf = (i: number): number => lane.title + (i + 0.5) * lane.row;
  return {
    height: axisY + lane.axis,
    top: lane.title,
    axisY,
    names: rows.map((row, i) => label(row.name, 0, yOf(i) + 4, 'start', 'name', NAME)),
    panels: panels.map((panel, p) => {
      const left = from + p * (each + lane.gap);
      const right = left + each;
      const x = scaleLinear(domain, [left, right]);
      const within = (value: number): number => Math.max(left, Math.min(right, x(value)));
      return {
        title: label(panel.title, left, 14, 'start', 'name', NAME),
        left,
        right,
        against: panel.against === null ? null : x(panel.against),
        rows: panel.rows.map(({ value, interval, strong }, i) => ({
          y: yOf(i),
          at: within(value),
          from: within(interval?.[0] ?? value),
          to: within(interval?.[1] ?? value),
          open: [interval !== null && x(interval[0]) < left - 0.5, interval !== null && x(interval[1]) > right + 0.5] as const,
          bar: interval !== null,
          strong,
        })),
        ticks: ticksAcross(x, unit, axisY, right + lane.edge),
      };
    }),
  };
}

/** All values, and of the intervals as much as is not far out of proportion. */
function domainOf(panels: readonly IntervalPanel[]): [number, number] {
  const rows = panels.flatMap((panel) => panel.rows);
  const held = panels.flatMap(({ against }) => (against === null ? [] : [against]));
  const values = [...rows.map(({ value }) => value), ...held];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const halves = rows.flatMap(({ value, interval }) => (interval === null ? [] : [interval[1] - value, value - interval[0]]));
  const usual = halves.length === 0 ? 0 : ([...halves].sort((a, b) => a - b)[Math.floor(halves.length / 2)] ?? 0);
  const reach = Math.max(most - least, usual, 1e-9) * REACH;
  const ends = rows.flatMap(({ interval }) => interval ?? []);
  const low = Math.max(least - reach, Math.min(least, ...ends));
  const high = Math.min(most + reach, Math.max(most, ...ends));
  const air = 0.04 * Math.max(high - low, 1e-9);
  return [low - air, high + air];
}
