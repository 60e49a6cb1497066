import type { Point } from '../../../core/group/index.ts';
import type { Shot } from '../../../core/model/group.ts';
import { dotsPath } from '../dots.ts';
import { toPixel, type FaceView } from './geometry.ts';

/** Many shots as a few paths of dots, each with a key that stays the same for the same shots. */
export type FaceDots = readonly { readonly key: string; readonly earlier: boolean; readonly path: string }[];

/** Few enough to be drawn anew when one of them changes, enough that there are not many paths [count]. */
const TOGETHER = 250;

/** Whether a shot belongs to an end before the one in hand. */
export const isEarlier = ({ end }: Pick<Shot, 'end'>, endInHand: number | undefined): boolean =>
  endInHand !== undefined && end !== endInHand;

/**
 * The dots of a large group. Shots that stand together by their numbers share a path: one that is set, moved or taken back leaves all the
 * other paths as they were, and the browser draws only what changed.
 */
export function faceDots(view: FaceView, shots: readonly Shot[], endInHand?: number): FaceDots {
  const paths = new Map<string, { earlier: boolean; places: Point[] }>();
  for (const shot of shots) {
    const earlier = isEarlier(shot, endInHand);
    const key = `${earlier ? 'earlier' : 'now'} ${Math.floor(shot.id / TOGETHER)}`;
    const path = paths.get(key) ?? { earlier, places: [] };
    if (path.places.length === 0) paths.set(key, path);
    path.places.push(toPixel(view, shot));
  }
  return [...paths].map(([key, { earlier, places }]) => ({ key, earlier, path: dotsPath(places) }));
}
