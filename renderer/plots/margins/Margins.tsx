import { useMemo } from 'react';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import type { DrawnGroup } from '../face/marks.ts';
import type { FaceView } from '../face/geometry.ts';
import { axisMarks } from './marks.ts';
import './margins.css';

const mark = (second: boolean, x: number, y: number) =>
  second ? (
    <path className="margin-diamond" d={`M${x} ${y - 6}l6 6l-6 6l-6 -6z`} />
  ) : (
    <circle className="margin-disc" cx={x} cy={y} r="5" />
  );

const clamp = (value: number, most: number) => Math.max(-2, Math.min(most + 2, value));

/** Both axes in the margins of the face: sideways below it, height to its right. Drawn at the face's own scale. */
export function Margins({ view, groups, units }: { view: FaceView; groups: readonly DrawnGroup[]; units: UnitChoice }) {
  const unit = useMemo(() => ({ perMetre: 1 / factorOf('setting', units), name: unitOf('setting', units) }), [units]);
  const across = useMemo(() => axisMarks(view, groups, 'x', unit), [view, groups, unit]);
  const up = useMemo(() => axisMarks(view, groups, 'y', unit), [view, groups, unit]);
  const { size } = view;
  const axisY = size + 18 + across.rows.length * 20;
  return (
    <g className="margins">
      {across.rows.map((row, i) => {
        const y = size + 18 + i * 20;
        return (
          <g key={i}>
            <path className="grid" d={`M0 ${y}H${size}`} />
            <path className="margin-tick" d={row.ticks.map((x) => (x < 0 || x > size ? '' : `M${x} ${y - 4}v8`)).join('')} />
            {row.centre !== null && (
              <>
                <path className="margin-interval" d={`M${clamp(row.from, size)} ${y}H${clamp(row.to, size)}`} />
                <path className="margin-end" d={`M${clamp(row.from, size)} ${y - 5}v10M${clamp(row.to, size)} ${y - 5}v10`} />
                {mark(i === 1, clamp(row.centre, size), y)}
              </>
            )}
            <text className="name halo" x="4" y={y + 4}>
              {row.name}
            </text>
          </g>
        );
      })}
      <path className="axis" d={`M0 ${axisY}H${size}`} />
      {across.ticks.map(({ at, label }) => (
        <g key={at}>
          <path className="axis" d={`M${at} ${axisY}v4`} />
          {label !== null && (
            <text className="tick" x={label.x} y={axisY + 16} textAnchor="middle">
              {label.text}
            </text>
          )}
        </g>
      ))}
      {up.rows.map((row, i) => {
        const x = size + 14 + i * 20;
        return (
          <g key={i}>
            <path className="grid" d={`M${x} 0V${size}`} />
            <path className="margin-tick" d={row.ticks.map((y) => (y < 0 || y > size ? '' : `M${x - 4} ${y}h8`)).join('')} />
            {row.centre !== null && (
              <>
                <path className="margin-interval" d={`M${x} ${clamp(row.from, size)}V${clamp(row.to, size)}`} />
                <path className="margin-end" d={`M${x - 5} ${clamp(row.from, size)}h10M${x - 5} ${clamp(row.to, size)}h10`} />
                {mark(i === 1, x, clamp(row.centre, size))}
              </>
            )}
          </g>
        );
      })}
    </g>
  );
}
