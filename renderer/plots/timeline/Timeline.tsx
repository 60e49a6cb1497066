import { useMemo } from 'react';
import { useSize } from '../../design/index.ts';
import { timelineSize, type TimelineData } from './data.ts';
import { timelineMarks } from './marks.ts';
import './timeline.css';

const diamond = (x: number, y: number, r: number): string => `M${x} ${y - r}L${x + r} ${y}L${x} ${y + r}L${x - r} ${y}Z`;

/** How the group size and each setting moved. The sentence says in words what the drawing shows. */
export function Timeline({ data, sentence }: { data: TimelineData; sentence: string }) {
  const [place, room] = useSize();
  const width = Math.max(240, room?.width ?? 780);
  const marks = useMemo(() => timelineMarks(data, width), [data, width]);
  const { plot, panel } = marks;
  return (
    <div ref={place} className="timeline">
      <svg width={width} height={marks.height} role="img" aria-label={sentence}>
        <path className="now-edge" d={`M${plot.right} ${plot.bottom - data.lanes.length * timelineSize.lane}V${plot.bottom}`} />
        {data.lanes.length > 0 && (
          <text className="name" x={plot.right + 11} y={plot.bottom + 17}>
            now
          </text>
        )}
        {panel !== null && (
          <>
            <text x="0" y={panel.top + 22} className="lane-name">
              {data.sizes.name}
            </text>
            <text x="0" y={panel.top + 39} className="tick">
              {data.sizes.small}
            </text>
            {panel.grid.map((line) => (
              <g key={line.y}>
                <path className="grid" d={`M${plot.left} ${line.y}H${plot.right}`} />
                <text className="tick" x={plot.left - 9} y={line.y + 4} textAnchor="end">
                  {line.text}
                </text>
              </g>
            ))}
          </>
        )}
        {marks.lanes.map((lane) => (
          <path key={lane.key} className="grid" d={`M0 ${lane.rule}H${width}`} />
        ))}
        <path className="axis" d={`M${plot.left} ${plot.bottom}H${plot.right}`} />
        {marks.ticks.map((tick) => (
          <g key={tick.x}>
            <path className="axis" d={`M${tick.x} ${plot.bottom}v5`} />
            <text className="tick" x={tick.x} y={tick.y}>
              {tick.text}
            </text>
          </g>
        ))}
        {marks.flags.map((flag) => (
          <g key={flag.id} className={flag.chosen ? 'flag chosen' : flag.trial ? 'flag trial' : 'flag'}>
            <path className="staff" d={`M${flag.x} ${flag.y + 2}V${plot.bottom}`} />
            <path
              className="cloth"
              d={flag.trial ? `M${flag.x} ${flag.y + 2}l-10 5l10 5z` : `M${flag.x} ${flag.y + 2}h-9v10h9z`}
            />
          </g>
        ))}
        {panel?.dots.map((dot, index) => (
          <g key={index} className="size-dot">
            <path
              className="whisker"
              d={`M${dot.x} ${dot.from}V${dot.to}M${dot.x - 3} ${dot.from}h6${dot.beyond ? '' : `M${dot.x - 3} ${dot.to}h6`}`}
            />
            <title>{dot.said}</title>
            {dot.tried ? (
              <path className="tried-mark" d={diamond(dot.x, dot.y, dot.r + 1)} />
            ) : (
              <circle cx={dot.x} cy={dot.y} r={dot.r} />
            )}
          </g>
        ))}
        {panel !== null && (
          <>
            {panel.last !== null && (
              <text className="strong" x={panel.last.x} y={panel.last.y}>
                {panel.last.text}
              </text>
            )}
            {panel.dotNote.map((line) => (
              <text key={line.text} className="name" x={line.x} y={line.y}>
                {line.text}
              </text>
            ))}
          </>
        )}
        {marks.lanes.map((lane) => (
          <g key={lane.key}>
            <text className="lane-name" x="0" y={lane.y + 5}>
              {lane.name}
              {lane.unit !== '' && <tspan className="lane-unit">, {lane.unit}</tspan>}
            </text>
            <path className="step" d={lane.path} />
            {lane.tried.map((mark, index) => (
              <path key={index} className="tried-mark" d={diamond(mark.x, mark.y, 3.6)}>
                <title>{mark.text}</title>
              </path>
            ))}
            {lane.labels.map((label) => (
              <text key={label.x} className="step-figure halo" x={label.x} y={label.y} textAnchor={label.anchor}>
                {label.text}
              </text>
            ))}
            {lane.now !== null && (
              <text className={lane.now.stepped ? 'step-figure stepped' : 'step-figure'} x={lane.now.x} y={lane.now.y}>
                {lane.now.text}
              </text>
            )}
          </g>
        ))}
        {marks.flags.map(
          (flag) =>
            flag.label !== null && (
              <text
                key={flag.id}
                className={flag.chosen ? 'name halo chosen-name' : 'name halo'}
                x={flag.label.x}
                y={flag.label.y}
                textAnchor={flag.label.anchor}
              >
                {flag.label.text}
              </text>
            ),
        )}
      </svg>
    </div>
  );
}
