import fc from 'fast-check';
import { inOneHole, type Point } from '../../../core/group/index.ts';

/** Whole millimetres: they meet lines, doubles and ties often. */
const place = (reach: number): fc.Arbitrary<Point> =>
  fc
    .record({ x: fc.integer({ min: -reach, max: reach }), y: fc.integer({ min: -reach, max: reach }) })
    .map(({ x, y }) => ({ x: x / 1000, y: y / 1000 }));

/** Any shots: in one hole, on a line, or apart. */
export const anyShots = (reach = 3): fc.Arbitrary<Point[]> => fc.array(place(reach), { minLength: 0, maxLength: 9 });

/** A group with a spread. */
export const group = (minLength = 2, reach = 300): fc.Arbitrary<Point[]> =>
  fc.array(place(reach), { minLength, maxLength: 14 }).filter((points) => !inOneHole(points));

export const angle: fc.Arbitrary<number> = fc.double({ min: -3, max: 3, noNaN: true });
export const factor: fc.Arbitrary<number> = fc.double({ min: 0.2, max: 4, noNaN: true });

export const moved = (points: readonly Point[], by: Point): Point[] => points.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));
export const turned = (points: readonly Point[], by: number): Point[] =>
  points.map(({ x, y }) => ({ x: x * Math.cos(by) - y * Math.sin(by), y: x * Math.sin(by) + y * Math.cos(by) }));
export const mirrored = (points: readonly Point[]): Point[] => points.map(({ x, y }) => ({ x: -x, y }));
export const scaled = (points: readonly Point[], by: number): Point[] => points.map(({ x, y }) => ({ x: x * by, y: y * by }));
export const place300 = place(300);
