import { ClearanceShot } from '../../../core/model/trial.ts';
import { label } from '../labels.ts';
import { Lettered } from '../Lettered.tsx';
import './trialPlot.css';

interface Props {
  shots: readonly ClearanceShot[];
  /** How far the nock was turned at each shot, in words short enough for a column. */
  turns: readonly string[];
  sentence: string;
}

const parts = ClearanceShot.shape.touched.element.options;
const size = { name: 150, column: 34, row: 24, head: 24 } as const;

/** What was touched at each shot: a line a part, a column a shot, and below how far the nock was turned. */
export function Touches({ shots, turns, sentence }: Props) {
  const width = size.name + shots.length * size.column + 8;
  const bottom = size.head + parts.length * size.row;
  const x = (i: number) => size.name + (i + 0.5) * size.column;
  const y = (i: number) => size.head + (i + 0.5) * size.row;
  return (
    <svg className="trial-plot" width={width} height={bottom + 24} role="img" aria-label={sentence}>
      <Lettered label={label('shot', 0, 15, 'start', 'name', 13)} />
      {shots.map((_, i) => (
        <Lettered key={i} label={label(String(i + 1), x(i), 15, 'middle', 'text', 12)} />
      ))}
      {parts.map((part, row) => (
        <g key={part}>
          <path className="grid" d={`M0 ${size.head + row * size.row}H${width}`} />
          <Lettered label={label(part, 0, y(row) + 4, 'start', 'note', 13)} />
          {shots.map(({ touched }, i) =>
            touched.includes(part) ? (
              <path key={i} className="touch-mark" d={`M${x(i)} ${y(row) - 6}l6 11h-12z`} />
            ) : (
              <circle key={i} className="touch-none" cx={x(i)} cy={y(row)} r="4" />
            ),
          )}
        </g>
      ))}
      <path className="axis" d={`M0 ${bottom}H${width}`} />
      <Lettered label={label('nock turned', 0, bottom + 17, 'start', 'name', 13)} />
      {turns.map((turn, i) => (
        <Lettered key={i} label={label(turn, x(i), bottom + 17, 'middle', 'text', 12)} />
      ))}
    </svg>
  );
}
