import type { TrialInput, TrialRow, TrialSheet } from '../../../core/trials/index.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { Fraction } from '../../design/index.ts';
import { besideRow, rowAfter } from './derive.ts';
import { goOn, takeRow } from './goOn.ts';
import { arrowsLeft } from './standing.ts';
import { standIn } from './store.ts';

interface Props {
  input: TrialInput;
  rows: TrialSheet;
  row: TrialRow;
  /** The row in hand has what it takes: going on is what to do now. */
  full: boolean;
  /** The verdict stands: more arrows of the plan are not needed. */
  settled: boolean;
}

/** The way to the next row that is wanted, and from the last one to what they say. */
export function GoOn({ input, rows, row, full, settled }: Props) {
  const bench = useBenchApi();
  const next = rowAfter(rows, row.key);
  const beside = besideRow(rows, row.key);
  if (settled && full && next !== null)
    return (
      <>
        <button type="button" className="btn go" onClick={() => standIn(input.trial.id, { part: 'read', row: null })}>
          Read it
        </button>
        <button type="button" className="link" aria-keyshortcuts="N" onClick={() => void goOn(bench, input, rows, row.key)}>
          <Fraction>{`All the same: ${next.text}`}</Fraction>
        </button>
        <p className="note">The verdict stands already: the {arrowsLeft(rows)} arrows left of the plan need not be shot.</p>
      </>
    );
  return (
    <>
      <button
        type="button"
        className={full ? 'btn go' : 'btn'}
        aria-keyshortcuts="N"
        onClick={() => void goOn(bench, input, rows, row.key)}
      >
        <span>
          <Fraction>{next === null ? 'Read it' : `Next: ${next.text}`}</Fraction>
        </span>
      </button>
      {beside !== null && beside.key !== next?.key && (
        <button type="button" className="link" onClick={() => void takeRow(bench, input, beside)}>
          Note arrow speeds
        </button>
      )}
    </>
  );
}
