import { useMemo } from 'react';
import { Exportable } from '../../export/index.ts';
import { useSize } from '../../design/index.ts';
import { Lettered } from '../Lettered.tsx';
import { markLineMarks, type MarkLineData } from './marks.ts';
import { markLineTable } from './table.ts';
import './markLine.css';

/** The known marks off the fitted line, with the line's 95 %. */
export function MarkLine({ data, title, note, sentence }: { data: MarkLineData; title: string; note: string; sentence: string }) {
  const [place, room] = useSize();
  const width = Math.max(220, Math.floor(room?.width ?? 520));
  const marks = useMemo(() => markLineMarks(data, width), [data, width]);
  return (
    <div ref={place} className="mark-line-plot">
      <h2 className="plate">{title}</h2>
      <p className="note">{note}</p>
      <Exportable of="known marks" title={title} note={note} sentence={sentence} table={() => markLineTable(data)}>
        <svg width={width} height={marks.height} role="img" aria-label={sentence}>
          {marks.up.map(({ y, label }) => (
            <g key={y}>
              <path className="grid" d={`M${marks.left} ${y}H${marks.right}`} />
              <Lettered label={label} />
            </g>
          ))}
          <path className="axis" d={`M${marks.left} ${marks.axisY}H${marks.right}`} />
          {marks.across.map(({ at, label }) => (
            <g key={at}>
              <path className="axis" d={`M${at} ${marks.axisY}v4`} />
              {label !== null && <Lettered label={label} />}
            </g>
          ))}
          <path className="plot-band" d={marks.band} />
          <path className="dim-line" d={marks.edges[0]} />
          <path className="dim-line" d={marks.edges[1]} />
          <path className="curve" d={`M${marks.left} ${marks.zero}H${marks.right}`} />
          {marks.dots.map(({ x, y, fits, counts }, i) =>
            counts ? (
              <circle key={i} className={fits ? 'read-dot' : 'read-dot misfit'} cx={x} cy={y} r="4" />
            ) : (
              <path key={i} className="left-out-mark" d={`M${x - 4} ${y - 4}l8 8M${x - 4} ${y + 4}l8 -8`} />
            ),
          )}
        </svg>
      </Exportable>
    </div>
  );
}
