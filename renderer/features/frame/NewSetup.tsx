import { useState } from 'react';
import type { Hand } from '../../../core/model/archer.ts';
import { Choice, Dialog, Words } from '../../design/index.ts';
import { born } from '../../state/bench.ts';
import { newArcher, newArrowSet, newBow, newSetup, noSettings, readAt } from '../../state/births.ts';
import { recordsOf } from '../../state/selectors.ts';
import { timedWith } from '../../state/timed.ts';
import { useBench, useBenchApi, useBundle } from '../../state/useBench.ts';

const NEW = 'new';
const COPY = 'copy';

/** A further set-up: from an archer, a bow and arrows that are there, or new ones. A copy of the arrows lets one thing be varied. */
export function NewSetup({ onClose }: { onClose(): void }) {
  const records = useBench((state) => state.records);
  const bench = useBenchApi();
  const here = useBundle();
  const archers = recordsOf(records, 'archer');
  const bows = recordsOf(records, 'bow');
  const arrowSets = recordsOf(records, 'arrowSet');
  const [archerId, setArcherId] = useState<string>(here?.archer.id ?? NEW);
  const [bowId, setBowId] = useState<string>(here?.bow.id ?? NEW);
  const [arrowSetId, setArrowSetId] = useState<string>(here === null ? NEW : COPY);
  const [hand, setHand] = useState<Hand>(here?.archer.hand ?? 'right');
  const [name, setName] = useState('');

  const archerName = archers.find((one) => one.id === archerId)?.name ?? 'New archer';
  const suggested = archerId === NEW ? 'New archer' : `${archerName}, second set-up`;

  const begin = async () => {
    const archer = archers.find((one) => one.id === archerId) ?? newArcher(name.trim() || 'New archer', hand);
    const bow = bows.find((one) => one.id === bowId) ?? newBow('New bow', archer.hand);
    const copied = here === null ? undefined : { ...newArrowSet(''), ...here.arrowSet };
    const fresh = newArrowSet('New arrows');
    const arrowSet =
      arrowSetId === COPY && copied !== undefined
        ? {
            ...copied,
            id: fresh.id,
            revision: 0,
            born: fresh.born,
            archivedAt: null,
            lookedOver: null,
            weighed: null,
            // A copy is to be varied: what was weighed, balanced and numbered is the other arrows.
            balance: null,
            arrows: [],
            name: `${copied.name}, copy`.slice(0, 80),
          }
        : (arrowSets.find((one) => one.id === arrowSetId) ?? fresh);
    // The settings go along with the bow they were turned on; what was measured on another archer or other arrows does not.
    const settings =
      here !== null && here.bow.id === bow.id
        ? {
            ...here.setup.settings,
            ...timedWith(null, arrowSet, here.setup.settings),
            pointAhead: null,
            ...(here.archer.id === archer.id ? {} : readAt(null, archer)),
          }
        : noSettings;
    const setup = newSetup((name.trim() || suggested).slice(0, 80), archer, bow, arrowSet, settings);
    const done = await bench
      .getState()
      .change(`Begin ${setup.name}`, (all) => [archer, bow, arrowSet, setup].filter((record) => !all.has(record.id)).map(born));
    if (done) {
      bench.getState().choose(setup.id);
      bench.getState().go('bow');
      onClose();
    }
  };

  const listed = (list: readonly { id: string; name: string }[]) => list.map((one) => ({ value: one.id, text: one.name }));
  return (
    <Dialog
      title="Add a set-up"
      onClose={onClose}
      foot={
        <>
          <button type="button" className="btn go" onClick={() => void begin()}>
            Begin it
          </button>
          <button type="button" className="btn" onClick={onClose}>
            Cancel
          </button>
        </>
      }
    >
      <p className="note">
        A set-up is one archer with one bow and one set of arrows. Readings and marks hold for that set-up only.
      </p>
      <Words name="its name" value={name} onKeep={setName} hint={`Left empty: “${suggested}”.`} />
      <Choice
        name="archer"
        value={archerId}
        options={[...listed(archers), { value: NEW, text: 'a new archer' }]}
        onKeep={setArcherId}
      />
      {archerId === NEW && (
        <Choice
          name="hand"
          value={hand}
          options={[
            { value: 'right', text: 'right: draws with the right hand' },
            { value: 'left', text: 'left: draws with the left hand' },
          ]}
          onKeep={(value) => setHand(value)}
        />
      )}
      <Choice name="bow" value={bowId} options={[...listed(bows), { value: NEW, text: 'a new bow' }]} onKeep={setBowId} />
      <Choice
        name="arrows"
        value={arrowSetId}
        options={[
          ...(here === null ? [] : [{ value: COPY, text: `a copy of ${here.arrowSet.name}, to vary` }]),
          ...listed(arrowSets),
          { value: NEW, text: 'new arrows' },
        ]}
        onKeep={setArrowSetId}
      />
    </Dialog>
  );
}
