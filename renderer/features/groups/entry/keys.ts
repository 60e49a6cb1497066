import { useRef, type KeyboardEvent } from 'react';
import type { Point } from '../../../../core/group/index.ts';

/** Where the arrow keys go, y upward. */
export const directions: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** The mark after the one in hand, or before it, round and round; without one in hand the first or the last. */
export function neighbour(marks: readonly { readonly id: number }[], inHand: number | null, to: 1 | -1): number | null {
  const at = marks.findIndex(({ id }) => id === inHand);
  const from = at < 0 ? (to === 1 ? -1 : marks.length) : at;
  return marks[(from + to + marks.length) % Math.max(1, marks.length)]?.id ?? null;
}

/** Digits this close together make one number [ms]. */
const TOGETHER = 1200;

/** Reads the number that digits make for a mark, key by key; a 0 alone says that it has none. */
export function useDigits(): (event: KeyboardEvent, mark: number | null) => number | null {
  const typed = useRef<{ mark: number | null; digits: string; at: number }>({ mark: null, digits: '', at: 0 });
  return ({ key, timeStamp }, mark) => {
    const goesOn = mark === typed.current.mark && timeStamp - typed.current.at < TOGETHER;
    const digits = `${goesOn ? typed.current.digits : ''}${key}`.slice(-3);
    typed.current = { mark, digits, at: timeStamp };
    return Number(digits) > 0 ? Number(digits) : null;
  };
}
