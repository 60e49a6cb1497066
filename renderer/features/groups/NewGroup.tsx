import { useEffect, useRef, useState } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import { FaceId, type ShotGroup } from '../../../core/model/group.ts';
import { face } from '../../../core/group/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { Choice, Dialog, Figure, Fraction, Mark } from '../../design/index.ts';
import { born } from '../../state/bench.ts';
import { newGroup } from '../../state/births.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { useFindings } from '../frame/useFindings.ts';
import { besideOf, partnerOf } from './derive.ts';
import { focusEntry } from './entry/focusEntry.ts';
import { turnTo } from './store.ts';

export const faceOptions = FaceId.options.map((value) => ({ value, text: face(value).name }));

interface Props {
  bundle: Bundle;
  groups: readonly ShotGroup[];
  /** Given when it stands in a page over the work. */
  onDone?(): void;
}

/** A new group: fletched or bare, how far, on which face. The caution stands where the bare shaft is about to be shot. */
export function NewGroup({ bundle, groups, onDone }: Props) {
  const latest = groups.at(-1) ?? null;
  const bench = useBenchApi();
  const units = useUnits();
  const [distance, setDistance] = useState(latest?.context.distance ?? 18);
  const [faceId, setFaceId] = useState<FaceId>(latest?.context.face ?? '40');

  const findings = useFindings();
  const stop = findings.find((finding) => finding.level === 'stop');

  const go = useRef<HTMLButtonElement>(null);
  const alone = onDone === undefined;
  // On a page of its own there is one thing to do: whoever came by the bar goes on from there.
  useEffect(() => {
    const here = document.activeElement;
    if (alone && (here === null || here === document.body || here.closest('nav') !== null)) go.current?.focus();
  }, [alone]);

  const begin = async (fletching: ShotGroup['fletching'], byKey: boolean) => {
    const group = newGroup(bundle, fletching, { distance, face: faceId });
    const done = await bench.getState().change(`Begin a ${fletching} group`, () => [born(group)]);
    if (!done) return;
    // It is put beside the group it will be read against, when there is one that was shot alike.
    const partner = partnerOf(groups, group);
    turnTo(bundle.setup.id, besideOf({ first: partner, second: null }, group));
    onDone?.();
    focusEntry(byKey ? 'typed' : 'face');
  };

  const cancel = onDone !== undefined && (
    <button type="button" className="link" onClick={onDone}>
      Cancel
    </button>
  );
  if (stop !== undefined) {
    return (
      <section className="next stopped">
        <h2 className="plate">
          <Mark level="stop" />
          <Fraction>{stop.title}</Fraction>
        </h2>
        <p className="note">
          <Fraction>{stop.detail}</Fraction> No group is begun with this set-up until that is mended; the finding says where.
        </p>
        {cancel}
      </section>
    );
  }
  return (
    <div className="form new-group">
      <Figure
        measure="shootingDistance"
        name="distance"
        value={distance}
        required
        onKeep={(value) => value !== null && setDistance(value)}
        field="group.distance"
      />
      <Choice name="face" value={faceId} options={faceOptions} onKeep={(value) => setFaceId(value)} />
      <p className="note caution-line">
        Bare shafts fly wide: full butt and backstop, nobody ahead of the line, start at{' '}
        {textQuantity(10, 'distance', units, { digits: 0 })}. Your range’s rules and its officer govern.
      </p>
      <div className="acts">
        <button ref={go} type="button" className="btn go" onClick={({ detail }) => void begin('fletched', detail === 0)}>
          Begin a fletched group
        </button>
        <button type="button" className="btn" onClick={({ detail }) => void begin('bare', detail === 0)}>
          Begin a bare group
        </button>
        {cancel}
      </div>
    </div>
  );
}

/** The same over the work. */
export function NewGroupPage({ bundle, groups, onClose }: { bundle: Bundle; groups: readonly ShotGroup[]; onClose(): void }) {
  return (
    <Dialog title="A new group" onClose={onClose} foot={<></>}>
      <NewGroup bundle={bundle} groups={groups} onDone={onClose} />
    </Dialog>
  );
}
