import { useRef, type PointerEvent } from 'react';
import type { Point } from '../../../../core/group/index.ts';

export interface Marked extends Point {
  readonly id: number;
}

interface Options {
  /** In the plane's own unit; the last one lies on top. */
  readonly marks: readonly Marked[];
  toPlane(pixel: Point): Point;
  toPixel(point: Point): Point;
  onPoint(at: Point): void;
  /** A quick press, also where a mark stands already: arrows touch. */
  onSet(at: Point): void;
  /** A mark goes along with the pointer. */
  onPull(id: number, at: Point): void;
  /** It is let go where it was pulled to; null where it was only rested on, which takes it in hand. */
  onLetGo(id: number, at: Point | null): void;
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

/** What a pointer does to marks on a plane, be it a face or a photo: a click sets one, pulling moves it, resting takes it in hand. */
export function usePress({ marks, toPlane, toPixel, onPoint, onSet, onPull, onLetGo, onGiveUp }: Options) {
  const press = useRef<Press | null>(null);

  // The sheet's corner, not a group's: what is clipped away (rings beyond the window) still counts into a group's box.
  const place = (event: PointerEvent<SVGElement>): Point => {
    const corner = (event.currentTarget.ownerSVGElement ?? event.currentTarget).getBoundingClientRect();
    return toPlane({ x: event.clientX - corner.left, y: event.clientY - corner.top });
  };
  const markNear = (at: Point): number | null => {
    const here = toPixel(at);
    const near = marks.findLast((mark) => {
      const there = toPixel(mark);
      return Math.hypot(there.x - here.x, there.y - here.y) <= GRASP;
    });
    return near?.id ?? null;
  };

  return {
    onPointerDown: (event: PointerEvent<SVGElement>) => {
      if (event.button !== 0) return;
      const at = { x: event.clientX, y: event.clientY };
      press.current = { mark: markNear(place(event)), at, since: event.timeStamp, pulling: false };
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
      const pulled = began.pulling || isPull(began.at, event);
      if (began.mark !== null && pulled) onLetGo(began.mark, place(event));
      else if (began.mark !== null && event.timeStamp - began.since > REST) onLetGo(began.mark, null);
      else onSet(place(event));
    },
    onPointerCancel: () => {
      press.current = null;
      onGiveUp?.();
    },
  };
}

const isPull = (from: Point, { clientX, clientY }: PointerEvent): boolean =>
  Math.hypot(clientX - from.x, clientY - from.y) > GRASP;
