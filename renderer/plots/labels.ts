import { touches, type Box } from './boxes.ts';
import { textWidth, type Lettering } from './textWidth.ts';

export type Anchor = 'start' | 'middle' | 'end';

/** A text on the plot, with the box it fills: what a test can hold against every other. */
export interface Label {
  readonly text: string;
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly anchor: Anchor;
  readonly lettering: Lettering;
  readonly size: number;
  readonly box: Box;
}

export function label(text: string, x: number, y: number, anchor: Anchor, lettering: Lettering, size: number): Label {
  const width = textWidth(text, size, lettering);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return {
    text,
    x,
    y,
    anchor,
    lettering,
    size,
    box: { left, right: left + width, top: y - 0.78 * size, bottom: y + 0.24 * size },
  };
}

const within = (box: Box, bounds: Box): boolean =>
  box.left >= bounds.left && box.right <= bounds.right && box.top >= bounds.top && box.bottom <= bounds.bottom;

/** The first of several places that is inside the bounds and touches nothing; null when none is. */
export function firstFree<T>(
  places: readonly T[],
  boxesOf: (place: T) => readonly Box[],
  obstacles: readonly Box[],
  bounds: Box,
): T | null {
  const free = (box: Box) => within(box, bounds) && !obstacles.some((obstacle) => touches(box, obstacle));
  return places.find((place) => boxesOf(place).every(free)) ?? null;
}

/** Places labels one after another, each row of them at the first of its places that is free; what is placed stands in the way of what follows. */
export function placer(inTheWay: readonly Box[], bounds: Box) {
  const obstacles = [...inTheWay];
  const placed: Label[] = [];
  const place = (rows: readonly (readonly Label[])[]): boolean => {
    const found = firstFree(rows, (row) => row.map(({ box }) => box), obstacles, bounds);
    if (found === null) return false;
    placed.push(...found);
    obstacles.push(...found.map(({ box }) => box));
    return true;
  };
  return { place, placed };
}
