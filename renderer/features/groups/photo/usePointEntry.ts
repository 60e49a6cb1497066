import { useState, type KeyboardEvent } from 'react';
import type { Point } from '../../../../core/group/index.ts';
import { directions, neighbour, useDigits } from '../entry/keys.ts';
import { usePress, type Marked } from '../entry/usePress.ts';

interface Options {
  /** In the plane's own unit. */
  readonly marks: readonly Marked[];
  /** How large they are drawn [px]. */
  readonly radius: number;
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
  onNumber?(id: number, number: number | null): void;
  onCross?(at: Point): void;
  onZoom?(factor: number, about: Point): void;
}

/** Points set on a picture by pointer and keys, as shots are on the face: one click or one Enter is one point; a click on it takes it in hand, pulling moves it. */
export function usePointEntry(options: Options) {
  const { marks, radius, toPlane, toPixel, coarse, fine, up, start, held, onAdd, onMove, onTake, onNumber, onCross, onZoom } =
    options;
  const [pointer, setPointer] = useState<Point | null>(null);
  const [cross, setCross] = useState<Point | null>(null);
  const [inHand, setInHand] = useState<number | null>(null);
  const numberIn = useDigits();
  const chosen = marks.find(({ id }) => id === inHand) ?? null;

  const press = usePress({
    marks,
    radius,
    inHand: chosen?.id ?? null,
    toPlane,
    toPixel,
    onPoint: (at) => {
      setPointer(at);
      setCross(null);
    },
    onSet: (at) => setInHand(onAdd(held(at))),
    onPull: (id, at) => {
      setInHand(id);
      onMove(id, held(at));
    },
    onLetGo: (id) => setInHand(id),
  });

  const step = (to: 1 | -1) => {
    setInHand(neighbour(marks, inHand, to));
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
      const number = numberIn(event, mark);
      if (mark !== null) onNumber(mark, number);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return {
    /** Where the loupe looks. */
    at: pointer ?? chosen ?? cross,
    cross,
    chosen: chosen?.id ?? null,
    handlers: { ...press.handlers, onPointerLeave: () => setPointer(null), onKeyDown },
  };
}
