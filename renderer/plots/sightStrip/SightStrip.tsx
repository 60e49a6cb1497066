import { useMemo } from 'react';
import { stripFrame, sightStripMarks, type SightStripData } from './marks.ts';
import './sightStrip.css';

/** The strip, and each interval beside it. */
export function SightStrip({ data, sentence }: { data: SightStripData; sentence: string }) {
  const marks = useMemo(() => sightStripMarks(data), [data]);
  if (marks === null) return null;
  const { left, bar, intervals: lane } = stripFrame;
  const right = left + bar;
  return (
    <svg className="sight-strip" width={marks.width} height={marks.height} role="img" aria-label={sentence}>
      <rect className="strip-bar" x={left} y={marks.top} width={bar} height={marks.bottom - marks.top} />
      {marks.ticks.map(({ y, length, weak }) => (
        <path key={y} className={weak ? 'strip-tick weak' : 'strip-tick'} d={`M${left} ${y}h${length}`} />
      ))}
      {marks.labels.map((one) => (
        <text key={one.text} className={one.weak ? 'strip-figure weak' : 'strip-figure'} x={one.x} y={one.y}>
          {one.text}
        </text>
      ))}
      {marks.ends.map((y) => (
        <path key={y} className="strip-end" d={`M${left - 1} ${y}H${right + 8}`} />
      ))}
      {marks.intervals.map(({ y, low, high, open, weak }) => (
        <path
          key={y}
          className={weak ? 'strip-interval weak' : 'strip-interval'}
          d={`M${lane} ${low}V${high}${open[0] ? '' : `M${lane - 4} ${low}h8`}${open[1] ? '' : `M${lane - 4} ${high}h8`}`}
        />
      ))}
      {marks.known.map(({ y }, i) => (
        <circle key={i} className="strip-known" cx={lane} cy={y} r="3.6" />
      ))}
      <path
        className="dim-line"
        d={`M${marks.rule.from} ${marks.rule.y}H${marks.rule.to}M${marks.rule.from} ${marks.rule.y - 4}v8M${marks.rule.to} ${marks.rule.y - 4}v8`}
      />
      <text className="tick" x={marks.rule.label.x} y={marks.rule.label.y}>
        {marks.rule.label.text}
      </text>
    </svg>
  );
}
