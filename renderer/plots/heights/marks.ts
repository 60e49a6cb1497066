import { area, curveMonotoneX, extent, line, scaleLinear } from 'd3';
import { signed } from '../signed.ts';
import { spread } from '../spread.ts';
import { textWidth } from '../textWidth.ts';

/** Heights over the reference's arrow at the distances that people shoot, with the band around each; all in the shown units. */
export interface HeightsData {
  readonly reference: string;
  readonly other: string;
  readonly samples: readonly { readonly distance: number; readonly value: number; readonly low: number; readonly high: number }[];
  readonly distanceUnit: string;
  readonly unit: string;
}

export const heightsSize = { height: 216, left: 40, axis: 24, top: 10, most: 116 } as const;

interface HeightsMarks {
  readonly right: number;
  readonly axisY: number;
  readonly zero: number;
  readonly grid: readonly { readonly y: number; readonly text: string }[];
  readonly curve: string;
  readonly band: string;
  readonly edges: readonly string[];
  readonly dots: readonly { readonly x: number; readonly y: number }[];
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  readonly labels: {
    readonly x: number;
    readonly reference: number;
    readonly other: number;
    readonly texts: readonly [reference: string, other: string];
  };
}

export function heightsMarks(data: HeightsData, width: number): HeightsMarks {
  const { height, left, axis, top, most } = heightsSize;
  const texts = [fitted(data.reference, most), fitted(data.other, most)] as const;
  const right = width - 12 - Math.max(...texts.map((text) => textWidth(text, 13, 'name')));
  const axisY = height - axis;
  const x = scaleLinear([data.samples[0]?.distance ?? 0, data.samples.at(-1)?.distance ?? 1], [left, right]);
  const [lowest = 0, highest = 0] = extent(data.samples.flatMap((sample) => [sample.low, sample.high, 0]));
  const y = scaleLinear([lowest, highest], [axisY - 12, top]).nice(4);
  const at = (key: 'value' | 'low' | 'high') =>
    line<HeightsData['samples'][number]>(
      (sample) => x(sample.distance),
      (sample) => y(sample[key]),
    ).curve(curveMonotoneX)([...data.samples]) ?? '';
  const band =
    area<HeightsData['samples'][number]>()
      .x((sample) => x(sample.distance))
      .y0((sample) => y(sample.low))
      .y1((sample) => y(sample.high))
      .curve(curveMonotoneX)([...data.samples]) ?? '';
  const zero = y(0);
  const [labelZero = 0, labelOther = 0] = spread([zero, y(data.samples.at(-1)?.value ?? 0)], 17, top, axisY);
  const step = 4;
  return {
    right,
    axisY,
    zero,
    grid: y.ticks(step).map((tick) => ({ y: y(tick), text: signed(tick) })),
    curve: at('value'),
    band,
    edges: [at('low'), at('high')],
    dots: data.samples.map((sample) => ({ x: x(sample.distance), y: y(sample.value) })),
    ticks: data.samples.map(({ distance }, index) => ({
      x: x(distance),
      text: index === data.samples.length - 1 ? `${distance} ${data.distanceUnit}` : String(distance),
    })),
    labels: { x: right + 10, reference: labelZero + 4.5, other: labelOther + 4.5, texts },
  };
}

/** A name cut to the room at the curve's end; the table's head has it whole. */
function fitted(name: string, most: number): string {
  if (textWidth(name, 13, 'name') <= most) return name;
  let cut = name;
  while (cut.length > 1 && textWidth(`${cut}…`, 13, 'name') > most) cut = cut.slice(0, -1);
  return `${cut.trimEnd()}…`;
}
