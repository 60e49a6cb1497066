import type { KeyboardEvent, PointerEvent } from 'react';
import { stepped } from '../flight/stepped.ts';
import type { ArcherViewMarks } from './marks.ts';

export interface Move {
  readonly nearest: number;
  readonly farthest: number;
  readonly onDistance: (distance: number) => void;
}

interface Props {
  marks: ArcherViewMarks;
  move: Move;
  distance: number;
  /** One of the shown unit [m]. */
  step: number;
  /** The hold there, for those who hear it. */
  says: string;
  held: boolean;
  onHold(event: PointerEvent<SVGGElement>): void;
}

/** The target as a slider along the ground: arrows one metre or yard, by hand as far as it is pulled. */
export function Handle({ marks, move, distance, step, says, held, onHold }: Props) {
  const { butt, foot, mirrored, width, labels } = marks;
  const onKeyDown = (event: KeyboardEvent) => {
    const next = stepped(event.key, event.shiftKey, distance, step, move.nearest, move.farthest);
    if (next === null) return;
    event.preventDefault();
    move.onDistance(next);
  };
  const target = { x: mirrored ? width - butt.x - butt.side : butt.x, y: butt.y, width: butt.side, height: foot - butt.y };
  const named = labels[0];
  return (
    <g
      className={held ? 'archer-target held' : 'archer-target'}
      role="slider"
      tabIndex={0}
      aria-label="The target stands at"
      aria-orientation="vertical"
      aria-valuemin={Math.ceil(move.nearest / step)}
      aria-valuemax={Math.floor(move.farthest / step)}
      aria-valuenow={Math.round(distance / step)}
      aria-valuetext={says}
      onKeyDown={onKeyDown}
      onPointerDown={onHold}
    >
      <rect className="hit" {...target} />
      <rect
        className="focus-ring"
        data-export="no"
        x={target.x - 4}
        y={target.y - 4}
        width={target.width + 8}
        height={target.height + 8}
        rx="2"
      />
      {named !== undefined && (
        <>
          <rect
            className="hit"
            x={named.box.left - 4}
            y={named.box.top - 6}
            width={named.box.right - named.box.left + 8}
            height="28"
          />
          <path className="act-rule" data-export="no" d={`M${named.box.left} ${named.y + 5}H${named.box.right}`} />
        </>
      )}
    </g>
  );
}
