import { useState } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import { FaceId, type ShotGroup } from '../../../core/model/group.ts';
import { face } from '../../../core/group/index.ts';
import { Choice, Figure, Fraction, Mark } from '../../design/index.ts';
import { born } from '../../state/bench.ts';
import { newGroup } from '../../state/births.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { useFindings } from '../frame/useFindings.ts';
import { turnTo } from './store.ts';

export const faceOptions = FaceId.options.map((value) => ({ value, text: face(value).name }));

/** A new group: fletched or bare, how far, on which face. The caution stands where the bare shaft is about to be shot. */
export function NewGroup({ bundle, latest, onDone }: { bundle: Bundle; latest: ShotGroup | null; onDone?(): void }) {
  const bench = useBenchApi();
  const [distance, setDistance] = useState(latest?.context.distance ?? 18);
  const [faceId, setFaceId] = useState<FaceId>(latest?.context.face ?? '40');

  const findings = useFindings();
  const stop = findings.find((finding) => finding.level === 'stop');

  const begin = async (fletching: ShotGroup['fletching']) => {
    const group = newGroup(bundle, fletching, { distance, face: faceId });
    const done = await bench.getState().change(`Begin a ${fletching} group`, () => [born(group)]);
    if (!done) return;
    // It is put beside the newest group of the other kind at its distance, so that the pair to be read is on the page at once.
    const partner = latest !== null && latest.fletching !== fletching && latest.context.distance === distance ? latest.id : null;
    turnTo(
      bundle.setup.id,
      partner === null
        ? { firstId: group.id, secondId: null, entering: 'first' }
        : { firstId: partner, secondId: group.id, entering: 'second' },
    );
    onDone?.();
  };

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
        Bare shafts fly wide: full butt and backstop, nobody ahead of the line, start at 10 m. Your range’s rules and its officer
        govern.
      </p>
      <div className="acts">
        <button type="button" className="btn go" onClick={() => void begin('fletched')}>
          Begin a fletched group
        </button>
        <button type="button" className="btn" onClick={() => void begin('bare')}>
          Begin a bare group
        </button>
      </div>
    </div>
  );
}
