import { scaleLinear, scaleUtc, utcDay, utcFormat } from 'd3';
import { textWidth } from '../flight/textWidth.ts';
import { spread } from '../spread.ts';

export interface TimelineData {
  /** Group sizes in the shown unit, oldest first; the panel is left out when there are fewer than two. */
  readonly sizes: {
    readonly name: string;
    readonly small: string;
    readonly points: readonly {
      readonly at: number;
      readonly shots: number;
      readonly value: number;
      readonly low: number;
      readonly high: number;
      readonly text: string;
    }[];
  };
  readonly lanes: readonly {
    readonly key: string;
    readonly name: string;
    readonly unit: string;
    readonly steps: readonly { readonly at: number; readonly value: number; readonly text: string }[];
    readonly now: { readonly value: number; readonly text: string } | null;
  }[];
  readonly flags: readonly { readonly id: string; readonly at: number; readonly name: string; readonly chosen: boolean }[];
}

/** Sizes in px. The last column stands apart from the scale of time: it is how the bow stands now. */
export const timelineSize = { left: 128, now: 62, flagRow: 18, panel: 148, lane: 37, axis: 26, foot: 18, dot: 11 } as const;

type Anchor = 'start' | 'middle' | 'end';
interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: Anchor;
}

export interface TimelineMarks {
  readonly height: number;
  readonly plot: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly panel: {
    readonly top: number;
    readonly bottom: number;
    readonly grid: readonly { readonly y: number; readonly text: string }[];
    readonly dots: readonly {
      readonly x: number;
      readonly at: number;
      readonly y: number;
      readonly r: number;
      readonly from: number;
      readonly to: number;
      /** The interval runs on beyond the panel. */
      readonly beyond: boolean;
    }[];
    readonly last: Label;
    readonly dotNote: boolean;
  } | null;
  readonly lanes: readonly {
    readonly key: string;
    readonly name: string;
    readonly unit: string;
    readonly y: number;
    readonly rule: number;
    readonly path: string;
    readonly labels: readonly Label[];
    readonly now: (Label & { readonly stepped: boolean }) | null;
  }[];
  readonly flags: readonly { readonly id: string; readonly x: number; readonly chosen: boolean; readonly label: Label | null }[];
  readonly ticks: readonly Label[];
}

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/** Group size above, one lane a setting below, and the snapshots as flags through all of them. */
export function timelineMarks(data: TimelineData, width: number): TimelineMarks {
  const { left, now, flagRow, panel, lane: laneHeight, axis, foot } = timelineSize;
  const right = width - now;
  const times = [
    ...data.sizes.points.map((point) => point.at),
    ...data.lanes.flatMap((lane) => lane.steps.map((step) => step.at)),
    ...data.flags.map((flag) => flag.at),
  ];
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const pad = Math.max((last - first) * 0.03, 2 * HOUR);
  const x = scaleUtc([first - pad, last + pad], [left, right]);

  const placed = placeFlags(data.flags, x, left, right);
  const top = placed.rows * flagRow + (placed.rows > 0 ? 6 : 0);
  const staffs = data.flags.map((flag) => x(flag.at));
  const shown = data.sizes.points.length > 1;
  const lanesTop = top + (shown ? panel + 14 : 0);
  const bottom = lanesTop + data.lanes.length * laneHeight;

  return {
    height: bottom + axis + foot - 8,
    plot: { left, right, top, bottom },
    panel: shown ? panelMarks(data.sizes.points, x, top, top + panel, left, right) : null,
    lanes: data.lanes.map((lane, index) => laneMarks(lane, x, lanesTop + index * laneHeight, right, staffs)),
    flags: placed.flags,
    ticks: timeTicks(x, first === last ? first : null, left, right, bottom + 17),
  };
}

type Time = ReturnType<typeof scaleUtc<number, number>>;

