import { extent, scaleLinear } from 'd3';
import { label, type Label } from '../labels.ts';

/** One figure of every arrow of a set. */
export interface StripData {
  readonly points: readonly { readonly number: number; readonly value: number; readonly odd: boolean }[];
  readonly median: number;
  /** How far from the middle is let pass, each way. */
  readonly tolerance: number;
  readonly perUnit: number;
  readonly unit: string;
}

interface StripMarks {
  readonly dots: readonly { readonly number: number; readonly x: number; readonly y: number; readonly odd: boolean }[];
  readonly radius: number;
  /** Whether each dot holds its number; of very large sets only the odd ones do. */
  readonly numbered: boolean;
  readonly axisY: number;
  readonly median: number;
  readonly band: { readonly from: number; readonly to: number };
  readonly ticks: readonly { readonly at: number; readonly label: Label }[];
  readonly height: number;
}

/** A dot that holds its number, and one that does not [px]. */
const LARGE = 10;
const SMALL = 3.5;
/** Sets beyond this many arrows are drawn with small dots [count]. */
const MOST_NUMBERED = 40;
/** Dots are piled no higher than this [px]; beyond it they lie closer. */
const HIGHEST = 126;
const EDGE = 14;

/** A dot for each arrow over its figure, piled where they are alike; the middle of the set and what is let pass behind them. */
export function stripMarks({ points, median, tolerance, perUnit, unit }: StripData, width: number): StripMarks {
  const all = [...points.map(({ value }) => value), median - tolerance, median + tolerance].map((si) => si / perUnit);
  const [least = 0, most = 1] = extent(all);
  const air = 0.06 * (most - least);
  const x = scaleLinear([least - air, most + air], [EDGE, width - EDGE]);
  const numbered = points.length <= MOST_NUMBERED;
  const radius = numbered ? LARGE : SMALL;
  const piled = pile(
    points.map((point) => ({ ...point, x: x(point.value / perUnit) })),
    2 * radius + 1,
  );
  const levels = 1 + Math.max(0, ...piled.map(({ level }) => level));
  const step = Math.min(2 * radius + 1, HIGHEST / levels);
  const axisY = 8 + radius * 2 + (levels - 1) * step + 4;
  const values = x.ticks(Math.max(2, Math.floor(width / 90)));
  const format = x.tickFormat(Math.max(2, Math.floor(width / 90)));
  return {
    dots: piled.map(({ number, odd, x: at, level }) => ({ number, odd, x: at, y: axisY - 4 - radius - level * step })),
    radius,
    numbered,
    axisY,
    median: x(median / perUnit),
    band: { from: x((median - tolerance) / perUnit), to: x((median + tolerance) / perUnit) },
    ticks: values.map((value, i) => {
      const last = i === values.length - 1;
      const text = `${format(value).replace('-', '\u2212')}${last && unit !== '' ? ` ${unit}` : ''}`;
      const middle = label(text, x(value), axisY + 17, 'middle', 'text', 12);
      return {
        at: x(value),
        label: middle.box.right > width ? label(text, width, axisY + 17, 'end', 'text', 12) : middle,
      };
    }),
    height: axisY + 22,
  };
}

/** Each dot on the lowest level where it touches none that is there already. */
function pile<T extends { readonly x: number; readonly number: number }>(
  dots: readonly T[],
  apart: number,
): readonly (T & { level: number })[] {
  const last: number[] = [];
  return [...dots]
    .sort((a, b) => a.x - b.x || a.number - b.number)
    .map((dot) => {
      const free = last.findIndex((before) => dot.x - before >= apart);
      const level = free === -1 ? last.length : free;
      last[level] = dot.x;
      return { ...dot, level };
    });
}
