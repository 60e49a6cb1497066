import { dayText } from '../../../core/findings/index.ts';
import { now } from '../../state/clock.ts';
import { snapshotsOf } from '../../state/selectors.ts';
import { useBench, useBundle } from '../../state/useBench.ts';
import { RackItem } from '../frame/RackItem.tsx';
import { comparedOf } from './selectors.ts';
import { chooseInRecord, useRecordChoice } from './store.ts';

/** The snapshots of this bow, newest first, under the state in which it stands. The two that are compared are marked. */
export function RecordShelf() {
  const records = useBench((state) => state.records);
  const bundle = useBundle();
  const choice = useRecordChoice(bundle?.setup.id ?? null);
  if (bundle === null) return null;
  const setupId = bundle.setup.id;
  const snapshots = snapshotsOf(records, bundle.bow.id);
  const compared = comparedOf(records, bundle, choice);
  const today = now();
  return (
    <>
      <h2>Snapshots of this bow</h2>
      {snapshots.length === 0 && <p className="rack-none">None has been taken.</p>}
      {snapshots.length > 0 && (
        <RackItem
          text="As it stands"
          small="now"
          on={compared !== null && compared.to === null && compared.elsewhere === null}
          onChoose={() => chooseInRecord(setupId, { from: compared?.elsewhere === null ? compared.from.id : null, to: null })}
        />
      )}
      {snapshots.map((snapshot) => (
        <RackItem
          key={snapshot.id}
          text={snapshot.name}
          small={
            snapshot.setupId === setupId
              ? dayText(snapshot.taken, today)
              : `${dayText(snapshot.taken, today)}, ${snapshot.state.setup.name}`
          }
          on={compared?.from.id === snapshot.id || compared?.to?.id === snapshot.id}
          onChoose={() => chooseInRecord(setupId, { from: snapshot.id, to: null })}
        />
      ))}
    </>
  );
}