function panelMarks(
  points: TimelineData['sizes']['points'],
  x: Time,
  top: number,
  bottom: number,
  left: number,
  right: number,
): NonNullable<TimelineMarks['panel']> {
  const largest = Math.max(...points.map((point) => point.value));
  // Two arrows tell almost nothing: their interval would flatten all the others, so it may run out of the panel.
  const most = Math.min(Math.max(...points.map((point) => point.high)), 2.2 * largest);
  const least = Math.min(...points.map((point) => point.low));
  const y = scaleLinear([least, most], [bottom - 6, top + 6]).nice(4);
  const low = y.domain()[0] ?? 0;
  y.domain([low, Math.max(y.domain()[1] ?? most, most)]);
  const at = points.map((point) => x(point.at));
  const apart = spread(at, timelineSize.dot, left + 8, right - 8);
  const fewest = Math.min(...points.map((point) => point.shots));
  const greatest = Math.max(...points.map((point) => point.shots));
  const dots = points.map((point, index) => ({
    x: apart[index] ?? 0,
    at: at[index] ?? 0,
    y: y(point.value),
    r: 2 + 0.55 * Math.sqrt(Math.min(point.shots, 60)),
    from: y(Math.max(point.low, low)),
    to: y(Math.min(point.high, y.domain()[1] ?? most)),
    beyond: point.high > (y.domain()[1] ?? most),
  }));
  const last = dots.at(-1);
  return {
    top,
    bottom,
    grid: y.ticks(4).map((tick) => ({ y: y(tick), text: y.tickFormat(4)(tick).replace('-', '−') })),
    dots,
    last: { x: right + 10, y: (last?.y ?? top) + 5, text: points.at(-1)?.text ?? '', anchor: 'start' },
    dotNote: greatest > fewest,
  };
}

