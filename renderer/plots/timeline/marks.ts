import { extent, scaleUtc } from 'd3';
import { timelineSize, type TimelineData, type TimelineMarks } from './data.ts';
import { placeFlags } from './flags.ts';
import { laneMarks } from './lanes.ts';
import { panelMarks } from './panel.ts';
import { timeTicks } from './ticks.ts';

const HOUR = 3_600_000;

/** Group size above, one lane a setting below, and the snapshots as flags through all of them. */
export function timelineMarks(data: TimelineData, width: number): TimelineMarks {
  const { left, now, flagRow, panel, lane: laneHeight, axis, foot } = timelineSize;
  const right = width - now;
  const times = [
    ...data.sizes.points.map((point) => point.at),
    ...data.lanes.flatMap((lane) => [...lane.steps, ...(lane.tried ?? [])].map((step) => step.at)),
    ...data.flags.map((flag) => flag.at),
  ];
  const [first = 0, last = 0] = extent(times);
  // A single moment needs room about it; a stretch of minutes must not be drawn as hours.
  const pad = last > first ? (last - first) * 0.03 : 2 * HOUR;
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
