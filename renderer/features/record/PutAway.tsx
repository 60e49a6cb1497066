import type { Id } from '../../../core/model/common.ts';
import { edited } from '../../state/bench.ts';
import { dayText, now } from '../../state/clock.ts';
import { useBench, useBenchApi } from '../../state/useBench.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { putAwayOf } from './selectors.ts';

/** The snapshots that were put away: out of the shelf and the drawing, never lost. */
export function PutAway({ bowId }: { bowId: Id }) {
  const records = useBench((state) => state.records);
  const bench = useBenchApi();
  const away = putAwayOf(records, bowId);
  if (away.length === 0) return null;
  const takeOut = (id: Id, name: string) =>
    void bench
      .getState()
      .change(`Take out “${name}”`, (all) => {
        const snapshot = all.get(id);
        return snapshot?.kind === 'snapshot' ? [edited(snapshot, { archivedAt: null })] : [];
      })
      .then(keepFocus);
  return (
    <section className="put-away">
      <h2 className="plate">Put away</h2>
      <ul>
        {away.map((snapshot) => (
          <li key={snapshot.id}>
            <span>{snapshot.name}</span>
            <span className="faint">{dayText(snapshot.taken, now())}</span>
            <button type="button" className="link" onClick={() => takeOut(snapshot.id, snapshot.name)}>
              Take out again<span className="heard">: {snapshot.name}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
