import { useMemo } from 'react';
import { Lettered } from '../Lettered.tsx';
import { intervalMarks, type IntervalPanel } from './marks.ts';
import './intervalRows.css';

interface Props {
  panels: readonly IntervalPanel[];
  width: number;
  unit: { readonly factor: number; readonly symbol: string };
  sentence: string;
}

/** Values with their 95 % bars, a row each. The table beside it has the figures. */
export function IntervalRows({ panels, width, unit, sentence }: Props) {
  const marks = useMemo(() => intervalMarks(panels, width, unit), [panels, width, unit]);
  return (
    <svg className="interval-rows" width={width} height={marks.height} role="img" aria-label={sentence}>
      {marks.names.map((name, i) => (
        <Lettered key={i} label={name} />
      ))}
      {marks.panels.map((panel, p) => (
        <g key={p}>
          <Lettered label={panel.title} />
          {panel.rows.map((row, i) => (
            <path key={i} className="grid" d={`M${panel.left} ${row.y}H${panel.right}`} />
          ))}
          {panel.against !== null && <path className="centre-line" d={`M${panel.against} ${marks.top}V${marks.axisY}`} />}
          {panel.rows.map((row, i) => (
            <g key={i} className={row.strong ? 'interval strong' : 'interval'}>
              {row.bar && (
                <path
                  d={`M${row.from} ${row.y}H${row.to}${row.open[0] ? '' : `M${row.from} ${row.y - 4}v8`}${row.open[1] ? '' : `M${row.to} ${row.y - 4}v8`}`}
                />
              )}
              <circle cx={row.at} cy={row.y} r={row.strong ? 4.2 : 3.4} />
            </g>
          ))}
          <path className="axis" d={`M${panel.left} ${marks.axisY}H${panel.right}`} />
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
