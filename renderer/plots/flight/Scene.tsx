import { useId, type ReactNode } from 'react';
import { Lettered } from '../Lettered.tsx';
import type { FlightMarks } from './marks.ts';

/** The drawn flight, for the eye only: axis, ground, line of sight, band, curve, and the names. What is read stands under the names. */
export function Scene({ marks, children }: { marks: FlightMarks; children: ReactNode }) {
  const clip = useId();
  const { window, dimension, pointOn } = marks;
  const across = (y: number) => `M${marks.x(0)} ${y}H${marks.right}`;
  return (
    <>
      <clipPath id={clip}>
        <rect x={window.left} y={window.top} width={window.right - window.left} height={window.bottom - window.top} />
      </clipPath>
      <path className="axis" d={across(marks.axisY)} />
      {marks.ticks.map(({ x, label }) => (
        <g key={label.text}>
          <path className="axis" d={`M${x} ${marks.axisY}v4`} />
          <Lettered label={label} />
        </g>
      ))}
      {marks.groundY !== null && marks.groundY !== marks.axisY && <path className="axis" d={across(marks.groundY)} />}
      <path className="centre-line" d={across(marks.lineY)} />
      <g clipPath={`url(#${clip})`}>
        <path className="flight-band" d={marks.band} />
        <path className="flight-edge" d={marks.edges[0]} />
        <path className="flight-edge" d={marks.edges[1]} />
        <path className="curve" d={marks.curve} />
      </g>
      {children}
      <Eye x={marks.x(0)} y={marks.lineY} />
      {dimension !== null && <Rise {...dimension} />}
      {marks.leaders.map((leader) => (
        <path key={leader.x1} className="dim-line" d={`M${leader.x1} ${leader.y1}L${leader.x2} ${leader.y2}`} />
      ))}
      {marks.labels.map((one) => (
        <Lettered key={one.text} label={one} halo />
      ))}
      {pointOn !== null && (
        <>
          <path
            className="flight-interval"
            d={`M${pointOn.low} ${pointOn.y}H${pointOn.high}M${pointOn.low} ${pointOn.y - 4}v8M${pointOn.high} ${pointOn.y - 4}v8`}
          />
          <circle className="flight-dot" cx={pointOn.value} cy={pointOn.y} r="3.6" />
        </>
      )}
    </>
  );
}

/** The face edge-on, and its distance on a blue rule: what can be taken hold of. */
export function Target({ x, y, words }: FlightMarks['target']) {
  return (
    <>
      <rect className="hit" x={x - 14} y={y - 22} width="28" height="44" />
      <rect className="focus-ring" x={x - 8} y={y - 15} width="16" height="30" rx="2" />
      <path className="mark-line" d={`M${x} ${y - 10}v20`} />
      {words !== null && (
        <>
          <rect
            className="hit"
            x={words.name.box.left - 4}
            y={words.figure.box.top - 4}
            width={words.figure.box.right - words.name.box.left + 8}
            height="28"
          />
          <Lettered label={words.name} halo />
          <Lettered label={words.figure} halo />
          <path
            className="act-rule"
            data-export="no"
            d={`M${words.figure.box.left} ${words.figure.y + 5}H${words.figure.box.right}`}
          />
        </>
      )}
    </>
  );
}

function Eye({ x, y }: { x: number; y: number }) {
  return (
    <>
      <path className="inner" d={`M${x - 12} ${y - 5.5}q9 1.5 11 5.5q-2 4 -11 5.5`} />
      <circle className="flight-pupil" cx={x - 5} cy={y} r="2" />
    </>
  );
}

/** The dimension from the line of sight to the top of the flight; too low for its arrowheads, they stand outside. */
function Rise({ x, from, to }: { x: number; from: number; to: number }) {
  const inside = from - to >= 22;
  const head = (y: number, down: boolean) => `M${x} ${y}l-1.9 ${down ? -7.5 : 7.5}h3.8z`;
  return (
    <>
      <path className="dim-line" d={inside ? `M${x} ${from}V${to}` : `M${x} ${from + 14}V${to - 14}`} />
      <path className="flight-head" d={`${head(from, inside)}${head(to, !inside)}`} />
    </>
  );
}
