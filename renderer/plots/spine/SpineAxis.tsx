import { useMemo } from 'react';
import { spineMarks, type SpineView } from './marks.ts';
import './spine.css';

interface Props {
  views: readonly SpineView[];
  measured: number;
  /** "this shaft, 0.720 in" */
  measuredText: string;
  width: number;
  perUnit: number;
  unit: string;
}

/** From too stiff to too weak: each view a band on the same line, the shaft a mark through them. */
export function SpineAxis({ views, measured, measuredText, width, perUnit, unit }: Props) {
  const marks = useMemo(() => spineMarks(views, measured, width, perUnit, unit), [views, measured, width, perUnit, unit]);
  const said = `${measuredText}. ${views.map((view) => `${view.name}: ${view.says}.`).join(' ')}`;
  return (
    <svg className="spine-axis" width={width} height={marks.height} role="img" aria-label={said}>
      {marks.ticks.map((tick) => (
        <path key={tick.text} className="grid" d={`M${tick.at} 30V${marks.axisY}`} />
      ))}
      {marks.rows.map(({ view, y, from, to, middle }) => (
        <g key={view.name}>
          <text x="0" y={y + 4}>
            {view.name}
          </text>
          {view.needed !== null && (
            <>
              <rect className="spine-band" x={from} y={y - 5} width={Math.max(1, to - from)} height="10" />
              <path className="spine-range" d={`M${from} ${y}H${to}M${from} ${y - 6}v12M${to} ${y - 6}v12`} />
              <circle className="spine-middle" cx={middle} cy={y} r="4" />
            </>
          )}
          <text className={`spine-says ${view.level}`} x={width} y={y + 4} textAnchor="end">
            {view.says}
          </text>
        </g>
      ))}
      <path className="axis" d={`M${marks.left} ${marks.axisY}H${marks.right}`} />
      {marks.ticks.map((tick) => (
        <g key={tick.text}>
          <path className="axis" d={`M${tick.at} ${marks.axisY}v4`} />
          <text className="tick" x={tick.at} y={marks.axisY + 17} textAnchor="middle">
            {tick.text}
          </text>
        </g>
      ))}
      <text className="name" x={marks.left} y={marks.axisY + 36}>
        stiffer
      </text>
      <text className="name" x={marks.right} y={marks.axisY + 36} textAnchor="end">
        weaker
      </text>
      <path className="spine-shaft" d={`M${marks.measured.at} 22V${marks.axisY}`} />
      <path className="spine-shaft-head" d={`M${marks.measured.at} 30l-5 -9h10z`} />
      <text
        className="spine-shaft-name"
        x={marks.measured.at + (marks.measured.anchor === 'end' ? -9 : 9)}
        y="20"
        textAnchor={marks.measured.anchor}
      >
        {measuredText}
      </text>
    </svg>
  );
}
