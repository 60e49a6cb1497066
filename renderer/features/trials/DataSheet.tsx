import type { TrialInput, TrialRow, TrialSheet } from '../../../core/trials/index.ts';
import { Fraction } from '../../design/index.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { takeRow } from './goOn.ts';
import { linesOf } from './sheetLines.ts';

interface Props {
  input: TrialInput;
  rows: TrialSheet;
  /** Key of the row in hand; null where the trial takes no more and its boxes only tell. */
  inHand: string | null;
}

/** The sheet of the trial: a line for each place and kind of arrow, a box for each end. A box takes its row in hand. */
export function DataSheet({ input, rows, inHand }: Props) {
  const bench = useBenchApi();
  const units = useUnits();
  const { heads, lines } = linesOf(rows, input.trial.trial, units);
  const box = (row: TrialRow) => {
    const count = row.shot;
    const said = row.done
      ? `${count} noted`
      : count > 0
        ? `${count} of ${row.arrows}, next`
        : row.key === rows.next
          ? 'next'
          : 'not shot';
    const state = row.done ? 'done' : row.key === rows.next ? 'wanted' : '';
    if (inHand === null)
      return (
        <span className={`sheet-box at-rest ${count > 0 ? 'done' : ''}`}>
          <span aria-hidden="true">{boxText(row, count, false, false)}</span>
          <span className="heard">{`${row.text}: ${count > 0 ? said.replace(', next', '') : 'not shot'}`}</span>
        </span>
      );
    return (
      <button
        type="button"
        className={`sheet-box ${state}`}
        aria-current={row.key === inHand ? 'true' : undefined}
        onClick={() => void takeRow(bench, input, row)}
      >
        <span aria-hidden="true">{boxText(row, count, row.key === inHand, row.key === rows.next)}</span>
        <span className="heard">{`${row.text}: ${said}`}</span>
      </button>
    );
  };
  return (
    <div className="data-sheet-room">
      <table className="table data-sheet">
        <thead>
          <tr>
            <td />
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.key}>
              <th scope="row">
                <Fraction>{line.name}</Fraction>
              </th>
              {line.boxes.map((row, i) => (
                <td key={heads[i]}>{row !== null && box(row)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** "2 of 3" until an end is whole, then its count; "next" where the sheet goes on. */
function boxText({ which, arrows }: TrialRow, count: number, inHand: boolean, next: boolean): string {
  if (which === 'tear' || which === 'clearance') return count > 0 ? '✓' : inHand ? 'now' : '–';
  if (count >= arrows) return String(count);
  if (count > 0 || inHand) return `${count} of ${arrows}`;
  return next ? 'next' : '–';
}
