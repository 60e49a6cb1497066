import type { Shot } from '../../../core/model/group.ts';
import { dotsPath } from '../dots.ts';
import { toPixel, type FaceView } from './geometry.ts';

/** Many shots as a few paths of dots, each with a key that stays the same for the same shots. */
export type FaceDots = readonly { readonly key: string; readonly earlier: boolean; readonly path: string }[];

/** Few enough to be drawn anew when one of them changes, enough that there are not many paths [count]. */
const TOGETHER = 250;

/**
 * What a run of shots was last drawn as, by the first of them: figures are slow to write, and of many thousands one or two are new. One
 * entry a run and not a shot: what is held weakly by the ten thousand holds up whoever collects what nobody needs any more.
 */
const written = new WeakMap<Shot, { readonly view: string; readonly shots: readonly Shot[]; readonly path: string }>();

function pathOf(here: string, view: FaceView, shots: readonly Shot[]): string {
  const [first] = shots;
  if (first === undefined) return '';
  const known = written.get(first);
  const same = known?.view === here && known.shots.length === shots.length && known.shots.every((shot, i) => shot === shots[i]);
  if (same) return known.path;
  const path = dotsPath(shots.map((shot) => toPixel(view, shot)));
  written.set(first, { view: here, shots, path });
  return path;
}

/** Whether a shot belongs to an end before the one in hand. */
export const isEarlier = ({ end }: Pick<Shot, 'end'>, endInHand: number | undefined): boolean =>
  endInHand !== undefined && end !== endInHand;

/**
 * The dots of a large group. Shots that stand together by their numbers share a path: one that is set, moved or taken back leaves all the
 * other paths as they were, and the browser draws only what changed.
 */
export function faceDots(view: FaceView, shots: readonly Shot[], endInHand?: number): FaceDots {
  const runs = { earlier: new Map<number, Shot[]>(), now: new Map<number, Shot[]>() };
  for (const shot of shots) {
    const among = isEarlier(shot, endInHand) ? runs.earlier : runs.now;
    const number = Math.floor(shot.id / TOGETHER);
    const run = among.get(number);
    if (run === undefined) among.set(number, [shot]);
    else run.push(shot);
  }
  const here = `${view.middle.x} ${view.middle.y} ${view.half} ${view.size}`;
  const drawn = (which: keyof typeof runs): FaceDots =>
    [...runs[which]].map(([number, run]) => ({
      key: `${which} ${number}`,
      earlier: which === 'earlier',
      path: pathOf(here, view, run),
    }));
  return [...drawn('earlier'), ...drawn('now')];
}
