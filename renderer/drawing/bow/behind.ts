import { inch } from '../../../core/units/exact.ts';
import type { DrawnBow } from './figures.ts';
import { between, flipped, smooth, type Place } from './points.ts';
import { reaching, riserHalf } from './recurve.ts';
import { MIDDLE, type BowShape, type Part } from './shape.ts';

/**
 * The bow from behind, along the string. Places are [z, v]: z across, from the string toward the side that the riser stands on (the arrow lies
 * on the other), v up from the arrow's rest as in the view from the side. Half widths in inches over the share of the half length.
 */
const recurveLimb: readonly Place[] = [
  [0, 0.86],
  [0.55, 0.62],
  [0.85, 0.4],
  [0.93, 0.34],
  [1, 0.24],
];
const longbowStave: readonly Place[] = [
  [0, 0.56],
  [0.14, 0.6],
  [0.35, 0.58],
  [0.7, 0.46],
  [0.95, 0.28],
  [1, 0.16],
];
const flatbowStave: readonly Place[] = [
  [0, 0.58],
  [0.09, 0.58],
  [0.19, 0.92],
  [0.4, 0.92],
  [0.7, 0.66],
  [0.95, 0.28],
  [1, 0.22],
];
const selfStave: readonly Place[] = [
  [0, 0.58],
  [0.09, 0.6],
  [0.18, 0.76],
  [0.45, 0.74],
  [0.75, 0.5],
  [0.95, 0.26],
  [1, 0.2],
];

/** A riser's edges in inches: [across, up]. On the arrow's side the window is cut past the middle. */
const riserSide: readonly Place[] = [
  [0.7, 8.2],
  [0.7, 6.8],
  [0.9, 5.4],
  [0.94, 3],
  [0.92, 0.6],
  [0.8, -0.4],
  [0.56, -1.2],
  [0.54, -2.4],
  [0.62, -3.6],
  [0.6, -4.8],
  [0.56, -5.6],
  [0.68, -7.4],
];
const arrowSide: readonly Place[] = [
  [-0.68, -7.4],
  [-0.56, -5.6],
  [-0.6, -4.8],
  [-0.62, -3.6],
  [-0.54, -2.2],
  [-0.54, -0.9],
  [-0.5, -0.3],
  [0.24, -0.26],
  [0.28, 0.4],
  [0.28, 3.4],
  [0.16, 5],
  [-0.3, 6],
  [-0.66, 6.6],
  [-0.7, 8.2],
];
const gripTable: readonly Place[] = [
  [0.46, -0.9],
  [0.54, -2.3],
  [0.62, -3.6],
  [0.6, -4.7],
  [0.4, -5.2],
  [0, -5.3],
  [-0.4, -5.2],
  [-0.6, -4.7],
  [-0.62, -3.6],
  [-0.54, -2.3],
  [-0.46, -0.9],
  [0, -0.7],
];

const scaled = (rows: readonly Place[]): readonly Place[] => rows.map(([z, v]) => [z * inch, v * inch]);
const round = (rows: readonly Place[]): readonly Place[] => smooth([...rows, rows[0] as Place], 5);

/** Both edges of a limb or a stave between two heights, from the bow's middle. */
function strip(name: string, table: readonly Place[], from: number, to: number, whole: number): Part {
  const steps = 40;
  const heights = Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);
  const half = (w: number) => between(table, Math.abs(w) / whole) * inch;
  return {
    name,
    material: name === 'stave' ? 'wood' : 'limb',
    weight: 'outline',
    closed: true,
    line: [...heights.map((w): Place => [half(w), w + MIDDLE]), ...flipped(heights.map((w): Place => [-half(w), w + MIDDLE]))],
  };
}

export function bowBehind(bow: DrawnBow, { top, bottom, roots }: Pick<BowShape, 'top' | 'bottom' | 'roots'>): readonly Part[] {
  const whole = (top - bottom) / 2;
  if (bow.kind === 'longbow' || bow.kind === 'flatbow' || bow.kind === 'self bow') {
    const table = { longbow: longbowStave, flatbow: flatbowStave, 'self bow': selfStave }[bow.kind];
    const wrap = strip('grip', table, -3.1 * inch, 0.95 * inch, whole);
    const shelf: Part = {
      name: 'shelf',
      material: 'hole',
      weight: 'inner',
      closed: false,
      line: scaled([
        [-0.62, 0],
        [0.02, 0],
        [0.06, 0.3],
        [0.02, 1.9],
        [-0.62, 2.5],
      ]),
    };
    return [
      strip('stave', table, -whole, whole, whole),
      { ...wrap, material: 'grip', weight: 'inner' },
      ...(bow.pass === 'hand' ? [] : [shelf]),
    ];
  }
  const half = bow.kind === 'compound' ? roots.upper[1] - MIDDLE : riserHalf(bow);
  const [up, down] = [half + MIDDLE, -half + MIDDLE];
  const reach = reaching(half);
  const stretched = (rows: readonly Place[]) => scaled(rows).map(([z, v]): Place => [z, reach(v)]);
  const end = (z: number, v: number): Place => [z * inch, v];
  const atLimb = between(recurveLimb, half / whole);
  const [wide, ends] = bow.kind === 'one-piece recurve' ? [atLimb, atLimb] : [0.9, 0.86];
  const riserLine = [
    ...smooth(
      [end(ends, up), end(wide, up - 1.7 * inch), ...stretched(riserSide), end(wide, down + 1.7 * inch), end(ends, down)],
      4,
    ),
    ...smooth(
      [end(-ends, down), end(-wide, down + 1.7 * inch), ...stretched(arrowSide), end(-wide, up - 1.7 * inch), end(-ends, up)],
      4,
    ),
  ];
  return [
    strip('upper limb', recurveLimb, half, whole, whole),
    strip('lower limb', recurveLimb, -half, -whole, whole),
    {
      name: 'riser',
      material: bow.kind === 'one-piece recurve' ? 'wood' : 'metal',
      weight: 'outline',
      closed: true,
      line: riserLine,
    },
    { name: 'grip', material: 'grip', weight: 'inner', closed: true, line: round(scaled(gripTable)) },
  ];
}
