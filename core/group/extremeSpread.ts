import type { Point } from './points.ts';

const cross = (o: Point, a: Point, b: Point): number => (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** The farthest point in each of eight directions, counter-clockwise. One pass with plain comparisons: a page asks this at every shot. */
function fence(points: readonly Point[]): Point[] {
  const [first] = points;
  if (first === undefined) return [];
  let [right, upRight, up, upLeft, left, downLeft, down, downRight] = [first, first, first, first, first, first, first, first];
  for (const p of points) {
    if (p.x > right.x) right = p;
    if (p.x < left.x) left = p;
    if (p.y > up.y) up = p;
    if (p.y < down.y) down = p;
    const sum = p.x + p.y;
    if (sum > upRight.x + upRight.y) upRight = p;
    if (sum < downLeft.x + downLeft.y) downLeft = p;
    const difference = p.y - p.x;
    if (difference > upLeft.y - upLeft.x) upLeft = p;
    if (difference < downRight.y - downRight.x) downRight = p;
  }
  const corners = [right, upRight, up, upLeft, left, downLeft, down, downRight];
  return corners.filter((corner, i) => distance(corner, corners[(i + 1) % corners.length] ?? corner) > 0);
}

/** What lies strictly inside the fence cannot be a corner of the hull; of a real group that is nearly everything. */
function outsideFence(points: readonly Point[]): readonly Point[] {
  const corners = fence(points);
  if (corners.length < 3) return points;
  const sides = corners.map((from, i) => ({ from, to: corners[(i + 1) % corners.length] ?? from }));
  return points.filter((p) => sides.some(({ from, to }) => cross(from, to, p) <= 0));
}

/**
 * Convex hull, counter-clockwise from the leftmost point, without points inside an edge.
 *
 * @equation Andrew's monotone chain, after points inside the polygon of the eight farthest are left out (Akl and Toussaint)
 * @param points - places [m]
 * @returns the corners of the hull [m]
 * @validity finite places; one corner when all coincide, two when all lie on a line
 * @source andrew-1979
 * @example convexHull([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 1, y: 0.5 }, { x: 1, y: 2 }]).length // 3
 */
export function convexHull(points: readonly Point[]): Point[] {
  if (points.length === 0) return [];
  const sorted = [...outsideFence(points)].sort((a, b) => a.x - b.x || a.y - b.y);
  const chain = (ordered: readonly Point[]): Point[] => {
    const kept: Point[] = [];
    for (const p of ordered) {
      for (;;) {
        const [a, b] = kept.slice(-2);
        if (a === undefined || b === undefined || cross(a, b, p) > 0) break;
        kept.pop();
      }
      kept.push(p);
    }
    return kept.slice(0, -1);
  };
  const hull = [...chain(sorted), ...chain(sorted.reverse())];
  const first = sorted[0];
  return hull.length === 0 && first !== undefined ? [first] : hull;
}

/**
 * Distance of the two shots farthest apart (centre to centre).
 *
 * @equation max |p_i - p_j|, by rotating calipers on the convex hull
 * @param points - places [m]
 * @returns extreme spread [m]
 * @validity finite places; 0 for fewer than two. Exact, in O(n log n) at worst and near n for real groups
 * @source shamos-1978
 * @example extremeSpread([{ x: 0, y: 0 }, { x: 0.01, y: 0.01 }, { x: 0.03, y: 0.04 }]) // 0.05
 */
export function extremeSpread(points: readonly Point[]): number {
  const hull = convexHull(points);
  const at = (i: number): Point => hull[i % hull.length] ?? { x: 0, y: 0 };
  let farthest = 0;
  let across = 1;
  for (let i = 0; i < hull.length; i++) {
    while (cross(at(i), at(i + 1), at(across + 1)) > cross(at(i), at(i + 1), at(across))) across++;
    // The next corner too: with parallel edges the caliper rests on both.
    for (const j of [across, across + 1]) farthest = Math.max(farthest, distance(at(i), at(j)), distance(at(i + 1), at(j)));
  }
  return farthest;
}
