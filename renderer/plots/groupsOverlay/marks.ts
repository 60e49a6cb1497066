import { scaleLinear, ticks } from 'd3';
import type { Point } from '../../../core/group/index.ts';
import { boxAround, placeLabel, touches, type Box } from '../face/labels.ts';
import { textWidth } from '../flight/textWidth.ts';
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

export interface OverlayMarks {
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
    readonly name: string;
    readonly label: Point | null;
  }[];
}

/** One scale in both directions, so that circles stay circles. */
export function overlayMarks(data: OverlayData, width: number): OverlayMarks {
  const { height, axis, inset } = overlaySize;
  const axisY = height - axis;
  const edges = [
    { x: 0, y: 0, r: 0 },
    ...data.entries.map(({ centre, radius }) => ({ ...centre, r: radius })),
    ...data.entries.flatMap((entry) => entry.shots.map((shot) => ({ ...shot, r: 0 }))),
  ];
  const [left, right] = [Math.min(...edges.map((e) => e.x - e.r)), Math.max(...edges.map((e) => e.x + e.r))];
  const [low, high] = [Math.min(...edges.map((e) => e.y - e.r)), Math.max(...edges.map((e) => e.y + e.r))];
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
    shots: shots.map((shot) => ({ x: x(shot.x), y: y(shot.y) })),
  }));
  for (const entry of placed) obstacles.push(boxAround(entry, 8, 8));
  const halfway = { x: mean(placed.map((entry) => entry.x)), y: mean(placed.map((entry) => entry.y)) };
  const entries = placed.map((entry) => {
    const wide = textWidth(entry.name, 13, 'name');
    const away = placed.length > 1 ? halfway : origin;
    const clear = (box: Box) => placed.every((circle) => !crosses(box, circle));
    const found = [entry.r + 12, 18, entry.r + 22, 26, 36, entry.r + 36, 50]
      .map((distance) => placeLabel(entry, away, wide, 16, [distance], obstacles, bounds))
      .find((place) => place !== null && clear(place.box));
    const place = found ?? placeLabel(entry, away, wide, 16, [16, 24, 34, 46, 60, 80], obstacles, bounds);
    if (place !== null) obstacles.push(place.box);
    return { ...entry, label: place === null ? null : { x: place.at.x, y: place.at.y + 4.5 } };
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
  const shown = ticks(from, to, Math.max(3, Math.floor(width / 76))).filter((tick) => x(tick) > 16 && x(tick) < width - 34);
  return {
    origin,
    originLabel: corner === undefined ? null : { x: corner.x - wide / 2, y: corner.y + 4 },
    rings: data.rings.map((radius) => radius * scale),
    axisY,
    ticks: shown.map((tick, index) => ({ x: x(tick), text: signed(tick) + (index === shown.length - 1 ? ` ${data.unit}` : '') })),
    entries,
  };
}

/** Whether a circle's line runs through a box. */
function crosses(box: Box, circle: { x: number; y: number; r: number }): boolean {
  const dx = Math.max(box.left - circle.x, 0, circle.x - box.right);
  const dy = Math.max(box.top - circle.y, 0, circle.y - box.bottom);
  const farX = Math.max(circle.x - box.left, box.right - circle.x);
  const farY = Math.max(circle.y - box.top, box.bottom - circle.y);
  return Math.hypot(dx, dy) < circle.r + 1 && Math.hypot(farX, farY) > circle.r - 1;
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / Math.max(values.length, 1);
const signed = (value: number): string => `${value > 0 ? '+' : ''}${Number(value.toFixed(6))}`.replace('-', '−');
