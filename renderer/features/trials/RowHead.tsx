import type { TrialRow } from '../../../core/trials/index.ts';
import { Fraction } from '../../design/index.ts';

/** Which row is in hand, and how much of it is there. */
export function RowHead({ row, count }: { row: TrialRow; count: number | null }) {
  return (
    <h3 className="plate row-head">
      <span>
        <Fraction>{row.text}</Fraction>
      </span>
      {count !== null && (
        <span className="row-count" role="status">
          {count} of {row.arrows}
        </span>
      )}
    </h3>
  );
}
