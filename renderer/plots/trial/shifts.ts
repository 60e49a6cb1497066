import { scaleLinear } from 'd3';
import type { ShiftPoint } from '../../../core/trials/index.ts';
import { label, type Label } from '../labels.ts';
import { ticksAcross, type Tick } from '../ticks.ts';

interface Unit {
  readonly factor: number;
  readonly symbol: string;
}

interface Panel {
  readonly left: number;
  readonly size: number;
  readonly title: Label;
  readonly middle: { readonly x: number; readonly y: number };
  readonly second: { readonly x: number; readonly y: number };
  /** Half axes of the oval that holds the second centre with 95 % [px]. */
  readonly rx: number;
  readonly ry: number;
  readonly names: readonly Label[];
  readonly ticks: readonly Tick[];
  /** The shift, short of both marks; null where they touch. */
  readonly arrow: { readonly d: string; readonly angle: number } | null;
}

export interface ShiftMarks {
  readonly height: number;
  readonly top: number;
  readonly axisY: number;
  readonly panels: readonly Panel[];
}

const frame = { title: 22, axis: 26, gap: 22, most: 250 } as const;
const NAME = 13;
/** An oval of few arrows may be as wide as the butt: past so many times the shifts' own reach it runs out of its panel. */
const REACH = 3;

/** Where the second centre lies from the first, at every distance on one scale: right is right, up is up. */
export function shiftMarks(
  points: readonly ShiftPoint[],
  names: readonly [string, string],
  texts: readonly string[],
  width: number,
  unit: Unit,
): ShiftMarks {
  const count = Math.max(1, points.length);
  const size = Math.floor(Math.min(frame.most, (width - frame.gap * (count - 1)) / count));
  const { x: midX, y: midY, half } = windowOf(points);
  const axisY = frame.title + size;
  return {
    height: axisY + frame.axis,
    top: frame.title,
    axisY,
    panels: points.map((point, i): Panel => {
      const left = i * (size + frame.gap);
      const x = scaleLinear([midX - half, midX + half], [left, left + size]);
      const y = scaleLinear([midY - half, midY + half], [axisY, frame.title]);
      const [middle, second] = [
        { x: x(0), y: y(0) },
        { x: x(point.dx), y: y(point.dy) },
      ];
      const apart = Math.hypot(second.x - middle.x, second.y - middle.y);
      const angle = Math.atan2(second.y - middle.y, second.x - middle.x);
      const out = (from: typeof middle, by: number) =>
        `${(from.x + by * Math.cos(angle)).toFixed(1)} ${(from.y + by * Math.sin(angle)).toFixed(1)}`;
      return {
        left,
        size,
        title: label(texts[i] ?? '', left, 13, 'start', 'name', NAME),
        middle,
        second,
        rx: x(point.halfX) - x(0),
        ry: y(0) - y(point.halfY),
        names: namesAt(middle, second, names, left, left + size),
        ticks: ticksAcross(x, unit, axisY, left + size),
        arrow: apart < 24 ? null : { d: `M${out(middle, 7)}L${out(second, -17)}`, angle: (angle * 180) / Math.PI },
      };
    }),
  };
}

/** One square for all distances that holds both centres and the ovals, as far as they are not far wider than the shifts. */
function windowOf(points: readonly ShiftPoint[]): { readonly x: number; readonly y: number; readonly half: number } {
  const reach = REACH * Math.max(0.01, ...points.map(({ dx, dy }) => Math.max(Math.abs(dx), Math.abs(dy))));
  const span = (of: (point: ShiftPoint) => readonly [number, number]): readonly [number, number] => {
    const ends = points.flatMap((point) => of(point).map((end) => Math.max(-reach, Math.min(reach, end))));
    return [Math.min(0, ...ends), Math.max(0, ...ends)];
  };
  const [left, right] = span(({ dx, halfX }) => [dx - halfX, dx + halfX]);
  const [down, up] = span(({ dy, halfY }) => [dy - halfY, dy + halfY]);
  return { x: (left + right) / 2, y: (down + up) / 2, half: Math.max(right - left, up - down, 0.012) * 0.62 };
}

/** Whether some oval is wider than the square that all of them are drawn in. */
export function shiftsRunOut(points: readonly ShiftPoint[]): boolean {
  const { x, y, half } = windowOf(points);
  return points.some(
    ({ dx, dy, halfX, halfY }) => Math.abs(dx - x) + halfX > half * 1.001 || Math.abs(dy - y) + halfY > half * 1.001,
  );
}

/** Each name on the side away from the other mark. */
function namesAt(
  first: { x: number; y: number },
  second: { x: number; y: number },
  [one, two]: readonly [string, string],
  left: number,
  right: number,
): readonly Label[] {
  const toRight = second.x >= first.x;
  const beside = (at: { x: number; y: number }, text: string, side: 1 | -1, down: number) => {
    const anchor = side === 1 ? 'start' : 'end';
    const placed = label(text, at.x + side * 10, at.y + down, anchor, 'name', NAME);
    const fits = placed.box.left >= left + 2 && placed.box.right <= right - 2;
    return fits
      ? placed
      : label(
          text,
          Math.max(left + 4, Math.min(right - 4, at.x)),
          at.y + (down < 4 ? -12 : 20),
          side === 1 ? 'end' : 'start',
          'name',
          NAME,
        );
  };
  const near = Math.abs(second.x - first.x) < 20 && Math.abs(second.y - first.y) < 16;
  return [beside(first, one, toRight ? -1 : 1, near ? 14 : 4), beside(second, two, toRight ? 1 : -1, near ? -8 : 4)];
}
