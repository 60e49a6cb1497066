import type { Band } from '../model/band.ts';
import { ok, type Result } from '../model/problem.ts';

/** One thing to go by, and the same thing at every corner of what is not known. */
export interface Corners<T> {
  readonly value: T;
  readonly corners: readonly T[];
}

/**
 * The same step for the value to go by and for every corner.
 *
 * @equation f of each, or the first refusal
 * @param from - value and corners [record]
 * @param step - f, or its refusal [function]
 * @returns value and corners of f, or the first refusal [record]
 * @validity any f
 * @source own derivation
 * @example atCorners({ value: 2, corners: [1, 3] }, (x) => ({ ok: true, value: 10 * x })).value // {"value":20,"corners":[10,30]}
 */
export function atCorners<T, U>(from: Corners<T>, step: (one: T) => Result<U>): Result<Corners<U>> {
  const value = step(from.value);
  if (!value.ok) return value;
  const corners: U[] = [];
  for (const corner of from.corners) {
    const there = step(corner);
    if (!there.ok) return there;
    corners.push(there.value);
  }
  return ok({ value: value.value, corners });
}

/**
 * The band of one figure over its corners.
 *
 * @equation low = least, high = greatest of f over the value and the corners
 * @param from - value and corners [record]
 * @param figure - f, in any unit [function]
 * @returns the figure with its band, in f's unit [record]
 * @validity f monotone in each unknown by itself: then no inner point lies outside the corners
 * @source own derivation
 * @example bandOver({ value: 2, corners: [1, 3] }, (x) => 10 * x) // {"value":20,"low":10,"high":30}
 */
export function bandOver<T>(from: Corners<T>, figure: (one: T) => number): Band {
  const value = figure(from.value);
  let [low, high] = [value, value];
  for (const corner of from.corners) {
    const there = figure(corner);
    low = Math.min(low, there);
    high = Math.max(high, there);
  }
  return { value, low, high };
}
