import type { SpineScale } from './axis.ts';
import { moveMarks, moveRow } from './moves.ts';
import './spine.css';

interface Props {
  name: string;
  /** Where the shaft stands and where it would act, on the standard tester [m]. */
  from: number;
  actsLike: number;
  /** "acts like 0.735 in" */
  acts: string;
  /** "in the middle" */
  ends: string;
  stopped: boolean;
  scale: SpineScale;
}

/** A change drawn as a move on the spine axis that stands above it. */
export function MoveArrow({ name, from, actsLike, acts, ends, stopped, scale }: Props) {
  const marks = moveMarks(name, from, actsLike, acts, ends, scale);
  const { height, y } = moveRow;
  return (
    <svg
      className={stopped ? 'spine-move stopped' : 'spine-move'}
      width={scale.width}
      height={height}
      role="img"
      aria-label={`${name}: ${acts}, ${ends}.`}
    >
      {scale.ticks.map((tick) => (
        <path key={tick.text} className="grid" d={`M${tick.at} 0V${height}`} />
      ))}
      <text className="spine-move-name" x={marks.name.x} y={marks.name.y}>
        {name}
      </text>
      <path className="spine-move-line" d={`M${marks.from} ${y - 4}v8M${marks.from} ${y}H${marks.to}`} />
      {marks.head !== null && <path className="spine-move-head" d={marks.head} />}
      <text className="spine-move-acts halo" x={marks.acts.x} y={marks.acts.y} textAnchor={marks.acts.anchor}>
        {acts}
      </text>
      <text className="spine-move-ends" x={marks.ends.x} y={marks.ends.y} textAnchor={marks.ends.anchor}>
        {ends}
      </text>
    </svg>
  );
}
