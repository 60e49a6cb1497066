import { useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';
import type { Point } from '../../../core/group/index.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import { toFace, toPixel, type FaceView } from '../../plots/face/geometry.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { addShot, moveShot, newestIn, numberShot, takeBack } from './edits.ts';
import { beginEnd } from './entry/beginEnd.ts';
import { setEntry, useEntry } from './entry/store.ts';

/** The cross moves by this, and with Shift by the fine step; a chosen shot is nudged by the fine step, with Shift by the coarse one [m]. */
const coarse = 0.005;
const fine = 0.001;
/** A press this near a shot may take hold of it, and a pull this long is a pull [px]. */
const grasp = 6;
/** A press this long is no click [ms]. */
const restTime = 400;
/** Digits this close together make one number [ms]. */
const together = 1200;

const directions: Record<string, Point> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** Everything pointer and keys do on the face. One click or one Enter is one shot. */
export function useFaceEntry(view: FaceView, group: ShotGroup) {
  const bench = useBenchApi();
  const { shotInHand } = useEntry(group.id);
  const [pointer, setPointer] = useState<Point | null>(null);
  const [cross, setCross] = useState<Point | null>(null);
  /** A shot that is being pulled, and where it is: only this one is drawn anew until it is let go. */
  const [pulled, setPulled] = useState<{ readonly shot: number; readonly at: Point } | null>(null);
  const chosen = shotInHand !== null && group.shots.some(({ id }) => id === shotInHand) ? shotInHand : null;
  const setChosen = (shot: number | null) => setEntry(group.id, { shotInHand: shot });
  const press = useRef<{ shot: number | null; at: Point; since: number } | null>(null);
  const typed = useRef<{ shot: number | null; digits: string; at: number }>({ shot: null, digits: '', at: 0 });

  // The sheet's corner, not the group's: what is clipped away (rings beyond the window) still counts into a group's box.
  const place = (event: PointerEvent<SVGGElement>): Point => {
    const corner = (event.currentTarget.ownerSVGElement ?? event.currentTarget).getBoundingClientRect();
    return toFace(view, { x: event.clientX - corner.left, y: event.clientY - corner.top });
  };
  const shotNear = (at: Point): number | null => {
    const here = toPixel(view, at);
    const near = group.shots.findLast((shot) => {
      const there = toPixel(view, shot);
      return Math.hypot(there.x - here.x, there.y - here.y) <= grasp;
    });
    return near?.id ?? null;
  };

  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return;
    press.current = { shot: shotNear(place(event)), at: { x: event.clientX, y: event.clientY }, since: event.timeStamp };
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  const onPointerMove = (event: PointerEvent<SVGGElement>) => {
    const at = place(event);
    setPointer(at);
    setCross(null);
    const began = press.current;
    if (began === null || began.shot === null) return;
    if (pulled !== null || isPull(began.at, event)) setPulled({ shot: began.shot, at });
  };
  // A quick press sets a shot even where one stands already: arrows touch. Pulling moves the shot under it, resting on it takes it in hand.
  const onPointerUp = (event: PointerEvent<SVGGElement>) => {
    const began = press.current;
    press.current = null;
    if (event.button !== 0 || began === null) return;
    const at = place(event);
    const moved = isPull(began.at, event);
    const rested = event.timeStamp - began.since > restTime;
    if (began.shot !== null && (moved || rested)) {
      setChosen(began.shot);
      // It stays where it was let go until the notebook has it there.
      if (moved) void moveShot(bench, group.id, began.shot, () => at).finally(() => setPulled(null));
      else setPulled(null);
      return;
    }
    void addShot(bench, group.id, at).then((done) => {
      if (done) setChosen(newestIn(bench, group.id));
    });
  };

  const inHand = (): number | null => chosen ?? group.shots.at(-1)?.id ?? null;

  const step = (to: 1 | -1) => {
    const ids = group.shots.map((shot) => shot.id);
    if (ids.length === 0) return;
    const at = chosen === null ? (to === 1 ? -1 : ids.length) : ids.indexOf(chosen);
    setChosen(ids[(at + to + ids.length) % ids.length] ?? null);
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
      void takeBack(bench, group.id, chosen);
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
      const goesOn = shot === typed.current.shot && event.timeStamp - typed.current.at < together;
      const digits = `${goesOn ? typed.current.digits : ''}${event.key}`.slice(-3);
      typed.current = { shot, digits, at: event.timeStamp };
      if (shot !== null && Number(digits) > 0) void numberShot(bench, group.id, shot, Number(digits));
    } else return;
    event.preventDefault();
  };

  return {
    pointer,
    cross,
    chosen,
    pulled,
    handlers: {
      onPointerDown,
      onPointerMove,
      onPointerUp,
      onPointerCancel: () => {
        press.current = null;
        setPulled(null);
      },
      onPointerLeave: () => setPointer(null),
      onKeyDown,
    },
  };
}

const isPull = (from: Point, { clientX, clientY }: PointerEvent): boolean =>
  Math.hypot(clientX - from.x, clientY - from.y) > grasp;
