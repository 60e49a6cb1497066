import type { Point } from '../../../core/group/index.ts';
import { boxAround, touches, type Box } from '../boxes.ts';

interface Circle extends Point {
  readonly r: number;
}

/** Beside the centre or its circle, outward first and the nearest first; clear of every circle's line where that can be had. */
export function nameBox(
  at: Circle,
  away: Point,
  wide: number,
  obstacles: readonly Box[],
  bounds: Box,
  circles: readonly Circle[],
): Box | null {
  const outward = Math.atan2(at.y - away.y, at.x - away.x);
  const boxes = [16, 26, 38, at.r + 11, at.r + 20, at.r + 34, at.r + 52].flatMap((distance) =>
    turns.map((turn) => {
      const [across, down] = [Math.cos(outward + turn), Math.sin(outward + turn)];
      return boxAround(
        { x: at.x + across * (distance + (wide / 2 - 4) * Math.abs(across)), y: at.y + down * distance },
        wide / 2,
        8,
      );
    }),
  );
  const free = boxes.filter(
    (box) =>
      box.left >= bounds.left &&
      box.right <= bounds.right &&
      box.top >= bounds.top &&
      box.bottom <= bounds.bottom &&
      !obstacles.some((obstacle) => touches(box, obstacle)),
  );
  return free.find((box) => circles.every((circle) => !crosses(box, circle))) ?? free[0] ?? null;
}

const turns = [0, 0.5, -0.5, 1, -1, 1.5, -1.5, 2, -2, 2.6, -2.6, Math.PI];

/** A name inside its circle, or just outside it, needs no leader. */
export function leaderTo(circle: Circle, box: Box): string | null {
  const to = { x: clamp(circle.x, box.left, box.right), y: clamp(circle.y, box.top, box.bottom) };
  const away = Math.hypot(to.x - circle.x, to.y - circle.y);
  if (away < circle.r + 12) return null;
  const edge = circle.r / away;
  const from = { x: circle.x + (to.x - circle.x) * edge, y: circle.y + (to.y - circle.y) * edge };
  return `M${from.x.toFixed(1)} ${from.y.toFixed(1)}L${to.x.toFixed(1)} ${to.y.toFixed(1)}`;
}

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** Whether a circle's line runs through a box. */
export function crosses(box: Box, circle: Circle): boolean {
  const dx = Math.max(box.left - circle.x, 0, circle.x - box.right);
  const dy = Math.max(box.top - circle.y, 0, circle.y - box.bottom);
  const farX = Math.max(circle.x - box.left, box.right - circle.x);
  const farY = Math.max(circle.y - box.top, box.bottom - circle.y);
  return Math.hypot(dx, dy) < circle.r + 1 && Math.hypot(farX, farY) > circle.r - 1;
}
