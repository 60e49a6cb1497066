import type { Moments, Point } from '../../../core/group/index.ts';
import type { Result } from '../../../core/model/index.ts';
import { normalPair, type Random } from '../../../fixtures/random.ts';

/** The value of a result that must not be a refusal. */
export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
}

/** The code of a refusal; 'none' when there is none. */
export const refusalOf = (result: Result<unknown>): string => (result.ok ? 'none' : result.problem.code);

/** Pairs of millimetres as places on the face. */
export const millimetres = (rows: readonly (readonly number[])[]): Point[] =>
  rows.map(([x = NaN, y = NaN]) => ({ x: x / 1000, y: y / 1000 }));

/** Normal shots about a centre with a spread of their own on each axis. */
export function normalShots(
  random: Random,
  n: number,
  spread: readonly number[] = [1, 1],
  centre: Point = { x: 0, y: 0 },
): Point[] {
  const [sx = NaN, sy = NaN] = spread;
  return Array.from({ length: n }, () => {
    const [u, v] = normalPair(random);
    return { x: centre.x + sx * u, y: centre.y + sy * v };
  });
}

/** Every number anywhere inside a value. */
export function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** Moments of a round group of given size, centre and spread of one axis. */
export const roundMoments = (n: number, x: number, spread: number): Moments => ({
  n,
  centre: { x, y: 0 },
  covariance: { xx: spread ** 2, xy: 0, yy: spread ** 2 },
});

/** A perfectly round group: the corners of a regular polygon, with a spread of one axis of exactly one centimetre. */
export const polygon = (n: number, x = 0): Point[] => {
  const radius = 0.01 * Math.sqrt((2 * (n - 1)) / n);
  return Array.from({ length: n }, (_, i) => ({
    x: x + radius * Math.cos((2 * Math.PI * i) / n),
    y: radius * Math.sin((2 * Math.PI * i) / n),
  }));
};
