import { useMemo } from 'react';
import type { Label } from '../labels.ts';
import type { SpineScale } from './axis.ts';
import { spineMarks, type ShaftMark, type SpineView } from './marks.ts';
import './spine.css';

interface Props {
  views: readonly SpineView[];
  shaft: ShaftMark;
  scale: SpineScale;
}

const Words = ({ of, className }: { of: Label; className: string }) => (
  <text className={className} x={of.x} y={of.y} textAnchor={of.anchor}>
    {of.text}
  </text>
);

/** From too stiff to too weak: each view a band on the same line, the shaft a mark through them. */
export function SpineAxis({ views, shaft, scale }: Props) {
  const marks = useMemo(() => spineMarks(views, shaft, scale), [views, shaft, scale]);
  const { labels, axisY } = marks;
  const said = `${shaft.text}. ${views.map((view) => `${view.name}: ${view.says}.`).join(' ')}`;
  return (
    <svg className="spine-axis" width={scale.width} height={marks.height} role="img" aria-label={said}>
      {scale.ticks.map((tick) => (
        <path key={tick.text} className="grid" d={`M${tick.at} 30V${axisY}`} />
      ))}
      {marks.shaft.to - marks.shaft.from > 1 && (
        <>
          <rect
            className="spine-shaft-band"
            x={marks.shaft.from}
            y="30"
            width={marks.shaft.to - marks.shaft.from}
            height={axisY - 30}
          />
          <path className="spine-shaft-edge" d={`M${marks.shaft.from} 30V${axisY}M${marks.shaft.to} 30V${axisY}`} />
        </>
      )}
      {marks.rows.map(({ view, y, from, to, middle }) => (
        <g key={view.name}>
          <rect className="spine-band" x={from} y={y - 5} width={Math.max(1, to - from)} height="10" />
          <path className="spine-range" d={`M${from} ${y}H${to}M${from} ${y - 6}v12M${to} ${y - 6}v12`} />
          <circle className="spine-middle" cx={middle} cy={y} r="4" />
        </g>
      ))}
      {labels.views.map(({ name, says }, i) => (
        <g key={name.text}>
          <Words className="spine-view" of={name} />
          <Words className={`spine-says ${views[i]?.level ?? 'unknown'}`} of={says} />
        </g>
      ))}
      <path
        className="axis"
        d={`M${scale.left} ${axisY}H${scale.right}${scale.ticks.map(({ at }) => `M${at} ${axisY}v4`).join('')}`}
      />
      {labels.ticks.map((tick) => (
        <Words key={tick.text} className="tick" of={tick} />
      ))}
      {labels.ends.map((end) => (
        <Words key={end.text} className={end.lettering === 'name' ? 'name' : 'tick'} of={end} />
      ))}
      <Words className="tick" of={labels.wood} />
      <path className="spine-shaft" d={`M${marks.shaft.at} 22V${axisY}`} />
      <path className="spine-shaft-head" d={`M${marks.shaft.at} 30l-5 -9h10z`} />
      <Words className="spine-shaft-name" of={labels.shaft} />
    </svg>
  );
}
