import { useState, type KeyboardEvent } from 'react';
import type { Bow } from '../../../core/model/bow.ts';
import { ClearanceShot } from '../../../core/model/trial.ts';
import type { TrialRow } from '../../../core/trials/index.ts';
import { Choice } from '../../design/index.ts';
import { Tail } from '../../plots/trial/Tail.tsx';
import { useBenchApi } from '../../state/useBench.ts';
import { putClearance } from './edits.ts';
import { afterRow } from './goOn.ts';
import { RowHead } from './RowHead.tsx';
import type { PartProps } from './shared.ts';
import { nockTurns, touchedText, turnText } from './touched.ts';

type Part = ClearanceShot['touched'][number];

interface Draft {
  readonly row: string;
  readonly touched: readonly Part[];
  readonly turn: number;
}

const all = ClearanceShot.shape.touched.element.options;

/** A bow that is shot off the shelf or the hand has neither rest nor button; what was marked on one all the same stays in sight. */
const partsOf = ({ arrowPass }: Bow, touched: readonly Part[]): readonly Part[] =>
  arrowPass === 'rest and button' ? all : all.filter((part) => !fitted.has(part) || touched.includes(part));
const slidesOver = { 'rest and button': 'the rest', shelf: 'the shelf', hand: 'the hand' } as const;
const fitted: ReadonlySet<Part> = new Set(['rest', 'button']);

/** What has a mark on it after one powdered shot: marked on the drawing or in the list, or clean with one key. */
export function RowClearance({ input, trial, rows, row }: PartProps & { row: TrialRow }) {
  const bench = useBenchApi();
  const before = trial.clearance[row.end - 1];
  // What is being marked belongs to its shot: the next one begins anew, and the focus stays where it is.
  const [draft, setDraft] = useState<Draft | null>(null);
  const kept = { touched: before?.touched ?? [], turn: before?.nockTurn ?? trial.clearance.at(-1)?.nockTurn ?? 0 };
  const { touched, turn } = draft?.row === row.key ? draft : kept;
  const parts = partsOf(input.bundle.bow, touched);
  const setTurn = (next: number) => setDraft({ row: row.key, touched, turn: next });
  const toggle = (part: Part) =>
    setDraft({
      row: row.key,
      turn,
      touched: touched.includes(part) ? touched.filter((one) => one !== part) : [...touched, part],
    });
  const put = async (marks: readonly Part[]) => {
    const shot: ClearanceShot = { touched: all.filter((part) => marks.includes(part)), nockTurn: turn };
    setDraft(null);
    if (await putClearance(bench, trial.id, row, shot)) afterRow(trial.id, rows, row.key);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key.toLowerCase() !== 'c' || event.repeat || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    void put([]);
  };
  const whole = rows.next === null;
  return (
    <div onKeyDown={onKeyDown}>
      <RowHead row={row} count={null} />
      <Tail hand={input.bundle.archer.hand} pass={input.bundle.bow.arrowPass} touched={touched} onTouch={toggle} />
      <fieldset className="touched">
        <legend className="name">A mark on</legend>
        {parts.map((part) => (
          <label key={part}>
            <input type="checkbox" checked={touched.includes(part)} onChange={() => toggle(part)} />
            {part}
          </label>
        ))}
      </fieldset>
      <p className="note faint">An even trace where the shaft slides over {slidesOver[input.bundle.bow.arrowPass]} is no mark.</p>
      <div className="form">
        <Choice
          name="nock turned by"
          value={String(turn)}
          options={nockTurns.map((value) => ({ value: String(value), text: turnText(value) }))}
          onKeep={(value) => setTurn(Number(value))}
        />
      </div>
      <div className="row-foot">
        {touched.length > 0 ? (
          <button type="button" className={whole ? 'btn' : 'btn go'} onClick={() => void put(touched)}>
            Note: {touchedText(touched)}
          </button>
        ) : (
          <button type="button" className={whole ? 'btn' : 'btn go'} aria-keyshortcuts="C" onClick={() => void put([])}>
            Clean: nothing touched
          </button>
        )}
      </div>
    </div>
  );
}
