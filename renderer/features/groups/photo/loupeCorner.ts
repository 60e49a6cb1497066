import type { Point } from '../../../../core/group/index.ts';

/** How large the loupe is, the room for its lines, and its way off the edge [px]. */
export const SIDE = 132;
const LINES = 40;
const GAP = 10;

/** The corner that is not under the pointer and covers the fewest marks; of equal ones the nearest, so that it is seen beside the hole. */
export function loupeCorner(width: number, height: number, at: Point, marks: readonly Point[]): Point {
  const [right, low] = [width - SIDE - GAP, height - SIDE - LINES - GAP];
  const corners = [
    { x: GAP, y: GAP },
    { x: right, y: GAP },
    { x: right, y: low },
    { x: GAP, y: low },
  ];
  const covers = (corner: Point, { x, y }: Point) =>
    x > corner.x - GAP && x < corner.x + SIDE + GAP && y > corner.y - GAP && y < corner.y + SIDE + LINES + GAP;
  const cost = (corner: Point) =>
    (covers(corner, at) ? 1e9 : 0) +
    marks.filter((mark) => covers(corner, mark)).length * 1e4 +
    Math.hypot(corner.x + SIDE / 2 - at.x, corner.y + SIDE / 2 - at.y);
  return corners.reduce((best, corner) => (cost(corner) < cost(best) ? corner : best));
}
