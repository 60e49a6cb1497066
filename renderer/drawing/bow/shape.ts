import type { Place } from './points.ts';

/** What a part is made of decides its fill; "line" is only an edge inside an outline. */
export type Material = 'limb' | 'wood' | 'metal' | 'grip' | 'hole' | 'line';

export interface Part {
  readonly name: string;
  readonly material: Material;
  /** Whether it is an outline of the bow, or an edge inside one. */
  readonly weight: 'outline' | 'inner';
  readonly closed: boolean;
  readonly line: readonly Place[];
}

/** A bow braced, from its side: places in metres, u from the string toward the target, v up from the arrow's rest. */
export interface BowShape {
  /** In the order in which they are drawn. */
  readonly parts: readonly Part[];
  /** From the upper nock to the lower one, as the string lies. */
  readonly string: readonly Place[];
  /** From the top to the bottom of the middle serving. */
  readonly serving: readonly [top: number, bottom: number];
  /** Where the limb's distance to the string is read. */
  readonly roots: Readonly<Record<'upper' | 'lower', Place>>;
  /** The deepest point of the grip, where the brace height is read. */
  readonly grip: Place;
  /** The button or the middle of the shelf or hand: where the arrow passes. */
  readonly rest: Place;
  readonly top: number;
  readonly bottom: number;
  /** How far anything of the bow reaches toward the target. */
  readonly front: number;
}

/** The bow's middle stands so far under the arrow [m]. */
export const MIDDLE = -1.25 * 0.0254;

/** Which way is which: the upper limb climbs, the lower one is its mirror about the bow's middle. */
export const limbsOf = [
  { name: 'upper', up: 1 },
  { name: 'lower', up: -1 },
] as const;

/** Puts the extremes of a shape beside its parts. */
export function finished(shape: Omit<BowShape, 'top' | 'bottom' | 'front'>): BowShape {
  const places = shape.parts.flatMap(({ line }) => line);
  const heights = places.map(([, v]) => v);
  return {
    ...shape,
    top: Math.max(...heights),
    bottom: Math.min(...heights),
    front: Math.max(...places.map(([u]) => u)),
  };
}
