import type { Shot } from '../../../core/model/group.ts';
import { dotsPath } from '../dots.ts';
import { toPixel, type FaceView } from './geometry.ts';

/** Many shots as a few paths of dots, each with a key that stays the same for the same shots. */
export type FaceDots = readonly { readonly key: string; readonly earlier: boolean; readonly path: string }[];

/** Few enough to be drawn anew when one of them changes, enough that there are not many paths [count]. */
const TOGETHER = 250;

/** What a shot's dot is written as in the view that was drawn last: figures are slow to write, and of many thousands one or two are new. */
const written = { view: '', dots: new WeakMap<Shot, string>() };

function dotIn(view: string, shot: Shot, place: (shot: Shot) => ReturnType<typeof toPixel>): string {
  if (written.view !== view) Object.assign(written, { view, dots: new WeakMap<Shot, string>() });
  const dot = written.dots.get(shot) ?? dotsPath([place(shot)]);
  written.dots.set(shot, dot);
  return dot;
}

/** Whether a shot belongs to an end before the one in hand. */
export const isEarlier = ({ end }: Pick<Shot, 'end'>, endInHand: number | undefined): boolean =>
  endInHand !== undefined && end !== endInHand;

/**
 * The dots of a large group. Shots that stand together by their numbers share a path: one that is set, moved or taken back leaves all the
 * other paths as they were, and the browser draws only what changed.
 */
export function faceDots(view: FaceView, shots: readonly Shot[], endInHand?: number): FaceDots {
  const paths = new Map<string, { earlier: boolean; dots: string[] }>();
  const here = `${view.middle.x} ${view.middle.y} ${view.half} ${view.size}`;
  const place = (shot: Shot) => toPixel(view, shot);
  for (const shot of shots) {
    const earlier = isEarlier(shot, endInHand);
    const key = `${earlier ? 'earlier' : 'now'} ${Math.floor(shot.id / TOGETHER)}`;
    const path = paths.get(key) ?? { earlier, dots: [] };
    if (path.dots.length === 0) paths.set(key, path);
    path.dots.push(dotIn(here, shot, place));
  }
  return [...paths].map(([key, { earlier, dots }]) => ({ key, earlier, path: dots.join('') }));
}
