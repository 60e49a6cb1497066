import { area, scaleLinear, type ScaleLinear } from 'd3';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, textQuantity } from '../../../core/units/index.ts';
import { boxAround, type Box } from '../boxes.ts';
import { curveBoxes } from '../curveBoxes.ts';
import { firstFree, label, type Label } from '../labels.ts';
import { spread } from '../spread.ts';
import { textWidth } from '../textWidth.ts';
import { ticksAcross, type Tick } from '../ticks.ts';
import { energyParts, type EnergyPart, type StrokeData, type StrokeSample } from './data.ts';
import { strokeFrame, strokeLanes, strokePath, type Lane } from './lanes.ts';

export interface StrokeMarks {
  readonly width: number;
  readonly height: number;
  readonly x: ScaleLinear<number, number>;
  readonly lanes: readonly Lane[];
  readonly window: Box;
  readonly across: readonly Tick[];
  readonly tension: string;
  readonly thrust: string;
  readonly speed: string;
  readonly energy: readonly { readonly part: EnergyPart; readonly area: string; readonly edge: string }[];
  readonly exit: number;
  /** What the one-number virtual mass says, in the lane of speed. */
  readonly simple: { readonly x: number; readonly y: number };
  readonly labels: readonly Label[];
  /** From the end of a curve to a name that had to move. */
  readonly leaders: readonly string[];
}

const NAME = 13;
/** From this width on the names at the curves' ends carry their figures [px]. */
const WIDE = 460;
/** Between the ends of the curves and the plot's edge, but for their names [px]. */
const AIR = 14;
const LINE = 16;

/** The stroke at a width: four lanes over one time, each curve named at its end; no two texts touch. */
export function strokeMarks(data: StrokeData, width: number, units: UnitChoice): StrokeMarks {
  const { lanes, left } = strokeLanes(data, units);
  const [thrust, tension, speed, energy] = lanes as [Lane, Lane, Lane, Lane];
  const wide = width >= WIDE;
  const axisY = energy.bottom;
  const end = data.samples.at(-1);
  const stacked = stack(data.samples);

  const named: { readonly text: string; readonly lane: Lane; readonly y: number }[] = [];
  if (end !== undefined) {
    const with_ = (name: string, figure: string) => (wide ? `${name}, ${figure}` : name);
    named.push(
      { text: wholeForce(end.tension, units), lane: tension, y: tension.y(end.tension) },
      { text: textQuantity(data.exit.speed, 'speed', units), lane: speed, y: speed.y(end.speed) },
      ...stacked.flatMap(({ part, tops, grounds }) => {
        const share = end.energy[part];
        const middle = ((tops.at(-1) ?? 0) + (grounds.at(-1) ?? 0)) / 2;
        const shown = share > 0.01 * data.work || part === 'arrow';
        return shown ? [{ text: with_(part, textQuantity(share, 'energy', units)), lane: energy, y: energy.y(middle) }] : [];
      }),
    );
  }
  const right = width - AIR - Math.ceil(Math.max(0, ...named.map(({ text }) => textWidth(text, NAME, 'name'))));
  const last = Math.max(data.exit.time, data.simple.time, data.samples.at(-1)?.time ?? 0);
  const x = scaleLinear([0, last], [left, right]);
  const exit = x(data.exit.time);
  const ends = lanes.flatMap((lane) =>
    endLabels(
      named.filter((one) => one.lane === lane),
      lane,
      right,
    ),
  );

  const leaves = `leaves after ${textQuantity(data.exit.time, 'time', units)}`;
  const leavesAt = Math.max(Math.min(exit, right), textWidth(leaves, NAME, 'name') + 2);
  const leaving = label(leaves, leavesAt, strokeFrame.readout + 14, 'end', 'name', NAME);
  const fixed = [leaving, ...lanes.map(({ title }) => title), ...ends.map((one) => one.label)];
  const simple = { x: x(data.simple.time), y: speed.y(data.simple.speed) };
  const beside = simpleLabel(data, simple, speed, x, exit, units);
  return {
    width,
    height: axisY + strokeFrame.axis,
    x,
    lanes,
    window: { left, right, top: thrust.top, bottom: axisY },
    across: ticksAcross(x, { factor: 0.001, symbol: 'ms' }, axisY, width),
    tension: strokePath(data.samples, x, tension.y, (sample) => sample.tension),
    thrust: strokePath(data.samples, x, thrust.y, (sample) => sample.thrust),
    speed: strokePath(data.samples, x, speed.y, (sample) => sample.speed),
    energy: stacked.map(({ part, tops, grounds }) => ({
      part,
      area:
        area<StrokeSample>()
          .x(({ time }) => x(time))
          .y0((_, i) => energy.y(grounds[i] ?? 0))
          .y1((_, i) => energy.y(tops[i] ?? 0))
          .digits(2)([...data.samples]) ?? '',
      edge: data.samples
        .map(({ time }, i) => `${i === 0 ? 'M' : 'L'}${x(time).toFixed(2)} ${energy.y(tops[i] ?? 0).toFixed(2)}`)
        .join(''),
    })),
    exit,
    simple,
    labels: beside === null ? fixed : [...fixed, beside],
    leaders: ends.flatMap(({ leader }) => (leader === null ? [] : [leader])),
  };
}

