import { limits } from '../model/limits.ts';
import { ok, refuse, type Result } from '../model/problem.ts';

/** A place on the face [m]: x to the right, y up. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Nobody measures a hole finer than this [m]: shots closer together than this lie in one hole. */
export const ONE_HOLE = 1e-6;

const FARTHEST = limits.shotOffset.max;
const usable = (value: number): boolean => Number.isFinite(value) && Math.abs(value) <= FARTHEST;

/**
 * Refuses places that cannot be shots on a face.
 *
 * @equation every x and y is a number within the limit of a shot's place (3 m); the first that is not is named
 * @param points - places of the shots [m]
 * @param which - what the shots are called in the sentence [text]
 * @returns the same places, or the refusal `bad-position` [record]
 * @validity any input
 * @source own derivation
 * @example checkedPoints([{ x: 5, y: 0 }], 'this group').problem.code // "bad-position"
 */
export function checkedPoints(points: readonly Point[], which: string): Result<readonly Point[]> {
  const bad = points.findIndex((point) => !usable(point.x) || !usable(point.y));
  if (bad < 0) return ok(points);
  return refuse(
    'bad-position',
    `Shot ${bad + 1} of ${which} has no usable place: a place within ${FARTHEST} m of the centre of the face was expected. Put it where it struck, or leave it out.`,
    'shots',
  );
}

/**
 * Says whether all shots lie in one hole.
 *
 * @equation the range of x and the range of y are both at most one micrometre
 * @param points - places of the shots [m]
 * @returns true when they do; true for no shots and for one [choice]
 * @validity finite places
 * @source own derivation
 * @example inOneHole([{ x: 0.1, y: 0.2 }, { x: 0.1, y: 0.2 }]) // true
 */
export function inOneHole(points: readonly Point[]): boolean {
  const first = points[0];
  return first === undefined || points.every((p) => Math.abs(p.x - first.x) <= ONE_HOLE && Math.abs(p.y - first.y) <= ONE_HOLE);
}