function laneMarks(
  lane: TimelineData['lanes'][number],
  x: Time,
  top: number,
  right: number,
  staffs: readonly number[],
): TimelineMarks['lanes'][number] {
  const values = [...lane.steps.map((step) => step.value), ...(lane.now === null ? [] : [lane.now.value])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const middle = top + timelineSize.lane / 2 + 5;
  const y = (value: number) => (most === least ? middle : scaleLinear([least, most], [middle + 7, middle - 7])(value));
  const steps = lane.steps.map((step) => ({ x: x(step.at), y: y(step.value), text: step.text }));
  const lastY = steps.at(-1)?.y ?? middle;
  const path = steps
    .map((step, index) => (index === 0 ? `M${px(step.x)} ${px(step.y)}` : `H${px(step.x)}V${px(step.y)}`))
    .join('');
  const nowY = lane.now === null ? lastY : y(lane.now.value);
  const end =
    steps.length === 0
      ? ''
      : `H${px(right)}${lane.now !== null && nowY !== lastY ? `V${px(nowY)}` : ''}${lane.now === null ? '' : `H${px(right + 8)}`}`;
  return {
    key: lane.key,
    name: lane.name,
    unit: lane.unit,
    y: middle,
    rule: top,
    path: path + end,
    labels: stepLabels(steps, right, staffs, lane.now?.text ?? null),
    now:
      lane.now === null
        ? null
        : { x: right + 11, y: nowY + 4.5, text: lane.now.text, anchor: 'start', stepped: steps.length > 0 && nowY !== lastY },
  };
}

/**
 * A figure over the beginning of each step, clear of the flags' staffs. Where steps crowd, the first and the last keep theirs and the
 * others take what room is left; the last one goes without when the figure of now says the same beside it.
 */
function stepLabels(
  steps: readonly { x: number; y: number; text: string }[],
  right: number,
  staffs: readonly number[],
  now: string | null,
): readonly Label[] {
  const taken: [number, number][] = [];
  const labels: Label[] = [];
  const order = [0, steps.length - 1, ...steps.keys()];
  for (const index of new Set(order)) {
    const step = steps[index];
    if (step === undefined || (index === steps.length - 1 && step.text === now && step.x > right - 70)) continue;
    const wide = textWidth(step.text, 13, 'strong');
    let from = Math.min(step.x + 2, right - 4 - wide);
    for (const staff of staffs) if (staff > from - 4 && staff < from + wide + 3) from = staff + 4;
    if (from + wide > right - 3 || taken.some(([a, b]) => from < b + 5 && from + wide > a - 5)) continue;
    taken.push([from, from + wide]);
    labels.push({ x: from, y: step.y - 5, text: step.text, anchor: 'start' });
  }
  return labels;
}

/** The chosen flags are named first; each name takes the upper or the lower row, right or left of its staff, or stays in the shelf. */
function placeFlags(flags: TimelineData['flags'], x: Time, left: number, right: number) {
  const taken: { row: number; from: number; to: number }[] = flags.map((flag) => ({
    row: 0,
    from: x(flag.at) - 6,
    to: x(flag.at) + 6,
  }));
  const labels = new Map<string, Label & { row: number }>();
  const free = (row: number, from: number, to: number) =>
    from >= left - 100 &&
    to <= right + timelineSize.now &&
    taken.every((one) => one.row !== row || to < one.from || from > one.to);
  for (const flag of [...flags].sort((a, b) => Number(b.chosen) - Number(a.chosen) || b.at - a.at)) {
    const at = x(flag.at);
    const wide = textWidth(flag.name, 13, 'name');
    for (const [row, side] of [
      [0, 1],
      [0, -1],
      [1, 1],
      [1, -1],
    ] as const) {
      const from = side === 1 ? at + 9 : at - 9 - wide;
      if (!free(row, from, from + wide)) continue;
      taken.push({ row, from: from - 4, to: from + wide + 4 });
      labels.set(flag.id, { row, x: side === 1 ? at + 9 : at - 9, y: 0, text: flag.name, anchor: side === 1 ? 'start' : 'end' });
      break;
    }
  }
  const rows = flags.length === 0 ? 0 : [...labels.values()].some((label) => label.row === 1) ? 2 : 1;
  return {
    rows,
    flags: flags.map((flag) => {
      const label = labels.get(flag.id);
      return {
        id: flag.id,
        x: x(flag.at),
        chosen: flag.chosen,
        label:
          label === undefined
            ? null
            : { x: label.x, y: 12 + label.row * timelineSize.flagRow, text: label.text, anchor: label.anchor },
      };
    }),
  };
}

const byHour = utcFormat('%H:%M');
const byDay = utcFormat('%-d %b');
const byMonth = utcFormat('%b');
const dayAndYear = utcFormat('%-d %b %Y');
const monthAndYear = utcFormat('%b %Y');

/** Hours, days or months, as the span asks; the first tick also says which year, or which day. A tick whose text would touch is left out. */
function timeTicks(x: Time, moment: number | null, left: number, right: number, y: number): readonly Label[] {
  const [from, to] = x.domain();
  const span = Number(to) - Number(from);
  const count = Math.max(2, Math.floor((right - left) / 84));
  const inHours = moment === null && span < 2 * DAY;
  const ticks =
    moment !== null ? [new Date(moment)] : inHours || span >= 60 * DAY ? x.ticks(count) : x.ticks(count).filter(isMidnight);
  const months = span >= 60 * DAY && ticks.every((tick) => tick.getUTCDate() === 1);
  const shown: Label[] = [];
  let [end, last] = [-Infinity, null as Date | null];
  for (const tick of ticks) {
    const newDay = last === null || utcDay(tick) > utcDay(last);
    const newYear = last === null || tick.getUTCFullYear() !== last.getUTCFullYear();
    const text = inHours
      ? `${newDay ? `${byDay(tick)}, ` : ''}${byHour(tick)}`
      : months
        ? (newYear ? monthAndYear : byMonth)(tick)
        : (newYear ? dayAndYear : byDay)(tick);
    const at = x(tick);
    if (at < end + 10 || at + textWidth(text, 12, 'text') > right) continue;
    shown.push({ x: at, y, text, anchor: 'start' });
    [end, last] = [at + textWidth(text, 12, 'text'), tick];
  }
  return shown;
}

const isMidnight = (tick: Date): boolean => Number(utcDay.floor(tick)) === Number(tick);
const px = (value: number): string => value.toFixed(1);
