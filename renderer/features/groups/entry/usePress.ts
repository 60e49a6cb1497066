import { useRef, useState, type MouseEvent, type PointerEvent } from 'react';
import type { Point } from '../../../../core/group/index.ts';

export interface Marked extends Point {
  readonly id: number;
}

interface Options {
  /** In the plane's own unit; the last one lies on top. */
  readonly marks: readonly Marked[];
  /** Whose marks they are: those of another begin with the same ids. */
  readonly of?: string;
  /** How large a mark is drawn [px]; 0 where a click takes none in hand. */
  readonly radius: number;
  readonly inHand: number | null;
  toPlane(pixel: Point): Point;
  toPixel(point: Point): Point;
  onPoint(at: Point): void;
  /** A quick press beside the marks, or once more on the one that was taken in hand: arrows strike the same hole. */
  onSet(at: Point): void;
  /** A mark goes along with the pointer. */
  onPull(id: number, at: Point): void;
  /** It is let go where it was pulled to; null where it was only clicked or rested on, which takes it in hand. */
  onLetGo(id: number, at: Point | null): void;
  /** The other button, on a mark. */
  onAside?(id: number): void;
  /** The browser took the pointer away. */
  onGiveUp?(): void;
}

/** A press this near a mark may take hold of it, and a pull this long is a pull [px]. */
const GRASP = 6;
/** A press this long is no click [ms]. */
const REST = 400;

interface Press {
  readonly mark: number | null;
  readonly at: Point;
  readonly since: number;
  readonly pulling: boolean;
}

/**
 * What a pointer does to marks on a plane, be it a face or a photo: a click sets one, a click on one takes it in hand, pulling moves it. A
 * finger covers more than one mark: it sets with a tap and takes in hand by resting.
 */
export function usePress({
  marks,
  of = '',
  radius,
  inHand,
  toPlane,
  toPixel,
  onPoint,
  onSet,
  onPull,
  onLetGo,
  onAside,
  onGiveUp,
}: Options) {
  const press = useRef<Press | null>(null);
  /** The mark that the last click took in hand. */
  const [clicked, setClicked] = useState<{ readonly of: string; readonly mark: number } | null>(null);
  const taken = clicked?.of === of && clicked.mark === inHand ? inHand : null;

  // The sheet's corner, not a group's: what is clipped away (rings beyond the window) still counts into a group's box.
  const place = (event: MouseEvent<SVGElement>): Point => {
    const corner = (event.currentTarget.ownerSVGElement ?? event.currentTarget).getBoundingClientRect();
    return toPlane({ x: event.clientX - corner.left, y: event.clientY - corner.top });
  };
  const markNear = (at: Point, within: number): number | null => {
    const here = toPixel(at);
    let [nearest, least]: [number | null, number] = [null, within];
    for (const mark of marks) {
      const there = toPixel(mark);
      const distance = Math.hypot(there.x - here.x, there.y - here.y);
      if (distance <= least) [nearest, least] = [mark.id, distance];
    }
    return nearest;
  };
  /** The mark that a click there would take in hand; null where it would set one. */
  const takenAt = (at: Point): number | null => {
    const mark = radius === 0 ? null : markNear(at, radius);
    return mark === taken ? null : mark;
  };
  const letGo = (mark: number, at: Point | null) => {
    setClicked(at === null ? { of, mark } : null);
    onLetGo(mark, at);
  };

  const handlers = {
    onPointerDown: (event: PointerEvent<SVGElement>) => {
      if (event.button !== 0) return;
      const at = { x: event.clientX, y: event.clientY };
      press.current = { mark: markNear(place(event), Math.max(GRASP, radius)), at, since: event.timeStamp, pulling: false };
      event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerMove: (event: PointerEvent<SVGElement>) => {
      const at = place(event);
      onPoint(at);
      const began = press.current;
      if (began === null || began.mark === null) return;
      const pulling = began.pulling || isPull(began.at, event);
      press.current = { ...began, pulling };
      if (pulling) onPull(began.mark, at);
    },
    onPointerUp: (event: PointerEvent<SVGElement>) => {
      const began = press.current;
      press.current = null;
      if (event.button !== 0 || began === null) return;
      const at = place(event);
      const mark = event.pointerType === 'mouse' ? takenAt(at) : null;
      if (began.mark !== null && (began.pulling || isPull(began.at, event))) letGo(began.mark, at);
      else if (began.mark !== null && event.timeStamp - began.since > REST) letGo(began.mark, null);
      else if (mark !== null) letGo(mark, null);
      else {
        setClicked(null);
        onSet(at);
      }
    },
    onPointerCancel: () => {
      press.current = null;
      onGiveUp?.();
    },
    onContextMenu: (event: MouseEvent<SVGElement>) => {
      if (onAside === undefined) return;
      event.preventDefault();
      const mark = markNear(place(event), Math.max(GRASP, radius));
      if (mark !== null) onAside(mark);
    },
  };
  return { handlers, taken, takenAt };
}

const isPull = (from: Point, { clientX, clientY }: PointerEvent): boolean =>
  Math.hypot(clientX - from.x, clientY - from.y) > GRASP;
