import { useMemo } from 'react';
import { Lettered } from '../Lettered.tsx';
import { walkBackMarks, type WalkBackData } from './walkBack.ts';
import './trialPlot.css';

interface Unit {
  readonly factor: number;
  readonly symbol: string;
}

interface Props {
  data: WalkBackData;
  width: number;
  across: Unit;
  down: Unit;
  sentence: string;
}

/** Every shot beside the plumb line, distance downward; the straight line with its band, and the bent one beside it. */
export function WalkBack({ data, width, across, down, sentence }: Props) {
  const marks = useMemo(() => walkBackMarks(data, width, across, down), [data, width, across, down]);
  const { left, right, top, axisY } = marks;
  return (
    <svg className="trial-plot" width={width} height={marks.height} role="img" aria-label={sentence}>
      {marks.labels.map((one) => (
        <Lettered key={one.text} label={one} />
      ))}
      {marks.down.map(({ at, label }) => (
        <g key={at}>
          <path className="grid" d={`M${left} ${at}H${right}`} />
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
      {marks.band !== '' && <path className="plot-band" d={marks.band} />}
      <path className="dim-line" d={marks.edges.join('')} />
      <path className="centre-line" d={`M${marks.plumb} ${top}V${axisY}`} />
      <path className="construction bent" d={marks.curve} />
      <path className="curve" d={marks.line} />
      {marks.shots.map((shot, i) => (
        <circle key={i} className="read-dot" cx={shot.x} cy={shot.y} r="3.6" />
      ))}
      <path className="axis" d={`M${left} ${axisY}H${right}`} />
      {marks.across.map(({ at, label }) => (
        <g key={at}>
          <path className="axis" d={`M${at} ${axisY}v4`} />
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
    </svg>
  );
}
