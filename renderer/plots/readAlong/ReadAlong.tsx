import type { ScaleLinear } from 'd3';
import { useState, type KeyboardEvent, type PointerEvent, type ReactNode } from 'react';
import type { Box } from '../boxes.ts';
import { stepped } from '../flight/stepped.ts';
import { readoutLine, type Said } from './words.ts';
import './readAlong.css';

interface Props {
  width: number;
  height: number;
  /** The whole picture in a sentence, for those who hear it. */
  sentence: string;
  /** What the keys do: "Read the force at a draw". */
  name: string;
  /** Where it is read, and the axis that it is read along: SI to px. */
  window: Box;
  x: ScaleLinear<number, number>;
  from: number;
  to: number;
  /** One press of an arrow key [SI]. */
  step: number;
  /** Where the keys begin. */
  rest: number;
  says(at: number): Said;
  /** The mark of the reading on the plot. */
  mark?(at: number): ReactNode;
  children: ReactNode;
}

/** A plot that is read along its axis: a line of figures follows the pointer and the arrow keys. It is drawn with the plot, not exported. */
export function ReadAlong({ width, height, sentence, name, window, x, from, to, step, rest, says, mark, children }: Props) {
  const [readAt, setReadAt] = useState<number | null>(null);
  const limit = (at: number) => Math.max(from, Math.min(to, at));
  const at = limit(readAt ?? rest);
  const said = says(at);
  const line = readoutLine(said, x(at), width);

  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const { left } = event.currentTarget.getBoundingClientRect();
    const place = Math.round(x.invert(event.clientX - left) / step) * step;
    setReadAt(place < from - step || place > to + step ? null : limit(place));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Escape') setReadAt(null);
    const next = stepped(event.key, event.shiftKey, at, step, from, to);
    if (next === null) return;
    event.preventDefault();
    setReadAt(next);
  };
  return (
    <svg
      className="read-along"
      width={width}
      height={height}
      role="group"
      aria-label={sentence}
      onPointerMove={onPointerMove}
      onPointerLeave={() => setReadAt(null)}
    >
      <g aria-hidden="true">{children}</g>
      {readAt !== null && (
        <g aria-hidden="true" data-export="no">
          <path className="construction" d={`M${x(at)} ${window.top}V${window.bottom + 4}`} />
          {mark?.(at)}
          <text className="readout" x={line.x} y="14">
            <tspan className="where">{line.where}</tspan>
            <tspan dx="8">{line.figures}</tspan>
          </text>
        </g>
      )}
      <g
        className="read-slider"
        role="slider"
        tabIndex={0}
        data-export="no"
        aria-label={name}
        aria-orientation="horizontal"
        aria-valuemin={Math.round(from / step)}
        aria-valuemax={Math.round(to / step)}
        aria-valuenow={Math.round(at / step)}
        aria-valuetext={[said.where, ...said.figures].join(', ')}
        onKeyDown={onKeyDown}
        onFocus={() => setReadAt((now) => now ?? rest)}
        onBlur={() => setReadAt(null)}
      >
        <rect
          className="hit"
          x={window.left}
          y={window.top}
          width={window.right - window.left}
          height={window.bottom - window.top}
        />
        <rect className="focus-ring" x="-3" y="19" width={width + 6} height={height - 16} rx="2" />
      </g>
    </svg>
  );
}
