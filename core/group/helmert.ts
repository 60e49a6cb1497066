import type { Point } from './points.ts';

/**
 * Lengths of a group's Helmert contrasts: how far each shot fell from the mean of those before it, scaled so that all are alike.
 *
 * @equation r_j = √(j/(j + 1)) |p_{j+1} - (p_1 + … + p_j)/j|, j = 1 … n - 1
 * @param points - places of the shots in the order they were shot [m]
 * @returns the n - 1 lengths, whose squares add up to the sum of squares about the centre [list]
 * @validity under any normal scatter, round or oval, the lengths are independent and alike; another order of shots gives other lengths. Fewer than two shots give none
 * @source from memory
 * @example helmertRadii([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 1, y: 3 }]).map((r) => Math.round(r * r)) // [2, 6]
 */
export function helmertRadii(points: readonly Point[]): number[] {
  const radii: number[] = [];
  let x = 0;
  let y = 0;
  points.forEach((point, j) => {
    if (j > 0) radii.push(Math.sqrt(j / (j + 1)) * Math.hypot(point.x - x, point.y - y));
    x += (point.x - x) / (j + 1);
    y += (point.y - y) / (j + 1);
  });
  return radii;
}
