import { scaleLinear, ticks } from 'd3';
import type { Point } from '../../../core/group/index.ts';
import { boxAround, touches, type Box } from '../boxes.ts';
import { dotsPath, MOST_DRAWN } from '../dots.ts';
import { crosses, leaderTo, nameBox } from './names.ts';
import { signed } from '../signed.ts';
import { textWidth } from '../textWidth.ts';
import type { SetupNumber } from '../SetupMark.tsx';

export interface OverlayData {
  /** What the centres are measured from, at nought. */
  readonly origin: string;
  /** Ring radii of a face around the origin; none when there is no face to show. */
  readonly rings: readonly number[];
  readonly entries: readonly {
    readonly setup: SetupNumber;
    readonly name: string;
    readonly centre: Point;
    /** Of the centre's 95 % circle. */
    readonly radius: number;
    readonly shots: readonly Point[];
  }[];
  readonly unit: string;
}

/** Lengths of the data are in the shown unit; sizes here in px. */
export const overlaySize = { height: 216, axis: 24, inset: 8 } as const;

const MOST_OBSTACLES = 120;

interface OverlayMarks {
  readonly origin: Point;
  readonly originLabel: { readonly x: number; readonly y: number } | null;
  readonly rings: readonly number[];
  readonly axisY: number;
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  readonly entries: readonly {
    readonly setup: SetupNumber;
    readonly x: number;
    readonly y: number;
    readonly r: number;
    readonly shots: readonly Point[];
    /** Too many shots for a mark each: one path of dots in their place. */
    readonly dots: string | null;
    readonly name: string;
    readonly label: Point | null;
    /** From the circle to a name that had to stand off. */
    readonly leader: string | null;
  }[];
}

/** One scale in both directions, so that circles stay circles. */
export function overlayMarks(data: OverlayData, width: number): OverlayMarks {
  const { height, axis, inset } = overlaySize;
  const axisY = height - axis;
  const [left, right] = reach(data.entries, 'x');
  const [low, high] = reach(data.entries, 'y');
  const scale = Math.min((width - 2 * inset) / Math.max(right - left, 1e-9), (axisY - 2 * inset) / Math.max(high - low, 1e-9));
  const x = scaleLinear([0, 1], [width / 2 - ((left + right) / 2) * scale, width / 2 - ((left + right) / 2 - 1) * scale]);
  const middle = inset + (axisY - 2 * inset) / 2;
  const y = (value: number) => middle - (value - (low + high) / 2) * scale;
  const origin = { x: x(0), y: y(0) };

  const bounds: Box = { left: 0, top: 0, right: width, bottom: axisY - 2 };
  const obstacles: Box[] = [boxAround(origin, 5, 5)];
  const placed = data.entries.map(({ setup, name, centre, radius, shots }) => ({
    setup,
    name,
    x: x(centre.x),
    y: y(centre.y),
    r: radius * scale,
    ...drawn(shots.map((shot) => ({ x: x(shot.x), y: y(shot.y) }))),
  }));
  for (const entry of placed) obstacles.push(boxAround(entry, 8, 8));
  // In a crowd no place is free of shots; then only the centres are kept clear.
  const shots = placed.flatMap((entry) => entry.shots);
  if (shots.length <= MOST_OBSTACLES) for (const shot of shots) obstacles.push(boxAround(shot, 4, 4));
  const halfway = { x: mean(placed.map((entry) => entry.x)), y: mean(placed.map((entry) => entry.y)) };
  const entries = placed.map((entry) => {
    const wide = textWidth(entry.name, 13, 'name');
    const away = placed.length > 1 ? halfway : origin;
    const box = nameBox(entry, away, wide, obstacles, bounds, placed);
    if (box === null) return { ...entry, label: null, leader: null };
    obstacles.push(box);
    return {
      ...entry,
      label: { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 + 4.5 },
      leader: leaderTo(entry, box),
    };
  });
  const wide = textWidth(data.origin, 13, 'name');
  const corners = [12, axisY - 12, 28, axisY - 28].flatMap((down) =>
    [1, -1].map((side) => ({ x: origin.x + side * (6 + wide / 2), y: down })),
  );
  const ends = [-1, 1].flatMap((up) =>
    [wide / 2 + 2, width - wide / 2 - 2].map((across) => ({ x: across, y: origin.y + up * 11 })),
  );
  const free = [...corners, ...ends].filter((at) => {
    const box = boxAround(at, wide / 2, 8);
    return box.left >= 0 && box.right <= width && box.bottom < axisY && !obstacles.some((obstacle) => touches(box, obstacle));
  });
  const corner = free.find((at) => placed.every((circle) => !crosses(boxAround(at, wide / 2, 8), circle))) ?? free[0];
  const [from, to] = [x.invert(0), x.invert(width)];
  const shown = ticks(from, to, Math.max(4, Math.floor(width / 60))).filter((tick) => x(tick) > 16 && x(tick) < width - 34);
  return {
    origin,
    originLabel: corner === undefined ? null : { x: corner.x - wide / 2, y: corner.y + 4 },
    rings: data.rings.map((radius) => radius * scale),
    axisY,
    ticks: shown.map((tick, index) => ({ x: x(tick), text: signed(tick) + (index === shown.length - 1 ? ` ${data.unit}` : '') })),
    entries,
  };
}

/** From the least to the greatest place on one axis, with nought, the circles and the shots. */
function reach(entries: OverlayData['entries'], axis: 'x' | 'y'): readonly [number, number] {
  let [least, most] = [0, 0];
  for (const { centre, radius, shots } of entries) {
    least = Math.min(least, centre[axis] - radius);
    most = Math.max(most, centre[axis] + radius);
    for (const shot of shots) {
      least = Math.min(least, shot[axis]);
      most = Math.max(most, shot[axis]);
    }
  }
  return [least, most];
}

const drawn = (shots: readonly Point[]): { readonly shots: readonly Point[]; readonly dots: string | null } =>
  shots.length > MOST_DRAWN ? { shots: [], dots: dotsPath(shots) } : { shots, dots: null };

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / Math.max(values.length, 1);
