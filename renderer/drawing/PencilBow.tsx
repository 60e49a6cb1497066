import type { Hand } from '../../core/model/archer.ts';
import { curveThrough, pencilBow } from './pencilBow.ts';
import './drawing.css';

/** A recurve in pencil, braced, seen from the arrow's side, with the three figures that begin the bench keyed to it. */
export function PencilBow({ hand }: { hand: Hand }) {
  const bow = pencilBow;
  // The arrow's side faces the viewer: a right-hander's arrow points left. The drawing turns; its numbers do not.
  const turn = hand === 'right' ? -1 : 1;
  const x = (inches: number) => turn * inches * 8;
  const y = (inches: number) => -inches * 8;
  const line = (points: readonly (readonly [number, number])[]) => curveThrough(points.map(([a, b]) => [x(a), y(b)] as const));
  const key = (at: readonly [number, number], number: string) => (
    <g transform={`translate(${x(at[0])} ${y(at[1])})`}>
      <circle className="key-ring" r="9.5" />
      <text className="key-number" y="4.5" textAnchor="middle">
        {number}
      </text>
    </g>
  );
  return (
    <svg
      className="pencil-bow"
      viewBox={hand === 'right' ? '-250 -275 290 550' : '-40 -275 290 550'}
      role="img"
      aria-label={`A ${hand}-handed recurve bow in pencil: 1 the brace height, 2 the string where the weight is read, 3 the arrow.`}
    >
      {bow.limbs.map((limb) => (
        <g key={limb.name}>
          <path d={line(limb.belly)} />
          <path d={line(limb.back)} />
        </g>
      ))}
      <path d={`${line(bow.riser)}Z`} />
      <path d={`${line(bow.grip)}Z`} />
      <path className="string" d={`M${x(0.9)} ${y(bow.tip)}L0 ${y(22)}V${y(-22)}L${x(0.9)} ${y(-bow.tip)}`} />
      <path className="serving" d={`M0 ${y(4)}V${y(-4.6)}`} />
      <path className="chain" d={`M${x(-3)} ${y(0)}H${x(12)}`} />
      <path d={`M0 ${y(0.25)}H${x(28)}l${turn * 8} ${-0.6}`} />
      <path d={`M${x(1)} ${y(0.25)}q${turn * 6} -6 ${turn * 15} -1M${x(1)} ${y(0.25)}q${turn * 6} 6 ${turn * 15} 1`} />
      <path className="dimension" d={`M${x(0.1)} ${y(-1.7)}H${x(bow.brace)}`} />
      {key([bow.brace / 2, -1.7], '1')}
      {key([-2.4, 9], '2')}
      {key([20, 1.9], '3')}
    </svg>
  );
}
