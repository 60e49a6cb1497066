import { useRef, useState, type KeyboardEvent, type PointerEvent } from 'react';
import type { Point } from '../../../../core/group/index.ts';

interface Marked extends Point {
  readonly id: number;
}

interface Options {
  /** In the plane's own unit. */
  readonly marks: readonly Marked[];
  toPlane(pixel: Point): Point;
  toPixel(point: Point): Point;
  /** A step of the cross, and with Shift; a mark in hand is nudged by the fine one. */
  readonly coarse: number;
  readonly fine: number;
  /** 1 where y grows upward. */
  readonly up: 1 | -1;
  /** Where the cross starts, and how far it may go. */
  readonly start: Point;
  held(point: Point): Point;
  /** What comes back is the new mark's id, which the pointer has in hand then. */
  onAdd(at: Point): number | null;
  onMove(id: number, at: Point): void;
  /** Null for the last one. */
  onTake(id: number | null): void;
  onNumber?(id: number, number: number): void;
  onCross?(at: Point): void;
  onZoom?(factor: number, about: Point): void;
}

/** A press this near a mark may take hold of it, and a pull this long is a pull [px]. */
const GRASP = 6;
/** A press this long is no click [ms]. */
const REST = 400;
/** Digits this close together make one number [ms]. */
const TOGETHER = 1200;

const directions: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** Points set on a picture by pointer and keys, as shots are on the face: one click or one Enter is one point; pulling moves it, resting takes it in hand. */
export function usePointEntry(options: Options) {
  const { marks, toPlane, toPixel, coarse, fine, up, start, held, onAdd, onMove, onTake, onNumber, onCross, onZoom } = options;
  const [pointer, setPointer] = useState<Point | null>(null);
  const [cross, setCross] = useState<Point | null>(null);
  const [inHand, setInHand] = useState<number | null>(null);
  const press = useRef<{ mark: number | null; at: Point; since: number } | null>(null);
  const typed = useRef<{ mark: number | null; digits: string; at: number }>({ mark: null, digits: '', at: 0 });
  const chosen = marks.find(({ id }) => id === inHand) ?? null;

  const place = (event: PointerEvent<SVGElement>): Point => {
    const corner = event.currentTarget.getBoundingClientRect();
    return toPlane({ x: event.clientX - corner.left, y: event.clientY - corner.top });
  };
  const markNear = (at: Point): number | null => {
    const here = toPixel(at);
    const found = marks.findLast((mark) => {
      const there = toPixel(mark);
      return Math.hypot(there.x - here.x, there.y - here.y) <= GRASP;
    });
    return found?.id ?? null;
  };

  const onPointerDown = (event: PointerEvent<SVGElement>) => {
    if (event.button !== 0) return;
    press.current = { mark: markNear(place(event)), at: { x: event.clientX, y: event.clientY }, since: event.timeStamp };
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  const onPointerMove = (event: PointerEvent<SVGElement>) => {
    const at = place(event);
    setPointer(at);
    setCross(null);
    const began = press.current;
    if (began === null || began.mark === null || !isPull(began.at, event)) return;
    setInHand(began.mark);
    onMove(began.mark, held(at));
  };
  const onPointerUp = (event: PointerEvent<SVGElement>) => {
    const began = press.current;
    press.current = null;
    if (event.button !== 0 || began === null) return;
    if (began.mark !== null && (isPull(began.at, event) || event.timeStamp - began.since > REST)) return setInHand(began.mark);
    setInHand(onAdd(held(place(event))));
  };

  const step = (to: 1 | -1) => {
    const at = marks.findIndex(({ id }) => id === chosen?.id);
    const from = at < 0 ? (to === 1 ? -1 : marks.length) : at;
    setInHand(marks[(from + to + marks.length) % Math.max(1, marks.length)]?.id ?? null);
    setCross(null);
  };
  const onKeyDown = (event: KeyboardEvent<SVGElement>) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const direction = directions[event.key];
    const at = chosen ?? cross ?? start;
    if (direction !== undefined) {
      const by = (chosen === null) === event.shiftKey ? fine : coarse;
      const to = held({ x: at.x + by * direction.x, y: at.y + by * direction.y * up });
      if (chosen === null) setCross(to);
      else onMove(chosen.id, to);
      setPointer(null);
      onCross?.(to);
    } else if (event.key === 'Enter' || event.key === ' ') {
      if (!event.repeat) {
        setInHand(null);
        onAdd(cross ?? start);
      }
    } else if (event.key === 'Backspace' || event.key === 'Delete') {
      onTake(chosen?.id ?? null);
      setInHand(null);
    } else if (event.key === 'PageDown' || event.key === 'PageUp') step(event.key === 'PageDown' ? 1 : -1);
    else if (event.key === 'Escape' && (cross !== null || chosen !== null)) {
      setInHand(null);
      setCross(null);
    } else if (onZoom !== undefined && /^[+=-]$/.test(event.key)) onZoom(event.key === '-' ? 0.5 : 2, pointer ?? at);
    else if (onNumber !== undefined && /^\d$/.test(event.key)) {
      const mark = chosen?.id ?? marks.at(-1)?.id ?? null;
      const goesOn = mark === typed.current.mark && event.timeStamp - typed.current.at < TOGETHER;
      const digits = `${goesOn ? typed.current.digits : ''}${event.key}`.slice(-3);
      typed.current = { mark, digits, at: event.timeStamp };
      if (mark !== null && Number(digits) > 0) onNumber(mark, Number(digits));
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return {
    /** Where the loupe looks. */
    at: pointer ?? chosen ?? cross,
    cross,
    chosen: chosen?.id ?? null,
    handlers: {
      onPointerDown,
      onPointerMove,
      onPointerUp,
      onPointerCancel: () => {
        press.current = null;
      },
      onPointerLeave: () => setPointer(null),
      onKeyDown,
    },
  };
}

const isPull = (from: Point, { clientX, clientY }: PointerEvent): boolean =>
  Math.hypot(clientX - from.x, clientY - from.y) > GRASP;
