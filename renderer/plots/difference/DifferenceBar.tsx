import { differenceMarks, differenceSize } from './marks.ts';
import './difference.css';

/** Drawn for the eye only: the row's figures and its last column say the same. */
export function DifferenceBar({ difference, noise, real }: { difference: number; noise: number; real: boolean }) {
  const { zero, bar, noise: wash } = differenceMarks(difference, noise, real);
  const { width, height } = differenceSize;
  const middle = height / 2;
  const end = difference < 0 ? bar.from : bar.to;
  return (
    <svg className={real ? 'difference-bar real' : 'difference-bar'} width={width} height={height} aria-hidden="true">
      <path className="wash" d={`M${wash.from} ${middle}H${wash.to}`} />
      <path className="zero" d={`M${zero} ${middle - 8}V${middle + 8}`} />
      {real ? (
        <>
          <rect className="bar" x={bar.from} y={middle - 4} width={bar.to - bar.from} height="8" />
          <path className="end" d={`M${end} ${middle - 7}V${middle + 7}`} />
        </>
      ) : (
        bar.to - bar.from > 1 && <rect className="bar" x={bar.from} y={middle - 2.5} width={bar.to - bar.from} height="5" />
      )}
    </svg>
  );
}
