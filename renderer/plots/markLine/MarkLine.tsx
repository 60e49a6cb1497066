import { useId, useMemo } from 'react';
import { Exportable } from '../../export/index.ts';
import { useSize } from '../../design/index.ts';
import { Lettered } from '../Lettered.tsx';
import { ReadAlong } from '../readAlong/ReadAlong.tsx';
import type { Said } from '../readAlong/words.ts';
import { markLineFrame, markLineMarks, type MarkLineData } from './marks.ts';
import { markLineTable } from './table.ts';
import './markLine.css';

interface Props {
  data: MarkLineData;
  title: string;
  note: string;
  sentence: string;
  /** What is read at a distance [m]. */
  says(distance: number): Said;
}

/** The known marks off the fitted line, with the line's 95 %; what the sight reads anywhere follows pointer and keys. */
export function MarkLine({ data, title, note, sentence, says }: Props) {
  const clip = useId();
  const [place, room] = useSize();
  const width = Math.max(220, Math.floor(room?.width ?? 520));
  const marks = useMemo(() => markLineMarks(data, width), [data, width]);
  return (
    <div ref={place} className="mark-line-plot">
      <h2 className="plate">{title}</h2>
      <p className="note">{note}</p>
      <Exportable of="known marks" title={title} note={note} sentence={sentence} table={() => markLineTable(data)}>
        <ReadAlong
          width={width}
          height={marks.height}
          sentence={sentence}
          name="Read the sight at a distance"
          window={{ left: marks.left, right: marks.right, top: markLineFrame.top, bottom: marks.axisY }}
          x={marks.x}
          from={data.line[0]?.distance ?? 0}
          to={data.line.at(-1)?.distance ?? 1}
          step={data.distanceFactor}
          rest={data.known[0]?.distance ?? 0}
          says={says}
        >
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
          <clipPath id={clip}>
            <rect
              x={marks.left}
              y={markLineFrame.top}
              width={marks.right - marks.left}
              height={marks.axisY - markLineFrame.top}
            />
          </clipPath>
          <g clipPath={`url(#${clip})`}>
            <path className="plot-band" d={marks.band} />
            <path className="dim-line" d={marks.edges[0]} />
            <path className="dim-line" d={marks.edges[1]} />
          </g>
          <path className="curve" d={`M${marks.left} ${marks.zero}H${marks.right}`} />
          {marks.dots.map(({ x, y, fits, counts }, i) =>
            counts ? (
              <circle key={i} className={fits ? 'read-dot' : 'read-dot misfit'} cx={x} cy={y} r="4" />
            ) : (
              <path key={i} className="left-out-mark" d={`M${x - 4} ${y - 4}l8 8M${x - 4} ${y + 4}l8 -8`} />
            ),
          )}
        </ReadAlong>
      </Exportable>
    </div>
  );
}
