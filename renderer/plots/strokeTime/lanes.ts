import { line, max, scaleLinear, type ScaleLinear } from 'd3';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf, type Use } from '../../../core/units/index.ts';
import { label, type Label } from '../labels.ts';
import { ticksUp, widthUp, type Tick } from '../ticks.ts';
import type { StrokeData, StrokeSample } from './data.ts';

export type LaneName = 'thrust' | 'tension' | 'speed' | 'energy';

/** One quantity over the time that all lanes share. */
export interface Lane {
  readonly name: LaneName;
  readonly title: Label;
  readonly top: number;
  readonly bottom: number;
  readonly y: ScaleLinear<number, number>;
  readonly up: readonly Tick[];
}

const laneOf: Readonly<Record<LaneName, { readonly title: string; readonly use: Use; readonly height: number }>> = {
  thrust: { title: 'thrust on the arrow', use: 'weight', height: 64 },
  tension: { title: 'tension of the string', use: 'weight', height: 72 },
  speed: { title: 'speed of the arrow', use: 'speed', height: 72 },
  energy: { title: 'where the energy is', use: 'energy', height: 100 },
};
/** Over the greatest figure, for what stands beside it; the energy fills its lane, because it is all there is. */
const headroom: Readonly<Record<LaneName, number>> = { thrust: 1.06, tension: 1.06, speed: 1.16, energy: 1 };
const names: readonly LaneName[] = ['thrust', 'tension', 'speed', 'energy'];

/** Pixels: the lane for the readout and the line that says when the arrow leaves; over each lane its title; under the last the axis. */
export const strokeFrame = { readout: 22, leaves: 20, title: 28, axis: 26, right: 12, room: 24 } as const;

const unit = (use: Use, units: UnitChoice) => ({ factor: factorOf(use, units), symbol: unitOf(use, units) });

/** The lanes one under another, and how far from the left their time begins. */
export function strokeLanes(data: StrokeData, units: UnitChoice): { readonly lanes: readonly Lane[]; readonly left: number } {
  const most: Readonly<Record<LaneName, number>> = {
    thrust: Math.max(max(data.samples, ({ thrust }) => thrust) ?? 1, 1),
    tension: Math.max(max(data.samples, ({ tension }) => tension) ?? 1, 1),
    speed: Math.max(max(data.samples, ({ speed }) => speed) ?? 1, data.simple.speed, 1),
    energy: Math.max(data.work, 0.1),
  };
  let top: number = strokeFrame.readout + strokeFrame.leaves;
  const bare = names.map((name) => {
    const { height, use } = laneOf[name];
    top += strokeFrame.title;
    const bottom = top + height;
    const y = scaleLinear([0, most[name] * headroom[name]], [bottom, top]);
    const lane = { name, top, bottom, y, unit: unit(use, units) };
    top = bottom;
    return lane;
  });
  const left = Math.ceil(Math.max(...bare.map((lane) => widthUp(lane.y, lane.unit, strokeFrame.room)))) + 8;
  return {
    left,
    lanes: bare.map(({ unit: shown, ...lane }) => ({
      ...lane,
      title: label(laneOf[lane.name].title, left, lane.top - 8, 'start', 'name', 13),
      up: ticksUp(lane.y, shown, left - 8, strokeFrame.room),
    })),
  };
}

export const strokePath = (
  samples: readonly StrokeSample[],
  x: ScaleLinear<number, number>,
  y: ScaleLinear<number, number>,
  of: (sample: StrokeSample) => number,
): string =>
  line<StrokeSample>(
    (sample) => x(sample.time),
    (sample) => y(of(sample)),
  ).digits(2)([...samples]) ?? '';
