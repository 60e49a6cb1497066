import type { Point } from './points.ts';

const MOST_STEPS = 300;
/** Steps shorter than this share of the places' width end the search. */
const NEAR = 1e-12;

/**
 * The place whose distances to all given places add up to the least, which a few far ones hardly move.
 *
 * @equation min Σ |p_i - m|: the place p_k when |Σ (p_i - p_k)/|p_i - p_k|| over the others is at most the number of places there; else steps m = Σ w p_i/Σ w, w = 1/|p_i - m| (Weiszfeld)
 * @param points - places [m]
 * @returns the spatial median; the origin for none [m]
 * @validity finite places; on a line with an even number of places any between the middle two is one, and one of them is taken
 * @source vardi-zhang-2000
 * @example spatialMedian([{ x: -1, y: 0 }, { x: 0, y: 0 }, { x: 9, y: 0 }]) // { "x": 0, "y": 0 }
 */
export function spatialMedian(points: readonly Point[]): Point {
  const corner = points.find((point) => isMedian(point, points));
  if (corner !== undefined) return corner;
  const mean = (axis: 'x' | 'y'): number => points.reduce((sum, point) => sum + point[axis], 0) / Math.max(1, points.length);
  let at: Point = { x: mean('x'), y: mean('y') };
  const width = Math.max(0, ...points.map(({ x, y }) => Math.hypot(x - at.x, y - at.y)));
  for (let step = 0; step < MOST_STEPS; step++) {
    let [x, y, weight] = [0, 0, 0];
    for (const point of points) {
      // The median lies on none of the places, so that a step which hits one only has to leave it again.
      const w = 1 / Math.max(NEAR * width, Math.hypot(point.x - at.x, point.y - at.y));
      x += w * point.x;
      y += w * point.y;
      weight += w;
    }
    if (!(weight > 0 && weight < Infinity)) break;
    const next = { x: x / weight, y: y / weight };
    const moved = Math.hypot(next.x - at.x, next.y - at.y);
    at = next;
    if (moved <= NEAR * width) break;
  }
  return at;
}

function isMedian(place: Point, points: readonly Point[]): boolean {
  let [x, y, here] = [0, 0, 0];
  for (const point of points) {
    const [dx, dy] = [point.x - place.x, point.y - place.y];
    const distance = Math.hypot(dx, dy);
    if (distance === 0) here++;
    else {
      x += dx / distance;
      y += dy / distance;
    }
  }
  return Math.hypot(x, y) <= here;
}
