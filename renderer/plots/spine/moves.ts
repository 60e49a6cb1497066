import { label, type Label } from '../labels.ts';
import { textWidth } from '../textWidth.ts';
import type { SpineScale } from './axis.ts';

/** One change on its own row below the axis: from where the shaft stands to where it would act. */
interface MoveMarks {
  readonly from: number;
  readonly to: number;
  /** Arrowhead, drawn when there is room for one. */
  readonly head: string | null;
  readonly name: Label;
  readonly acts: Label;
  readonly ends: Label;
}

/** The row's height and the line in it, px. */
export const moveRow = { height: 24, y: 13 } as const;

/** The arrow of a change, its name, what it would act like, and how far that gets it; no two of them touch. */
export function moveMarks(
  name: string,
  from: number,
  actsLike: number,
  acts: string,
  ends: string,
  scale: SpineScale,
): MoveMarks {
  const { y } = moveRow;
  const start = scale.at(from);
  const end = scale.at(actsLike);
  const direction = end < start ? -1 : 1;
  const width = textWidth(acts, 12, 'text');
  const beside = (x: number, side: 1 | -1) => label(acts, x + side * 9, y + 4, side < 0 ? 'end' : 'start', 'text', 12);
  const roomBeside = (x: number, side: 1 | -1) => (side < 0 ? x - 9 - width >= scale.left : x + 9 + width <= scale.right);
  // Before the tip; without room there behind the tail; without any it breaks the arrow, which is a long one then.
  const text = roomBeside(end, direction)
    ? beside(end, direction)
    : roomBeside(start, direction === 1 ? -1 : 1)
      ? beside(start, direction === 1 ? -1 : 1)
      : label(acts, (start + end) / 2, y + 4, 'middle', 'text', 12);
  return {
    from: start,
    to: end,
    head: Math.abs(end - start) >= 9 ? `M${end} ${y}l${-direction * 7.5} -1.9v3.8z` : null,
    name: label(name, 0, y + 4, 'start', 'text', 13),
    acts: text,
    ends: label(ends, scale.width, y + 4, 'end', 'text', 12),
  };
}
