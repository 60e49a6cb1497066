import type { Use } from '../units/uses.ts';

export type Section = 'Build' | 'On the bow' | 'On the face' | 'Far off';

/** One figure of a set-up as the bench shows it. SI. */
export interface Figure {
  readonly key: string;
  readonly name: string;
  readonly use: Use;
  readonly section: Section;
  /** Null while it is not known; the note says what it waits for. */
  readonly value: number | null;
  /** Half width of what it may well be: 95 % for groups, else what measuring and the band of an estimate leave open. */
  readonly half: number | null;
  readonly note: string;
}

/**
 * How far a figure moves when one thing it rests on is off by its doubt, by the name of that thing. Two set-ups that share a thing (one
 * bow, one archer, one model of drag) are off in the same way, so that their difference is surer than either figure.
 */
type Doubts = ReadonlyMap<string, number>;

/** A figure with what its doubt is made of. */
export interface DoubtedFigure extends Figure {
  readonly doubts: Doubts;
}

/**
 * Half width of a sum of independent doubts.
 *
 * @equation √Σ δ²
 * @param doubts - each doubt's effect on the figure [list]
 * @returns half width, in the figure's unit [SI]
 * @validity independent doubts
 * @source jcgm-100
 * @example halfOf(new Map([['a', 3], ['b', -4]])) // 5
 */
export function halfOf(doubts: Doubts): number {
  return Math.hypot(...doubts.values());
}

/**
 * Half width of the difference of two figures whose doubts are partly the same.
 *
 * @equation √Σ (δ₂ − δ₁)² over every doubt of either
 * @param first - doubts of the one [list]
 * @param second - doubts of the other [list]
 * @returns half width of second less first, in the figures' unit [SI]
 * @validity independent doubts, shared ones named alike
 * @source jcgm-100
 * @example halfOfDifference(new Map([['shared', 3], ['a', 4]]), new Map([['shared', 3], ['b', 3]])) // 5
 */
export function halfOfDifference(first: Doubts, second: Doubts): number {
  const names = new Set([...first.keys(), ...second.keys()]);
  return Math.hypot(...[...names].map((name) => (second.get(name) ?? 0) - (first.get(name) ?? 0)));
}
