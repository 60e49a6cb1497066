import { useMemo } from 'react';
import { stripMarks, type StripData } from './marks.ts';
import './strip.css';

/** One figure of every arrow of a set as a strip of numbered dots, with the set's middle and what is let pass. */
export function DotStrip({ data, width, said }: { data: StripData; width: number; said: string }) {
  const marks = useMemo(() => stripMarks(data, width), [data, width]);
  const { axisY, band, radius } = marks;
  return (
    <svg className="dot-strip" width={width} height={marks.height} role="img" aria-label={said}>
      <rect className="strip-band" x={band.from} y="2" width={Math.max(1, band.to - band.from)} height={axisY - 2} />
      <path className="strip-edge" d={`M${band.from} 2V${axisY}M${band.to} 2V${axisY}`} />
      <path className="centre-line" d={`M${marks.median} 2V${axisY + 4}`} />
      <path className="axis" d={`M0 ${axisY}H${width}${marks.ticks.map(({ at }) => `M${at} ${axisY}v4`).join('')}`} />
      {marks.ticks.map(({ label }) => (
        <text key={label.text} className="tick" x={label.x} y={label.y} textAnchor={label.anchor}>
          {label.text}
        </text>
      ))}
      {marks.dots.map((dot) => (
        <g key={dot.number} className={dot.odd ? 'strip-dot odd' : 'strip-dot'}>
          <circle cx={dot.x} cy={dot.y} r={marks.numbered ? radius - 0.6 : radius} />
          {marks.numbered && (
            <text x={dot.x} y={dot.y + 4} textAnchor="middle">
              {dot.number}
            </text>
          )}
        </g>
      ))}
    </svg>
  );
}
