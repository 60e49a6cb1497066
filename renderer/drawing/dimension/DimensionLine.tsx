import './dimension.css';
import { dimensionMarks, type Span } from './lines.ts';

/** One dimension: extension lines, the line that its figure breaks, slender heads. In pencil until its figure has been measured. */
export function DimensionLine({ span, measured }: { span: Span; measured: boolean }) {
  const { lines, heads } = dimensionMarks(span);
  return (
    <g className={measured ? 'dimension' : 'dimension in-lead'}>
      <path className="dimension-line" d={lines} />
      <path className="dimension-head" d={heads} />
    </g>
  );
}
