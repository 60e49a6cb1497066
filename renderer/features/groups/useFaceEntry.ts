import { useState, type KeyboardEvent } from 'react';
import type { Point } from '../../../core/group/index.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import { MOST_DRAWN } from '../../plots/dots.ts';
import { toFace, toPixel, type FaceView } from '../../plots/face/geometry.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { addShot, moveShot, newestIn, numberShot, removeShot } from './edits.ts';
import { beginEnd } from './entry/beginEnd.ts';
import { directions, neighbour, useDigits } from './entry/keys.ts';
import { entryOf, setEntry, useEntry } from './entry/store.ts';
import { usePress } from './entry/usePress.ts';

/** The cross moves by this, and with Shift by the fine step; a chosen shot is nudged by the fine step, with Shift by the coarse one [m]. */
const coarse = 0.005;
const fine = 0.001;

/** Everything pointer and keys do on the face. One click or one Enter is one shot. */
export function useFaceEntry(view: FaceView, group: ShotGroup, shotRadius: number) {
  const bench = useBenchApi();
  const { shotInHand } = useEntry(group.id);
  const [pointer, setPointer] = useState<Point | null>(null);
  const [cross, setCross] = useState<Point | null>(null);
  /** A shot that is being pulled, and where it is: only this one is drawn anew until it is let go. */
  const [pulled, setPulled] = useState<{ readonly shot: number; readonly at: Point } | null>(null);
  const chosen = shotInHand !== null && group.shots.some(({ id }) => id === shotInHand) ? shotInHand : null;
  const setChosen = (shot: number | null) => setEntry(group.id, { shotInHand: shot });
  const numberIn = useDigits();

  const press = usePress({
    marks: group.shots,
    of: group.id,
    // Among thousands every place is on a dot: there a click sets, and resting takes in hand.
    radius: group.shots.length > MOST_DRAWN ? 0 : shotRadius,
    inHand: chosen,
    toPlane: (pixel) => toFace(view, pixel),
    toPixel: (point) => toPixel(view, point),
    onPoint: (at) => {
      setPointer(at);
      setCross(null);
    },
    onSet: (at) => {
      setChosen(null);
      void addShot(bench, group.id, at).then((done) => {
        // A shot that was taken in hand meanwhile stays there.
        if (done && entryOf(group.id).shotInHand === null) setChosen(newestIn(bench, group.id));
      });
    },
    onPull: (shot, at) => setPulled({ shot, at }),
    onLetGo: (shot, at) => {
      setChosen(shot);
      // It stays where it was let go until the notebook has it there.
      if (at !== null) void moveShot(bench, group.id, shot, () => at).finally(() => setPulled(null));
    },
    onAside: (shot) => {
      setChosen(shot);
      setEntry(group.id, { leaving: shot });
    },
    onGiveUp: () => setPulled(null),
  });

  const inHand = (): number | null => chosen ?? group.shots.at(-1)?.id ?? null;

  const step = (to: 1 | -1) => {
    setChosen(neighbour(group.shots, chosen, to));
    setCross(null);
  };

  const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const direction = directions[event.key];
    if (direction !== undefined) {
      if (chosen !== null) {
        const by = event.shiftKey ? coarse : fine;
        void moveShot(bench, group.id, chosen, (shot) => ({ x: shot.x + by * direction.x, y: shot.y + by * direction.y }));
      } else {
        const by = event.shiftKey ? fine : coarse;
        const from = cross ?? { x: 0, y: 0 };
        const most = view.half;
        setCross({
          x: Math.max(-most, Math.min(most, from.x + by * direction.x)),
          y: Math.max(-most, Math.min(most, from.y + by * direction.y)),
        });
        setPointer(null);
      }
    } else if (event.key === 'Enter' || event.key === ' ') {
      // A key held down is one shot, not a dozen.
      if (event.repeat) return event.preventDefault();
      setChosen(null);
      void addShot(bench, group.id, cross ?? { x: 0, y: 0 });
    } else if (event.key === 'Backspace' || event.key === 'Delete') {
      void removeShot(bench, group.id, chosen);
      setChosen(null);
    } else if (event.key === 'PageDown' || event.key === 'PageUp') {
      step(event.key === 'PageDown' ? 1 : -1);
    } else if (event.key === 'Escape') {
      setChosen(null);
      setCross(null);
    } else if (event.key.toLowerCase() === 'n') {
      if (!event.repeat) beginEnd(group);
    } else if (event.key.toLowerCase() === 'l') {
      const shot = inHand();
      if (shot !== null) setEntry(group.id, { leaving: shot });
    } else if (/^\d$/.test(event.key)) {
      const shot = inHand();
      const number = numberIn(event, shot);
      if (shot !== null) void numberShot(bench, group.id, shot, number);
    } else return;
    event.preventDefault();
  };

  return {
    pointer,
    cross,
    chosen,
    pulled,
    /** The shot that a click here would take in hand, and the one that a click just did. */
    over: pointer === null ? null : press.takenAt(pointer),
    taken: press.taken,
    handlers: { ...press.handlers, onPointerLeave: () => setPointer(null), onKeyDown },
  };
}
