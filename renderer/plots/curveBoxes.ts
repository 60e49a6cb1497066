import type { Point } from '../../core/group/index.ts';
import { boxAround, type Box } from './boxes.ts';

/** A curve as a row of small boxes, so that labels keep off it: each piece of at most a few pixels, with a little air around it. */
export function curveBoxes(points: readonly Point[], air = 3): Box[] {
  return points.slice(1).flatMap((to, i) => {
    const from = points[i] as Point;
    const pieces = Math.max(1, Math.ceil(Math.abs(to.x - from.x) / 6));
    return Array.from({ length: pieces }, (_, k): Box => {
      const [a, b] = [along(from, to, k / pieces), along(from, to, (k + 1) / pieces)];
      return {
        left: Math.min(a.x, b.x) - air,
        right: Math.max(a.x, b.x) + air,
        top: Math.min(a.y, b.y) - air,
        bottom: Math.max(a.y, b.y) + air,
      };
    });
  });
}

export const dotBoxes = (points: readonly Point[], radius: number): Box[] =>
  points.map((point) => boxAround(point, radius, radius));

const along = (from: Point, to: Point, share: number): Point => ({
  x: from.x + (to.x - from.x) * share,
  y: from.y + (to.y - from.y) * share,
});
