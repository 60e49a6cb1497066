import type { ScaleLinear } from 'd3';
import type { Box } from './boxes.ts';
import { curveBoxes, dotBoxes } from './curveBoxes.ts';
import { placer } from './labels.ts';
import type { Tick } from './ticks.ts';

/** Sizes of what is named on a plot [px]. */
export const NAME = 13;
export const FIGURE = 16;

/** A plot with a band and dots, as far as a name has to keep off it. */
export interface Plotted {
  readonly width: number;
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly window: Box;
  readonly up: readonly Tick[];
  readonly dots: readonly { readonly x: number; readonly y: number }[];
}

interface BandPoint {
  readonly at: number;
  readonly low: number;
  readonly high: number;
}

/** Places names on a plot: off its band, its dots, the figures of its upright axis and whatever else stands there; beside the window only to its right. */
export function namesOn(
  { width, x, y, window, up, dots }: Plotted,
  band: readonly BandPoint[],
  others: readonly Box[],
  inset: number,
) {
  const edges = band.flatMap(({ at, low, high }) => [
    { x: x(at), y: y(high) },
    { x: x(at), y: y(low) },
  ]);
  const ticks = up.flatMap(({ label }) => (label === null ? [] : [label.box]));
  const bounds: Box = { left: window.left + inset, right: width - 2, top: window.top, bottom: window.bottom - 2 };
  return placer([...curveBoxes(edges), ...dotBoxes(dots, 5), ...others, ...ticks], bounds);
}
