import { dayText } from '../../../core/findings/index.ts';
import type { Id } from '../../../core/model/common.ts';
import { PutAway } from '../../design/PutAway.tsx';
import { edited } from '../../state/bench.ts';
import { now } from '../../state/clock.ts';
import { useBench, useBenchApi } from '../../state/useBench.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { putAwayOf } from './selectors.ts';

/** The snapshots of this bow that were put away. */
export function SnapshotsAway({ bowId }: { bowId: Id }) {
  const records = useBench((state) => state.records);
  const bench = useBenchApi();
  const today = now();
  const takeOut = (id: Id, name: string) =>
    void bench
      .getState()
      .change(`Take out “${name}”`, (all) => {
        const snapshot = all.get(id);
        return snapshot?.kind === 'snapshot' ? [edited(snapshot, { archivedAt: null })] : [];
      })
      .then(keepFocus);
  return (
    <PutAway
      items={putAwayOf(records, bowId).map(({ id, name, taken }) => ({ id, name, small: dayText(taken, today) }))}
      onTakeOut={takeOut}
    />
  );
}
