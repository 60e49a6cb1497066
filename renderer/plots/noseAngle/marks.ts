import { area, extent, line, scaleLinear, type ScaleLinear } from 'd3';
import type { BareFletchedAt } from '../../../core/aim/index.ts';
import type { Band } from '../../../core/model/band.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import type { Box } from '../boxes.ts';
import { label, type Label } from '../labels.ts';
import { spread } from '../spread.ts';
import { textWidth } from '../textWidth.ts';
import { ticksAcross, ticksUp, widthUp, type Tick } from '../ticks.ts';

export const arrows = ['bare', 'fletched'] as const;
type ArrowName = (typeof arrows)[number];
const quantities = ['angle', 'aside'] as const;
type Quantity = (typeof quantities)[number];

/** One arrow's line in one lane, with its band. */
interface Line {
  readonly arrow: ArrowName;
  readonly curve: string;
  readonly band: string;
  readonly edges: readonly [string, string];
}

export interface NoseLane {
  readonly quantity: Quantity;
  readonly top: number;
  readonly bottom: number;
  readonly y: ScaleLinear<number, number>;
  readonly up: readonly Tick[];
  readonly lines: readonly Line[];
}

export interface NoseMarks {
  readonly height: number;
  readonly window: Box;
  readonly x: ScaleLinear<number, number>;
  readonly lanes: readonly NoseLane[];
  readonly across: readonly Tick[];
  readonly labels: readonly Label[];
  /** From the end of a line to a name that had to move. */
  readonly leaders: readonly string[];
}

/** Pixels: the lane for the readout, over each lane its title, under the last the axis. */
const frame = { readout: 20, title: 26, lane: 84, axis: 24, air: 12 } as const;
const NAME = 13;
const LINE = 16;
const titles: Readonly<Record<Quantity, string>> = {
  angle: 'nose against the path',
  aside: 'beside the line of the loose',
};
const degree = { factor: Math.PI / 180, symbol: '°', steps: [0.2, 0.5, 1, 2, 5, 10] };

/** Both arrows from the loose on: how far the nose is off the path, and how far the arrow is off the line; no two texts touch. */
export function noseMarks(samples: readonly BareFletchedAt[], width: number, units: UnitChoice): NoseMarks {
  const unitFor = { angle: degree, aside: { factor: factorOf('setting', units), symbol: unitOf('setting', units) } };
  let top: number = frame.readout;
  const bare = quantities.map((quantity) => {
    top += frame.title;
    const bottom = top + frame.lane;
    const [low = 0, high = 0] = extent(samples.flatMap((one) => arrows.flatMap((arrow) => ends(one[arrow][quantity]))));
    const room = 0.06 * Math.max(high - low, unitFor[quantity].factor);
    const y = scaleLinear([Math.min(0, low) - room, Math.max(0, high) + room], [bottom, top]);
    const lane = { quantity, top, bottom, y, unit: unitFor[quantity] };
    top = bottom;
    return lane;
  });
  const left = Math.ceil(Math.max(...bare.map(({ y, unit }) => widthUp(y, unit)))) + 8;
  const right = width - frame.air - Math.ceil(Math.max(...arrows.map((arrow) => textWidth(arrow, NAME, 'name'))));
  const x = scaleLinear([samples[0]?.distance ?? 0, samples.at(-1)?.distance ?? 1], [left, right]);
  const lanes = bare.map(({ unit, ...lane }): NoseLane => ({
    ...lane,
    up: ticksUp(lane.y, unit, left - 8),
    lines: arrows.map((arrow) => lineOf(samples, arrow, lane.quantity, x, lane.y)),
  }));
  const named = lanes.map((lane) => endNames(samples, lane, right));
  return {
    height: top + frame.axis,
    window: { left, right, top: lanes[0]?.top ?? 0, bottom: top },
    x,
    lanes,
    across: ticksAcross(x, { factor: factorOf('distance', units), symbol: unitOf('distance', units) }, top, width),
    labels: [
      ...lanes.map(({ quantity, top: laneTop }) => label(titles[quantity], left, laneTop - 7, 'start', 'name', NAME)),
      ...named.flatMap(({ labels }) => labels),
    ],
    leaders: named.flatMap(({ leaders }) => leaders),
  };
}

const ends = ({ low, high }: Band): readonly [number, number] => [low, high];

function lineOf(
  samples: readonly BareFletchedAt[],
  arrow: ArrowName,
  quantity: Quantity,
  x: ScaleLinear<number, number>,
  y: ScaleLinear<number, number>,
): Line {
  const path = (end: keyof Band) =>
    line<BareFletchedAt>(
      ({ distance }) => x(distance),
      (one) => y(one[arrow][quantity][end]),
    ).digits(2)([...samples]) ?? '';
  const band =
    area<BareFletchedAt>()
      .x(({ distance }) => x(distance))
      .y0((one) => y(one[arrow][quantity].low))
      .y1((one) => y(one[arrow][quantity].high))
      .digits(2)([...samples]) ?? '';
  return { arrow, curve: path('value'), band, edges: [path('high'), path('low')] };
}

/** Each name at the end of its line, beside the other and not on it. */
function endNames(
  samples: readonly BareFletchedAt[],
  { quantity, top, bottom, y }: Omit<NoseLane, 'up' | 'lines'>,
  right: number,
) {
  const last = samples.at(-1);
  const at = arrows.map((arrow) => y(last?.[arrow][quantity].value ?? 0));
  const places = spread(at, LINE, top + 4, bottom - 4);
  return {
    labels: arrows.map((arrow, i) => label(arrow, right + frame.air - 2, (places[i] ?? 0) + 4, 'start', 'name', NAME)),
    leaders: arrows.flatMap((_, i) => {
      const [from, to] = [at[i] ?? 0, places[i] ?? 0];
      return Math.abs(from - to) > 3 ? [`M${right + 1} ${from.toFixed(1)}L${right + 8} ${to.toFixed(1)}`] : [];
    }),
  };
}
