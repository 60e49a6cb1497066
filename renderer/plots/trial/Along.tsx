import { useMemo } from 'react';
import { Lettered } from '../Lettered.tsx';
import { alongMarks, type AlongData } from './along.ts';
import './trialPlot.css';

/** Values with their intervals against a setting, panel below panel on one axis. */
export function Along({ data, width, sentence }: { data: AlongData; width: number; sentence: string }) {
  const marks = useMemo(() => alongMarks(data, width), [data, width]);
  const { left, right } = marks;
  return (
    <svg className="trial-plot" width={width} height={marks.height} role="img" aria-label={sentence}>
      {marks.panels.map((panel, p) => (
        <g key={p}>
          <Lettered label={panel.title} />
          {panel.up.map(({ at, label }) => (
            <g key={at}>
              <path className="grid" d={`M${left} ${at}H${right}`} />
              {label !== null && <Lettered label={label} />}
            </g>
          ))}
          {panel.zero !== null && <path className="centre-line" d={`M${left} ${panel.zero}H${right}`} />}
          {panel.place !== null && (
            <g className="level-place">
              <rect
                className="plot-band"
                x={panel.place.from}
                y={panel.top}
                width={Math.max(0, panel.place.to - panel.place.from)}
                height={panel.bottom - panel.top}
              />
              <path
                className="dim-line"
                d={`M${panel.place.from} ${panel.top}V${panel.bottom}M${panel.place.to} ${panel.top}V${panel.bottom}`}
              />
              <path className="construction" d={`M${panel.place.x} ${panel.top}V${marks.axisY}`} />
            </g>
          )}
          {panel.line !== '' && <path className="curve" d={panel.line} />}
          {panel.points.map((point, i) => (
            <g key={i} className={point.strong ? 'trial-dot strong' : 'trial-dot'}>
              <path
                d={`M${point.x} ${point.from}V${point.to}${point.open[0] ? '' : `M${point.x - 4} ${point.from}h8`}${point.open[1] ? '' : `M${point.x - 4} ${point.to}h8`}`}
              />
              <circle cx={point.x} cy={point.y} r="4" />
            </g>
          ))}
          {panel.place !== null && <Lettered label={panel.place.label} halo />}
        </g>
      ))}
      <path className="axis" d={`M${left} ${marks.axisY}H${right}`} />
      {marks.across.map(({ at, label }) => (
        <g key={at}>
          <path className="axis" d={`M${at} ${marks.axisY}v4`} />
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
      <Lettered label={marks.axisName} />
    </svg>
  );
}
