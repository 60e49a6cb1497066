import type { KeyboardEvent, PointerEvent } from 'react';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Tear } from '../../../core/model/trial.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { onPad, type PadView } from './pad.ts';
import { TearShape } from './TearShape.tsx';
import './tears.css';

interface Props {
  view: PadView;
  shaftRadius: number;
  tears: readonly Tear[];
  /** Which of them is in hand; null for one that is still to be made. */
  inHand: number | null;
  cross: Pick<Tear, 'across' | 'up'> | null;
  units: UnitChoice;
  label: string;
  said: string;
  onKeyDown(event: KeyboardEvent): void;
  onPointerUp(event: PointerEvent<SVGSVGElement>): void;
}

/** A sheet of paper with the tears of one distance on one hole, and its scale in the corner. */
export function Pad({ view, shaftRadius, tears, inHand, cross, units, label, said, onKeyDown, onPointerUp }: Props) {
  const { size, half } = view;
  const middle = size / 2;
  const radius = (shaftRadius / half) * middle;
  const at = cross === null ? null : onPad(view, cross);
  const ring = 0.05;
  return (
    <figure className="paper-pad">
      <svg
        width={size}
        height={size}
        role="application"
        aria-label={label}
        tabIndex={0}
        data-half={half}
        className="pad"
        onKeyDown={onKeyDown}
        onPointerUp={onPointerUp}
      >
        <rect className="paper" width={size} height={size} />
        <path className="centre-line" d={`M0 ${middle}H${size}M${middle} 0V${size}`} />
        <circle className="construction" cx={middle} cy={middle} r={(ring / half) * middle} />
        <text className="tick" x={middle + 4} y={middle - (ring / half) * middle - 3}>
          {textQuantity(ring, 'setting', units, { digits: units.setting === 'in' ? 1 : 0 })}
        </text>
        {tears.map((tear, i) => (
          <g key={i} className={inHand === i ? 'tear-in-hand' : undefined}>
            <TearShape
              from={{ x: middle, y: middle }}
              to={onPad(view, tear)}
              radius={radius}
              bare={tear.fletching === 'bare'}
              name={`tear ${i + 1}`}
            />
          </g>
        ))}
        {tears.length === 0 && <circle className="hole" cx={middle} cy={middle} r={Math.max(2.5, Math.min(6, radius))} />}
        {at !== null && <path className="pad-cross" d={`M${at.x - 12} ${at.y}h24M${at.x} ${at.y - 12}v24`} />}
        <rect className="frame-line" x="0.5" y="0.5" width={size - 1} height={size - 1} />
      </svg>
      <p className="heard" role="status">
        {said}
      </p>
    </figure>
  );
}
