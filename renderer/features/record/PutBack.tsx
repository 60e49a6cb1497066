import type { Id } from '../../../core/model/common.ts';
import { together } from '../../../core/model/sentence.ts';
import { useBench, useBenchApi } from '../../state/useBench.ts';
import { Fraction, Mark } from '../../design/index.ts';
import type { StateDiff } from './diff.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { alsoChanged, measuredSince, putBackEdits } from './putBack.ts';
import type { Compared } from './selectors.ts';
import { chooseInRecord } from './store.ts';

/** One button back. What it will do stands beside it: the diff's lines, and whom else it touches. */
export function PutBack({ setupId, compared, diff }: { setupId: Id; compared: Compared; diff: StateDiff }) {
  const records = useBench((state) => state.records);
  const bench = useBenchApi();
  const { from, elsewhere } = compared;
  const edits = putBackEdits(records, from);
  if (edits.length === 0) return <p className="note">There is nothing to put back: nothing differs.</p>;

  const also = alsoChanged(records, from, edits).map((setup) => `“${setup.name}”`);
  const goes = measuredSince(diff.differ);
  const back = async () => {
    const done = await bench.getState().change(`Put back “${from.name}”`, (all) => putBackEdits(all, from));
    if (!done) return;
    chooseInRecord(setupId, { from: from.id, to: null, putBack: diff.differ });
    keepFocus();
  };
  return (
    <>
      <p className="note">
        {elsewhere !== null && `It is a snapshot of “${elsewhere}” and is put back there. `}
        {whatChanges(diff.differ.length)} Groups and look-overs stay as they are.
        {also.length > 0 &&
          ` ${together(also)} ${also.length === 1 ? 'rests on a record that changes, and changes' : 'rest on records that change, and change'} with it.`}
      </p>
      {goes.length > 0 && (
        <p className="note caution-text">
          <Mark level="caution" />{' '}
          <Fraction>{`What was measured since goes with it: ${goes.join('; ')}. Take a snapshot first.`}</Fraction>
        </p>
      )}
      <div className="acts">
        <button type="button" className="btn" data-field="record.putBack" onClick={() => void back()}>
          Put “{from.name}” back
        </button>
      </div>
    </>
  );
}

function whatChanges(lines: number): string {
  if (lines === 0) return 'No figure changes: only what was put in the archive, or a name, comes back.';
  return lines === 1 ? 'The line on the left goes back in one step.' : `The ${lines} lines on the left go back in one step.`;
}
