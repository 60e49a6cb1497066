import type { Point } from '../../../../core/group/index.ts';
import { boxAround, placeLabel, type Box } from '../../../plots/boxes.ts';

/** Where the number of each hole stands, outward from their middle; null where there is no room for it. */
export function labelPlaces(
  holes: readonly { readonly at: Point; readonly text: string }[],
  radius: number,
  width: number,
  height: number,
): readonly (Point | null)[] {
  const bounds: Box = { left: 2, top: 2, right: width - 2, bottom: height - 2 };
  const obstacles = holes.map(({ at }) => boxAround(at, radius + 2, radius + 2));
  const count = Math.max(1, holes.length);
  const middle = {
    x: holes.reduce((sum, { at }) => sum + at.x, 0) / count,
    y: holes.reduce((sum, { at }) => sum + at.y, 0) / count,
  };
  return holes.map(({ at, text }) => {
    const distances = [radius + 9, radius + 13, radius + 19];
    const placed = placeLabel(at, middle, 8 * text.length + 2, 14, distances, obstacles, bounds);
    if (placed === null) return null;
    obstacles.push(placed.box);
    return placed.at;
  });
}
