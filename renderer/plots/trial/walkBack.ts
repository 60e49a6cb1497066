import { extent, line, scaleLinear } from 'd3';
import type { TrialPlot } from '../../../core/trials/index.ts';
import { label, type Label } from '../labels.ts';
import { ticksAcross, ticksUp, widthUp, type Tick } from '../ticks.ts';

export type WalkBackData = Extract<TrialPlot, { kind: 'walk-back' }>;

interface Unit {
  readonly factor: number;
  readonly symbol: string;
}

export interface WalkBackMarks {
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly axisY: number;
  readonly plumb: number;
  readonly across: readonly Tick[];
  readonly down: readonly Tick[];
  readonly shots: readonly { readonly x: number; readonly y: number }[];
  readonly line: string;
  readonly edges: readonly [string, string];
  readonly band: string;
  readonly curve: string;
  readonly labels: readonly Label[];
}

const frame = { top: 24, axis: 26, right: 10, height: 300 } as const;
const NAME = 13;

/**
 * Right is right, and the farther the distance the lower: as the pattern stands on the butt, where one sight setting lets the arrows drop as
 * the archer walks back.
 */
export function walkBackMarks(data: WalkBackData, width: number, across: Unit, down: Unit): WalkBackMarks {
  const { shots, line: straight, curve } = data;
  const axisY = frame.height - frame.axis;
  const [near = 0, far = 1] = extent(shots, ({ distance }) => distance);
  const pad = Math.max(0.06 * (far - near), 0.5);
  const y = scaleLinear([near - pad, far + pad], [frame.top, axisY]);
  const left = Math.ceil(widthUp(y, down)) + 8;
  const right = width - frame.right;
  // A band far wider than the shots themselves would leave them in a corner: it runs out of the window.
  const farthest = Math.max(0.012, ...shots.map(({ offset }) => Math.abs(offset)));
  const widest = Math.max(...straight.map(({ offset, half }) => Math.abs(offset) + half), 0);
  const half = Math.min(1.6 * farthest, Math.max(widest * 1.05, farthest * 1.1));
  const x = scaleLinear([-half, half], [left, right]).clamp(true);
  const path = (points: readonly { distance: number; offset: number }[]) =>
    line<{ distance: number; offset: number }>(
      ({ offset }) => x(offset),
      ({ distance }) => y(distance),
    ).digits(1)([...points]) ?? '';
  const edge = (side: 1 | -1) =>
    path(straight.map(({ distance, offset, half: wide }) => ({ distance, offset: offset + side * wide })));
  return {
    height: frame.height,
    left,
    right,
    top: frame.top,
    axisY,
    plumb: x(0),
    across: ticksAcross(x, across, axisY, width),
    down: ticksUp(y, down, left - 8),
    shots: shots.map(({ distance, offset }) => ({ x: x(offset), y: y(distance) })),
    line: path(straight),
    edges: [edge(-1), edge(1)],
    band: transposed(
      straight.map(({ distance, offset, half: wide }) => ({ at: y(distance), low: x(offset - wide), high: x(offset + wide) })),
    ),
    curve: path(curve),
    labels: [
      label('left', left + 2, frame.top - 9, 'start', 'name', NAME),
      label('right of the plumb line', right, frame.top - 9, 'end', 'name', NAME),
    ],
  };
}

/** A band that runs downward: the edges left and right of each height. */
function transposed(edges: readonly { at: number; low: number; high: number }[]): string {
  if (edges.length === 0) return '';
  const points = [
    ...edges.map(({ at, low }) => `${low.toFixed(1)} ${at.toFixed(1)}`),
    ...[...edges].reverse().map(({ at, high }) => `${high.toFixed(1)} ${at.toFixed(1)}`),
  ];
  return `M${points.join('L')}Z`;
}
