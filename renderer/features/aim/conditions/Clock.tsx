import type { PointerEvent } from 'react';

interface Props {
  /** Where the wind comes from, the target at 12 [hours]. */
  hour: number;
  /** Still air has no arrow. */
  blows: boolean;
  onHour(hour: number): void;
}

const SIDE = 76;
const MIDDLE = SIDE / 2;
const [RIM, FROM, TO] = [33, 29, 11];

const at = (hour: number, radius: number) => {
  const turn = (hour * Math.PI) / 6;
  return `${(MIDDLE + radius * Math.sin(turn)).toFixed(1)} ${(MIDDLE - radius * Math.cos(turn)).toFixed(1)}`;
};

/** The shooting line from above: the archer in the middle, the target at 12, the wind from where it blows. The list beside it says the same. */
export function Clock({ hour, blows, onHour }: Props) {
  const turnTo = (event: PointerEvent<SVGSVGElement>) => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    const turn = Math.atan2(event.clientX - left - MIDDLE, MIDDLE - (event.clientY - top));
    onHour((Math.round((turn * 6) / Math.PI) + 12) % 12);
  };
  return (
    <svg
      className="cond-clock"
      width={SIDE}
      height={SIDE}
      aria-hidden="true"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        turnTo(event);
      }}
      onPointerMove={(event) => event.buttons === 1 && turnTo(event)}
    >
      <circle className="axis" cx={MIDDLE} cy={MIDDLE} r={RIM} />
      {Array.from({ length: 12 }, (_, one) => (
        <path key={one} className="axis" d={`M${at(one, RIM)}L${at(one, one % 3 === 0 ? RIM - 5 : RIM - 3)}`} />
      ))}
      <path className="cond-butt" d={`M${MIDDLE - 9} ${MIDDLE - RIM - 3}h18v5h-18z`} />
      <circle className="cond-archer" cx={MIDDLE} cy={MIDDLE} r="3" />
      {blows && (
        <g className="cond-wind">
          <path d={`M${at(hour, FROM)}L${at(hour, TO)}`} />
          <path className="head" d="M0 0L-4.5 9L4.5 9Z" transform={`translate(${at(hour, TO - 5)}) rotate(${hour * 30})`} />
        </g>
      )}
    </svg>
  );
}
