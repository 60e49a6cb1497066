import type { Box } from '../boxes.ts';
import type { FlightData, FlightSample } from './data.ts';
import { flightFrame, type FlightScales } from './frame.ts';
import { firstFree, label, type Label } from '../labels.ts';

/** Type sizes on the plot [px]. */
export const NAME_SIZE = 13;
const FIGURE = 16;

export interface Segment {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** The names in the margins, each in a lane of its own. */
export function sideLabels({ lineY, groundY }: FlightScales, right: number): Label[] {
  const eye = label('eye', flightFrame.left - 10, lineY - 10, 'middle', 'name', NAME_SIZE);
  // Line and ground may run close together; their names then stand apart.
  const crowd = groundY === null ? 0 : Math.max(0, (18 - (groundY - lineY)) / 2);
  const sight = label('line of sight', right + 8, lineY + 4 - crowd, 'start', 'name', NAME_SIZE);
  return groundY === null
    ? [eye, sight]
    : [eye, sight, label('ground', right + 8, groundY + 4 + crowd, 'start', 'name', NAME_SIZE)];
}

/** The band as a row of small boxes, so that labels keep off it. */
export function bandBoxes(data: FlightData, { x, y, lineY }: FlightScales, bottom: number): Box[] {
  return data.samples.slice(1).flatMap((sample, i) => {
    const before = data.samples[i] as FlightSample;
    const top = Math.min(y(sample.high), y(before.high)) - 3;
    const under = Math.min(Math.max(y(sample.low), y(before.low)) + 3, bottom);
    return top > bottom && lineY < bottom ? [] : [{ left: x(before.distance), right: x(sample.distance), top, bottom: under }];
  });
}

/** How high it rises: beside the dimension, over the top, or under the line. */
export function riseLabel(
  text: string,
  { x, from, to }: { x: number; from: number; to: number },
  obstacles: readonly Box[],
  bounds: Box,
): Label | null {
  const middle = (from + to) / 2 + 0.34 * FIGURE;
  const places = [
    label(text, x + 9, middle, 'start', 'strong', FIGURE),
    label(text, x - 9, middle, 'end', 'strong', FIGURE),
    label(text, x, to - 9, 'middle', 'strong', FIGURE),
    label(text, x, to - 15, 'middle', 'strong', FIGURE),
    label(text, x, from + 20, 'middle', 'strong', FIGURE),
  ];
  return firstFree(places, (place) => [place.box], obstacles, bounds);
}

export interface TargetLabels {
  readonly name: Label;
  readonly figure: Label;
}

/** The distance it is set for, beside the target: before it under the line, or beyond it above. */
export function targetLabels(
  text: string,
  x: number,
  lineY: number,
  obstacles: readonly Box[],
  bounds: Box,
): TargetLabels | null {
  const rightward = (at: number, base: number): TargetLabels => {
    const name = label('set for', at, base, 'start', 'name', NAME_SIZE);
    return { name, figure: label(text, name.box.right + 6, base, 'start', 'strong', FIGURE) };
  };
  const leftward = (at: number, base: number): TargetLabels => {
    const figure = label(text, at, base, 'end', 'strong', FIGURE);
    return { name: label('set for', figure.box.left - 6, base, 'end', 'name', NAME_SIZE), figure };
  };
  const places = [
    ...[22, 34, 46].map((down) => leftward(x - 12, lineY + down)),
    ...[12, 26, 40].map((up) => rightward(x + 12, lineY - up)),
    ...[22, 40].map((down) => rightward(x + 12, lineY + down)),
  ];
  return firstFree(places, (place) => [place.name.box, { ...place.figure.box, bottom: place.figure.y + 6 }], obstacles, bounds);
}

/** The name of the band, with a leader to the edge it speaks of: beyond the target above it, or before the target under it. */
export function bandLabel(
  data: FlightData,
  { x, y, lineY }: FlightScales,
  bottom: number,
  obstacles: readonly Box[],
  bounds: Box,
): { readonly label: Label; readonly leader: Segment } | null {
  const past = data.samples.filter((sample) => sample.distance >= data.setFor && y(sample.value) < bottom - 4);
  const named = past[Math.floor(past.length * 0.55)];
  if (named === undefined) return null;
  const at = { x: x(named.distance), high: y(named.high), low: Math.min(y(named.low), bottom - 3) };
  const places = [
    ...[14, 28, 42, 56].flatMap((up) =>
      [4, 20, 40].map((ahead) => {
        const text = label(data.bandName, at.x + ahead, lineY - up, 'start', 'name', NAME_SIZE);
        return { label: text, leader: { x1: text.box.left + 10, y1: text.box.bottom + 1, x2: at.x + 1, y2: at.high - 1 } };
      }),
    ),
    ...[54, 44, 34, 22, 66].flatMap((down) =>
      [18, 34, 60, 90].map((back) => {
        const text = label(data.bandName, at.x - back, lineY + down, 'end', 'name', NAME_SIZE);
        return { label: text, leader: { x1: text.box.right + 3, y1: text.y - 4, x2: at.x - 1, y2: at.low + 1 } };
      }),
    ),
  ];
  return firstFree(places, (place) => [place.label.box], obstacles, bounds);
}
