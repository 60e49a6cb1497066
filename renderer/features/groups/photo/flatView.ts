import type { Point } from '../../../../core/group/index.ts';
import type { FaceView } from '../../../plots/face/geometry.ts';

/** The whole face, with a little round it for what missed the paper. */
const ROUND = 1.08;
/** As close as a picture of 2400 pixels has anything to show: an eighth of the face. */
const CLOSEST = 1 / 8;

export const wholeOf = (radius: number, size: number): FaceView => ({ middle: { x: 0, y: 0 }, half: radius * ROUND, size });

/** A window that stays within the whole. */
function within(whole: FaceView, middle: Point, half: number): FaceView {
  const room = whole.half - half;
  const held = (value: number) => Math.min(room, Math.max(-room, value));
  return { middle: { x: held(middle.x), y: held(middle.y) }, half, size: whole.size };
}

/** Closer or wider by a factor; the point about which it is stays where it was on screen. */
export function zoomed(view: FaceView, whole: FaceView, factor: number, about: Point): FaceView {
  const half = Math.min(whole.half, Math.max(whole.half * CLOSEST, view.half / factor));
  const share = half / view.half;
  const middle = {
    x: about.x + (view.middle.x - about.x) * share,
    y: about.y + (view.middle.y - about.y) * share,
  };
  return within(whole, middle, half);
}

/** The window moved so that a point lies in it, well off its edge. */
export function movedTo(view: FaceView, whole: FaceView, point: Point): FaceView {
  const most = view.half * 0.85;
  const shift = (from: number, to: number) => from + Math.sign(to - from) * Math.max(0, Math.abs(to - from) - most);
  return within(whole, { x: shift(view.middle.x, point.x), y: shift(view.middle.y, point.y) }, view.half);
}
