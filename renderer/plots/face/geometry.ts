import type { Point } from '../../../core/group/index.ts';

/** The window onto the face: its middle and half its side [m], and the side of the square on screen [px]. */
export interface FaceView {
  readonly middle: Point;
  readonly half: number;
  readonly size: number;
}

/** Pixels per metre. */
export const scaleOf = (view: FaceView): number => view.size / (2 * view.half);

/** From the archer's view [m] (x right, y up) to the square [px] (y down). */
export function toPixel(view: FaceView, point: Point): Point {
  const k = scaleOf(view);
  return { x: view.size / 2 + (point.x - view.middle.x) * k, y: view.size / 2 - (point.y - view.middle.y) * k };
}

export function toFace(view: FaceView, pixel: Point): Point {
  const k = scaleOf(view);
  return { x: view.middle.x + (pixel.x - view.size / 2) / k, y: view.middle.y - (pixel.y - view.size / 2) / k };
}

/** How far from the centre the farthest lies, across or up [m]. */
export const reachOf = (points: readonly Point[]): number =>
  points.reduce((most, { x, y }) => Math.max(most, Math.abs(x), Math.abs(y)), 0);

/** The whole face with a little butt around it, and as much more as the misses need: no shot that counts may be out of sight. */
export const wholeFace = (radius: number, points: readonly Point[] = []): Pick<FaceView, 'middle' | 'half'> => ({
  middle: { x: 0, y: 0 },
  half: Math.max(radius * 1.06, reachOf(points) * 1.08),
});

/** Close in on the shots, never closer than a quarter of the face, and never moved off its centre: where the aim is must stay in sight. */
export function closeIn(points: readonly Point[], radius: number): Pick<FaceView, 'middle' | 'half'> {
  const reach = reachOf(points);
  return { middle: { x: 0, y: 0 }, half: Math.max(Math.min(radius * 1.06, reach * 1.35), radius * 0.3, reach * 1.08) };
}
