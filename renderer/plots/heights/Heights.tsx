import { useMemo } from 'react';
import { useSize } from '../../design/index.ts';
import { SetupMark } from '../SetupMark.tsx';
import { heightsMarks, heightsSize, type HeightsData } from './marks.ts';
import './heights.css';

/** How much higher the other set-up's arrow strikes, distance by distance, with the band of what is not known. */
export function Heights({ data, sentence }: { data: HeightsData; sentence: string }) {
  const [place, room] = useSize();
  const width = Math.max(240, room?.width ?? 380);
  const marks = useMemo(() => heightsMarks(data, width), [data, width]);
  const { left } = heightsSize;
  return (
    <div ref={place} className="heights">
      <svg width={width} height={heightsSize.height} role="img" aria-label={sentence}>
        {marks.grid.map((row) => (
          <g key={row.y}>
            <path className="grid" d={`M${left} ${row.y}H${marks.right}`} />
            <text className="tick" x={left - 8} y={row.y + 4} textAnchor="end">
              {row.text}
            </text>
          </g>
        ))}
        <path className="axis" d={`M${left} ${marks.axisY}H${marks.right}`} />
        {marks.ticks.map((tick) => (
          <g key={tick.x}>
            <path className="axis" d={`M${tick.x} ${marks.axisY}v4`} />
            <text className="tick" x={tick.x} y={marks.axisY + 17} textAnchor="middle">
              {tick.text}
            </text>
          </g>
        ))}
        <path className="setup-band s2" d={marks.band} />
        {marks.edges.map((edge, index) => (
          <path key={index} className="setup-band-edge s2" d={edge} />
        ))}
        <path className="setup-line s1" d={`M${left} ${marks.zero}H${marks.right}`} />
        <path className="setup-line s2" d={marks.curve} />
        {marks.dots.map((dot) => (
          <g key={dot.x}>
            <SetupMark setup={0} x={dot.x} y={marks.zero} size={5} />
            <SetupMark setup={1} x={dot.x} y={dot.y} />
          </g>
        ))}
        <text className="name" x={marks.labels.x} y={marks.labels.reference}>
          {marks.labels.texts[0]}
        </text>
        <text className="name" x={marks.labels.x} y={marks.labels.other}>
          {marks.labels.texts[1]}
        </text>
      </svg>
    </div>
  );
}
