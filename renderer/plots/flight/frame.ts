import { max, scaleLinear, type ScaleLinear } from 'd3';
import type { FlightData } from './data.ts';

/** Pixels: the margins around the flight, the lane above it for the readout, and the room that labels need below the line of sight. */
export const flightFrame = {
  left: 38,
  right: 92,
  lane: 22,
  above: 6,
  below: 58,
  axis: 24,
  pointOnLane: 24,
  height: 204,
  /** Where the window is low, so that what belongs to the flight is seen with it. */
  lowHeight: 170,
} as const;

/** A flight lower than this reads as a line [px]. */
const LEAST_RISE = 40;

/** Heights are drawn this many times larger than distances: the largest that fits. */
const exaggerations = [40, 30, 20, 15, 12, 10, 8, 6, 5, 4, 3, 2, 1, 0.5, 0.25];

export interface FlightScales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly exaggeration: number;
  readonly height: number;
  /** Where the line of sight, the ground and the axis of distances run; the ground is null when it is not known or lies out of the picture. */
  readonly lineY: number;
  readonly groundY: number | null;
  readonly axisY: number;
}

export function flightScales(data: FlightData, width: number, low: boolean): FlightScales {
  const { left, right, lane, above, below, axis, pointOnLane } = flightFrame;
  const least = low ? flightFrame.lowHeight : flightFrame.height;
  const height = least + (data.pointOn === null ? 0 : pointOnLane);
  const axisY = least - axis;
  const x = scaleLinear([0, data.farEnd], [left, width - right]);
  const perMetre = x(1) - x(0);
  const rising = max(data.samples, (sample) => (sample.distance <= data.setFor ? sample.high : 0)) ?? 0;
  const tallest = Math.max(data.top.height, rising, 0.01);
  const room = axisY - lane - above;
  const fits = (metres: number, factor: number, pixels: number) => metres * perMetre * factor <= pixels;
  const largest = (fit: (factor: number) => boolean) => exaggerations.find(fit) ?? (exaggerations.at(-1) as number);
  const alone = largest((factor) => fits(tallest, factor, room - below));
  // A picture that reaches down to the ground says more than a taller one, as long as the flight does not sink to a line.
  const { ground } = data;
  const grounded = ground === null ? 0 : largest((factor) => factor <= alone && fits(tallest + ground, factor, room));
  const exaggeration = fits(tallest, grounded, LEAST_RISE) ? alone : grounded;
  const scale = perMetre * exaggeration;
  const highest = room - tallest * scale;
  const groundDepth = ground === null || ground * scale > highest ? null : ground * scale;
  const depth = groundDepth === null ? highest : Math.max(below, groundDepth);
  const lineY = axisY - depth;
  return {
    x,
    y: scaleLinear([0, 1], [lineY, lineY - scale]),
    exaggeration,
    height,
    lineY,
    groundY: groundDepth === null ? null : lineY + groundDepth,
    axisY,
  };
}
