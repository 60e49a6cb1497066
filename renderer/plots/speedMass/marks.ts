import { area, line, max, min, scaleLinear } from 'd3';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import type { Label } from '../labels.ts';
import { ticksAcross, ticksUp, widthUp, type Tick } from '../ticks.ts';
import type { SpeedMassData, SpeedSample } from './data.ts';
import { placeLabels, type Drawn } from './placing.ts';

export interface SpeedMassMarks extends Drawn {
  readonly height: number;
  readonly across: readonly Tick[];
  readonly curve: string;
  readonly band: string;
  readonly edges: readonly [string, string];
  readonly labels: readonly Label[];
}

const frame = { lane: 24, axis: 24, right: 14, least: 190, most: 320, share: 0.62 } as const;

/** Speed against arrow mass at a width: curve, band, what was measured, and the zone in which nothing is shown. */
export function speedMassMarks(data: SpeedMassData, width: number, units: UnitChoice): SpeedMassMarks {
  const height = Math.round(Math.min(frame.most, Math.max(frame.least, width * frame.share)));
  const axisY = height - frame.axis;
  const { samples, read, arrow, least } = data;
  const speeds = [...samples.flatMap(({ low, high }) => [low, high]), ...read.map(({ speed }) => speed)];
  const [slowest, fastest] = [min(speeds) ?? 0, max(speeds) ?? 1];
  const air = Math.max(0.1 * (fastest - slowest), 0.01 * fastest);
  const y = scaleLinear([Math.max(0, slowest - 2 * air), fastest + 1.6 * air], [axisY, frame.lane]);
  const speed = { factor: factorOf('speed', units), symbol: unitOf('speed', units) };
  const left = Math.ceil(widthUp(y, speed)) + 8;
  const right = width - frame.right;
  const masses = [
    ...samples.map(({ mass }) => mass),
    arrow.mass,
    ...read.map(({ mass }) => mass),
    ...(least === null ? [] : [least.mass * 0.85]),
  ];
  const x = scaleLinear([min(masses) ?? 0, max(masses) ?? 1], [left, right]);
  const path = (of: (sample: SpeedSample) => number) =>
    line<SpeedSample>(
      ({ mass }) => x(mass),
      (sample) => y(of(sample)),
    ).digits(2)([...samples]) ?? '';
  const marks = {
    width,
    height,
    x,
    y,
    window: { left, right, top: frame.lane, bottom: axisY },
    across: ticksAcross(x, { factor: factorOf('mass', units), symbol: unitOf('mass', units) }, axisY, width),
    up: ticksUp(y, speed, left - 8),
    curve: path(({ value }) => value),
    band:
      area<SpeedSample>()
        .x(({ mass }) => x(mass))
        .y0(({ low }) => y(low))
        .y1(({ high }) => y(high))
        .digits(2)([...samples]) ?? '',
    edges: [path(({ high }) => high), path(({ low }) => low)] as const,
    dots: read.map(({ mass, speed: measured }) => ({ x: x(mass), y: y(measured) })),
    arrow:
      arrow.speed === null
        ? null
        : { x: x(arrow.mass), y: y(arrow.speed.value), low: y(arrow.speed.low), high: y(arrow.speed.high) },
    arrowX: x(arrow.mass),
    tooLight: least === null ? null : { x: Math.min(right, x(least.mass)) },
  };
  return { ...marks, labels: placeLabels(data, marks, units) };
}
