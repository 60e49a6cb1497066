import { extent, scaleLinear } from 'd3';
import { textWidth } from '../textWidth.ts';
import { timelineSize, type Label, type Time, type TimelineData, type TimelineMarks } from './data.ts';

/** One setting as a line that steps, and how it stands now beside its end. */
export function laneMarks(
  lane: TimelineData['lanes'][number],
  x: Time,
  top: number,
  right: number,
  staffs: readonly number[],
): TimelineMarks['lanes'][number] {
  const tried = lane.tried ?? [];
  const values = [...[...lane.steps, ...tried].map(({ value }) => value), ...(lane.now === null ? [] : [lane.now.value])];
  const [least = 0, most = 0] = extent(values);
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
    tried: tried.map(({ at, value, text }) => ({ x: x(at), y: y(value), text })),
    labels: stepLabels(steps, top, right, staffs, lane.now?.text ?? null),
    now:
      lane.now === null
        ? null
        : {
            x: right + 11,
            y: Math.min(nowY + 4.5, top + timelineSize.lane - 4),
            text: lane.now.text,
            anchor: 'start',
            stepped: steps.length > 0 && nowY !== lastY,
          },
  };
}

/** How high a figure stands over its foot, and how far its foot keeps from the line [px]. */
const FIGURE = { high: 10, off: 5 } as const;

/**
 * A figure over the beginning of each step, or under it where another part of the line is in the way, clear of the flags' staffs. Where steps crowd, the first and the last keep theirs and the
 * others take what room is left; the last one goes without when the figure of now says the same beside it.
 */
function stepLabels(
  steps: readonly { x: number; y: number; text: string }[],
  top: number,
  right: number,
  staffs: readonly number[],
  now: string | null,
): readonly Label[] {
  const taken: [number, number][] = [];
  const labels: Label[] = [];
  const sorted = [...staffs].sort((a, b) => a - b);
  /** Whether some part of the line runs through the box. */
  const struck = (from: number, to: number, above: number, below: number) =>
    steps.some((step, index) => {
      const next = steps[index + 1];
      const before = steps[index - 1]?.y ?? step.y;
      const end = next?.x ?? right;
      const rises = step.x > from - 2 && step.x < to + 2 && Math.max(before, step.y) > above && Math.min(before, step.y) < below;
      const runs = step.x < to + 2 && end > from - 2 && step.y > above - 2 && step.y < below + 2;
      return rises || runs;
    });
  const order = [0, steps.length - 1, ...steps.keys()];
  for (const index of new Set(order)) {
    const step = steps[index];
    if (step === undefined || (index === steps.length - 1 && step.text === now && step.x > right - 70)) continue;
    const wide = textWidth(step.text, 13, 'strong');
    let from = Math.min(step.x + 2, right - 4 - wide);
    for (const staff of sorted) if (staff > from - 4 && staff < from + wide + 3) from = staff + 4;
    if (from + wide > right - 3 || taken.some(([a, b]) => from < b + 5 && from + wide > a - 5)) continue;
    const foot = [step.y - FIGURE.off, step.y + FIGURE.off + FIGURE.high].find(
      (y) => y <= top + timelineSize.lane - 2 && !struck(from, from + wide, y - FIGURE.high, y),
    );
    if (foot === undefined) continue;
    taken.push([from, from + wide]);
    labels.push({ x: from, y: foot, text: step.text, anchor: 'start' });
  }
  return labels;
}

const px = (value: number): string => value.toFixed(1);
