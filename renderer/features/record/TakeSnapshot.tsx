import { useState } from 'react';
import { frozenFigures } from '../../../core/compare/index.ts';
import { dayText } from '../../../core/findings/index.ts';
import type { ShotBundle } from '../../../core/model/bundle.ts';
import { Dialog, Words } from '../../design/index.ts';
import { born } from '../../state/bench.ts';
import { now } from '../../state/clock.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { chooseInRecord } from './store.ts';
import { snapshotOf, whatIsKept } from './takeSnapshot.ts';

/** Freezes the set-up as it stands, under a name, with a note. */
export function TakeSnapshot({ bundle, onClose }: { bundle: ShotBundle; onClose(): void }) {
  const bench = useBenchApi();
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const suggested = `${bundle.setup.name}, ${dayText(now())}`.slice(0, 80);

  const take = async () => {
    const snapshot = snapshotOf(bundle, frozenFigures(bundle), {
      id: crypto.randomUUID(),
      name: name.trim() || suggested,
      note,
      taken: now(),
      programVersion: bench.getState().info?.version ?? '',
    });
    const done = await bench.getState().change(`Snapshot “${snapshot.name}”`, () => [born(snapshot)]);
    if (!done) return;
    chooseInRecord(bundle.setup.id, { from: snapshot.id, to: null });
    onClose();
  };

  return (
    <Dialog
      title="Take a snapshot"
      onClose={onClose}
      foot={
        <>
          <button type="button" className="btn go" onClick={() => void take()}>
            Keep it
          </button>
          <button type="button" className="btn" onClick={onClose}>
            Cancel
          </button>
        </>
      }
    >
      <p className="note">{whatIsKept(bundle.groups)} A snapshot is never changed again; it can be put away.</p>
      <Words name="its name" value={name} onKeep={setName} field="record.snapshotName" hint={`Left empty: “${suggested}”.`} />
      <Words name="note" value={note} onKeep={setNote} long most={4000} />
    </Dialog>
  );
}
