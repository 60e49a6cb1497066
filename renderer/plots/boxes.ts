import type { Point } from '../../core/group/index.ts';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const touches = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export const boxAround = (at: Point, halfWidth: number, halfHeight: number): Box => ({
  left: at.x - halfWidth,
  right: at.x + halfWidth,
  top: at.y - halfHeight,
  bottom: at.y + halfHeight,
});

/** Turns away from "straight outward", in the order they are tried. */
const turns = [0, 0.5, -0.5, 1, -1, 1.6, -1.6, 2.3, -2.3, Math.PI];

/**
 * Where a label may stand: outward from the group's centre, next free angle, then farther; null when nothing is free. Nothing ever touches:
 * the caller adds the box to the obstacles.
 */
export function placeLabel(
  anchor: Point,
  awayFrom: Point,
  width: number,
  height: number,
  distances: readonly number[],
  obstacles: readonly Box[],
  bounds: Box,
): { readonly at: Point; readonly box: Box } | null {
  const outward = Math.atan2(anchor.y - awayFrom.y, anchor.x - awayFrom.x);
  for (const distance of distances) {
    for (const turn of turns) {
      const angle = outward + turn;
      const at = {
        x: anchor.x + Math.cos(angle) * (distance + (width / 2 - 4) * Math.abs(Math.cos(angle))),
        y: anchor.y + Math.sin(angle) * distance,
      };
      const box = boxAround(at, width / 2, height / 2);
      const inside = box.left >= bounds.left && box.right <= bounds.right && box.top >= bounds.top && box.bottom <= bounds.bottom;
      if (inside && !obstacles.some((obstacle) => touches(box, obstacle))) return { at, box };
    }
  }
  return null;
}