/** To the whole pound: the model's last tension is too high to be told any closer. */
function wholeForce(si: number, units: UnitChoice): string {
  const one = factorOf('weight', units);
  return textQuantity(Math.round(si / one) * one, 'weight', units);
}

/** Ground and top of each part at every moment, one upon another [J]. */
function stack(samples: readonly StrokeSample[]) {
  const ground = samples.map(() => 0);
  return energyParts.map((part) => {
    const grounds = [...ground];
    samples.forEach(({ energy }, i) => (ground[i] = (ground[i] ?? 0) + Math.max(0, energy[part])));
    return { part, grounds, tops: [...ground] };
  });
}

/** Names in the column at the right, beside the ends of their curves; what had to move has a leader. */
function endLabels(named: readonly { readonly text: string; readonly y: number }[], lane: Lane, right: number) {
  const places = spread(
    named.map(({ y }) => y),
    LINE,
    lane.top + 2,
    lane.bottom,
  );
  return named.map(({ text, y }, i) => {
    const at = places[i] ?? y;
    return {
      label: label(text, right + AIR - 2, at + 4, 'start', 'name', NAME),
      leader: Math.abs(at - y) > 3 ? `M${right + 1} ${y.toFixed(1)}L${right + 9} ${at.toFixed(1)}` : null,
    };
  });
}

/** The name of the one-number virtual mass's answer, near its mark and off the curve; the words under the plot say it again. */
function simpleLabel(
  data: StrokeData,
  mark: { readonly x: number; readonly y: number },
  lane: Lane,
  x: ScaleLinear<number, number>,
  exit: number,
  units: UnitChoice,
): Label | null {
  const curve = curveBoxes(data.samples.map(({ time, speed }) => ({ x: x(time), y: lane.y(speed) })));
  const obstacles = [...curve, boxAround(mark, 6, 6), { left: exit - 2, right: exit + 2, top: lane.top, bottom: lane.bottom }];
  const texts = [`one-number model, ${textQuantity(data.simple.speed, 'speed', units)}`, 'one-number model'];
  const places = texts.flatMap((text) => [
    ...[9, 16, 30].flatMap((left) => [4, 14].map((down) => label(text, mark.x - left, mark.y + down, 'end', 'name', NAME))),
    ...[18, 30, 42].map((down) => label(text, exit - 6, mark.y + down, 'end', 'name', NAME)),
  ]);
  const bounds = { left: x(0) + 2, right: x.range()[1] ?? 0, top: lane.top - 4, bottom: lane.bottom - 1 };
  return firstFree(places, ({ box }) => [box], obstacles, bounds);
}
