import { area, line } from 'd3';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, textQuantity, unitOf } from '../../../core/units/index.ts';
import type { Box } from '../boxes.ts';
import type { FlightData, FlightSample } from './data.ts';
import { flightFrame, flightScales, type FlightScales } from './frame.ts';
import { label, type Label } from '../labels.ts';
import {
  bandBoxes,
  bandLabel,
  NAME_SIZE,
  riseLabel,
  sideLabels,
  targetLabels,
  type Segment,
  type TargetLabels,
} from './placing.ts';

export interface FlightMarks extends FlightScales {
  readonly width: number;
  readonly right: number;
  /** The window that the curve is cut to: the ground or the axis ends it below. */
  readonly window: Box;
  readonly curve: string;
  readonly band: string;
  readonly edges: readonly [string, string];
  readonly ticks: readonly { readonly x: number; readonly label: Label }[];
  /** From the line of sight up to the highest point; null when the flight hardly rises above it. */
  readonly dimension: { readonly x: number; readonly from: number; readonly to: number } | null;
  readonly target: { readonly x: number; readonly y: number; readonly words: TargetLabels | null };
  readonly pointOn: { readonly low: number; readonly value: number; readonly high: number; readonly y: number } | null;
  readonly labels: readonly Label[];
  readonly leaders: readonly Segment[];
}

const BROKEN_OFF = 8;
const TICK = 12;

/** What a flight looks like at a width: paths, places and labels, none of which touch. */
export function flightMarks(data: FlightData, width: number, units: UnitChoice, low = false): FlightMarks {
  const scales = flightScales(data, width, low);
  const { x, y, lineY, groundY, axisY } = scales;
  const right = width - flightFrame.right;
  // Where the ground lies out of the picture the flight is broken off short of the axis, which is no ground.
  const bottom = groundY ?? axisY - BROKEN_OFF;
  const window: Box = { left: flightFrame.left - 1, right, top: flightFrame.lane, bottom };
  const points = [...data.samples];
  const path = (of: (sample: FlightSample) => number) =>
    line<FlightSample>(
      (sample) => x(sample.distance),
      (sample) => y(of(sample)),
    ).digits(2)(points) ?? '';
  const band =
    area<FlightSample>(
      (sample) => x(sample.distance),
      (sample) => y(sample.low),
      (sample) => y(sample.high),
    ).digits(2)(points) ?? '';

  const top = { x: x(data.top.distance), y: y(data.top.height) };
  const dimension = lineY - top.y >= 5 ? { x: top.x, from: lineY, to: top.y } : null;
  const targetX = x(data.setFor);
  const fixed = sideLabels(scales, right);
  const obstacles: Box[] = [
    ...bandBoxes(data, scales, bottom),
    { left: 0, right, top: lineY - 3, bottom: lineY + 3 },
    { left: targetX - 5, right: targetX + 5, top: lineY - 12, bottom: lineY + 12 },
    ...(dimension === null ? [] : [{ left: top.x - 5, right: top.x + 5, top: top.y, bottom: lineY }]),
    ...(groundY === null ? [] : [{ left: 0, right, top: groundY - 2, bottom: groundY + 2 }]),
    ...fixed.map((one) => one.box),
  ];
  const bounds: Box = { left: 2, right: width - 2, top: flightFrame.lane + 1, bottom: axisY - 2 };

  const rise = dimension === null ? null : riseLabel(textQuantity(data.top.height, 'drop', units), dimension, obstacles, bounds);
  if (rise !== null) obstacles.push(rise.box);
  const target = targetLabels(textQuantity(data.setFor, 'distance', units), targetX, lineY, obstacles, bounds);
  if (target !== null) obstacles.push(target.name.box, target.figure.box);
  const named = bandLabel(data, scales, bottom, obstacles, bounds);
  const pointOn = pointOnMarks(data, scales, right, width, units);

  return {
    ...scales,
    width,
    right,
    window,
    curve: path((sample) => sample.value),
    band,
    edges: [path((sample) => sample.high), path((sample) => sample.low)],
    ticks: tickMarks(scales, data.farEnd, units),
    dimension,
    target: { x: targetX, y: lineY, words: target },
    pointOn: pointOn?.bar ?? null,
    labels: [...fixed, rise, named?.label, pointOn?.label].filter((one): one is Label => one !== null && one !== undefined),
    leaders: named === null ? [] : [named.leader],
  };
}

function tickMarks({ x, axisY }: FlightScales, farEnd: number, units: UnitChoice): FlightMarks['ticks'] {
  const factor = factorOf('distance', units);
  const end = Math.round(farEnd / factor);
  const step = end > 100 ? 20 : end > 40 ? 10 : 5;
  const count = Math.floor(end / step);
  return Array.from({ length: count + 1 }, (_, i) => {
    const at = x(i * step * factor);
    const text = i === count ? `${i * step} ${unitOf('distance', units)}` : String(i * step);
    return { x: at, label: label(text, at, axisY + 18, 'middle', 'text', TICK) };
  });
}

function pointOnMarks(
  { pointOn, farEnd }: FlightData,
  { x, axisY }: FlightScales,
  right: number,
  width: number,
  units: UnitChoice,
) {
  if (pointOn === null || pointOn.value > farEnd) return null;
  const lane = axisY + flightFrame.axis + 10;
  const bar = { low: x(pointOn.low), value: x(pointOn.value), high: Math.min(x(pointOn.high), right), y: lane };
  const text = `point on ${textQuantity(pointOn.value, 'distance', units, { digits: 0 })}`;
  const after = label(text, bar.high + 9, lane + 4, 'start', 'name', NAME_SIZE);
  return { bar, label: after.box.right <= width ? after : label(text, bar.low - 9, lane + 4, 'end', 'name', NAME_SIZE) };
}
