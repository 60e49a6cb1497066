import { useId, useMemo } from 'react';
import type { ShiftPoint } from '../../../core/trials/index.ts';
import { Lettered } from '../Lettered.tsx';
import { shiftMarks } from './shifts.ts';
import './trialPlot.css';

interface Props {
  points: readonly ShiftPoint[];
  names: readonly [first: string, second: string];
  /** What stands above each panel: its distance. */
  titles: readonly string[];
  width: number;
  unit: { readonly factor: number; readonly symbol: string };
  sentence: string;
}

/** The second centre from the first at every distance, with the oval that holds it. */
export function Shifts({ points, names, titles, width, unit, sentence }: Props) {
  const clip = useId();
  const marks = useMemo(() => shiftMarks(points, names, titles, width, unit), [points, names, titles, width, unit]);
  return (
    <svg className="trial-plot" width={width} height={marks.height} role="img" aria-label={sentence}>
      {marks.panels.map((panel, i) => (
        <g key={i}>
          <Lettered label={panel.title} />
          <clipPath id={`${clip}${i}`}>
            <rect x={panel.left} y={marks.top} width={panel.size} height={panel.size} />
          </clipPath>
          {panel.ticks.map(({ at }) => (
            <path key={at} className="grid" d={`M${at} ${marks.top}V${marks.axisY}`} />
          ))}
          <g clipPath={`url(#${clip}${i})`}>
            <path
              className="centre-line"
              d={`M${panel.left} ${panel.middle.y}h${panel.size}M${panel.middle.x} ${marks.top}v${panel.size}`}
            />
            <ellipse className="shift-oval" cx={panel.second.x} cy={panel.second.y} rx={panel.rx} ry={panel.ry} />
            {panel.arrow !== null && (
              <>
                <path className="shift-line" d={panel.arrow.d} />
                <path
                  className="shift-head"
                  d="M-8 0L-19 -4.5V4.5Z"
                  transform={`translate(${panel.second.x} ${panel.second.y}) rotate(${panel.arrow.angle})`}
                />
              </>
            )}
            <circle className="shift-first" cx={panel.middle.x} cy={panel.middle.y} r="4.6" />
            <path
              className="shift-second"
              d="M0 -6.4L6.4 0L0 6.4L-6.4 0Z"
              transform={`translate(${panel.second.x} ${panel.second.y})`}
            />
          </g>
          {panel.names.map((name) => (
            <Lettered key={name.text} label={name} halo />
          ))}
          <path className="axis" d={`M${panel.left} ${marks.axisY}h${panel.size}`} />
          {panel.ticks.map(({ at, label }) => (
            <g key={at}>
              <path className="axis" d={`M${at} ${marks.axisY}v4`} />
              {label !== null && <Lettered label={label} />}
            </g>
          ))}
        </g>
      ))}
    </svg>
  );
}
