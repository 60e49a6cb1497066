import type { DiffRow } from '../../../core/compare/index.ts';
import { dayText } from '../../../core/findings/index.ts';
import type { Id } from '../../../core/model/common.ts';
import type { Snapshot } from '../../../core/model/snapshot.ts';
import { Fraction } from '../../design/index.ts';
import { edited } from '../../state/bench.ts';
import { now } from '../../state/clock.ts';
import { useBenchApi } from '../../state/useBench.ts';
import type { StateDiff } from './diff.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { PutBack } from './PutBack.tsx';
import type { Compared } from './selectors.ts';
import { chooseInRecord, useRecordChoice } from './store.ts';

const AS_IT_STANDS = 'as it stands';

interface Props {
  setupId: Id;
  compared: Compared;
  diff: StateDiff;
  snapshots: readonly Snapshot[];
}

/** What lies between two states of the bow, and the way back to the first. */
export function Diff({ setupId, compared, diff, snapshots }: Props) {
  const { from, to } = compared;
  const { putBack } = useRecordChoice(setupId);
  const bench = useBenchApi();
  const today = now();
  const putAway = () =>
    void bench
      .getState()
      .change(`Put away “${from.name}”`, (records) => {
        const snapshot = records.get(from.id);
        return snapshot?.kind === 'snapshot' ? [edited(snapshot, { archivedAt: now() })] : [];
      })
      .then(keepFocus);
  const others = snapshots.filter((snapshot) => snapshot.id !== from.id);
  return (
    <section className="diff" aria-label="What differs">
      <header className="diff-head">
        <h2 className="plate">
          <label htmlFor="diff-from">From</label>{' '}
          <select
            id="diff-from"
            className="choice"
            data-field="record.from"
            value={from.id}
            onChange={(event) => chooseInRecord(setupId, { from: event.currentTarget.value, to: to?.id ?? null })}
          >
            {snapshots.map((snapshot) => (
              <option key={snapshot.id} value={snapshot.id}>
                {snapshot.name}
              </option>
            ))}
          </select>{' '}
          <label htmlFor="diff-to">to</label>{' '}
          <select
            id="diff-to"
            className="choice"
            data-field="record.to"
            value={to?.id ?? AS_IT_STANDS}
            onChange={({ currentTarget: { value } }) =>
              chooseInRecord(setupId, { from: from.id, to: value === AS_IT_STANDS ? null : value })
            }
          >
            <option value={AS_IT_STANDS}>as it stands</option>
            {others.map((snapshot) => (
              <option key={snapshot.id} value={snapshot.id}>
                {snapshot.name}
              </option>
            ))}
          </select>
        </h2>
        <p className="name">
          {diff.differ.length} {diff.differ.length === 1 ? 'differs' : 'differ'}, {diff.same} the same
        </p>
      </header>
      <div className="diff-page">
        <div>
          {diff.differ.length > 0 && <Rows caption="Set and measured" rows={diff.differ} to={to?.name ?? 'now'} />}
          {diff.differ.length === 0 && putBack !== null && <Done name={from.name} rows={putBack} />}
          {diff.differ.length === 0 && putBack === null && (
            <p className="note">Every setting, the form and every field of the bow, the arrows and the archer are the same.</p>
          )}
          {diff.figures.length > 0 && <Rows caption="Worked out from them" rows={diff.figures} to={to?.name ?? 'now'} />}
          {diff.versions !== null && <p className="note">{diff.versions}</p>}
        </div>
        <div className="diff-aside">
          <h3 className="name">{`${from.name}, ${dayText(from.taken, today)}`}</h3>
          <p className={from.note === '' ? 'faint' : 'diff-note'}>{from.note === '' ? 'No note was made.' : from.note}</p>
          {to === null ? (
            <PutBack setupId={setupId} compared={compared} diff={diff} />
          ) : (
            <OnlyNow setupId={setupId} from={from} />
          )}
          <p>
            <button type="button" className="link" onClick={putAway}>
              Put “{from.name}” away
            </button>
          </p>
        </div>
      </div>
    </section>
  );
}

function OnlyNow({ setupId, from }: { setupId: Id; from: Snapshot }) {
  return (
    <p className="note">
      To put one back,{' '}
      <button type="button" className="link" onClick={() => chooseInRecord(setupId, { from: from.id, to: null })}>
        compare “{from.name}” with how it stands
      </button>
      .
    </p>
  );
}

/** After putting back: what changed, the other way round. The bench's figures have moved; the bow's own screws have not. */
function Done({ name, rows }: { name: string; rows: readonly DiffRow[] }) {
  return (
    <div role="status">
      <p>“{name}” stands again in the notebook, and Undo takes it back. Set the bow itself to it before you shoot:</p>
      <Rows
        caption="Put back"
        rows={rows.map((row) => ({ ...row, then: row.now, now: row.then, difference: '' }))}
        to="now again"
      />
    </div>
  );
}

function Rows({ caption, rows, to }: { caption: string; rows: readonly DiffRow[]; to: string }) {
  return (
    <table className="table diff-table">
      <caption className="name">{caption}</caption>
      <thead className="heard">
        <tr>
          <th scope="col">what</th>
          <th scope="col">then</th>
          <td />
          <th scope="col">{to}</th>
          <th scope="col">difference</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key}>
            <th scope="row">{row.name}</th>
            <td className="then">
              <Fraction>{row.then}</Fraction>
            </td>
            <td className="to" aria-hidden="true">
              <svg width="22" height="8">
                <path d="M0 4H15" />
                <path className="tip" d="M22 4l-8-2.6v5.2z" />
              </svg>
            </td>
            <td className="now">
              <Fraction>{row.now}</Fraction>
            </td>
            <td className="difference">
              <Fraction>{row.difference}</Fraction>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
