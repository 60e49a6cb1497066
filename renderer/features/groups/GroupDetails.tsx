import { useState } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import { Choice, Dialog, Figure, Words } from '../../design/index.ts';
import { now } from '../../state/clock.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { setContext, setGroup } from './edits.ts';
import { faceOptions } from './NewGroup.tsx';
import { LeftOut } from './entry/LeftOut.tsx';
import { SaveShots } from './entry/SaveShots.tsx';
import { KeptPhoto } from './photo/KeptPhoto.tsx';
import { turnTo } from './store.ts';
import { useGroupLines } from './useGroupLines.ts';

interface Props {
  bundle: Bundle;
  first: ShotGroup;
  second: ShotGroup | null;
  groups: readonly ShotGroup[];
}

const NONE = '';

/** Which two groups are on the page, and what was the case while they were shot. */
export function GroupDetails({ bundle, first, second, groups }: Props) {
  const lines = useGroupLines(groups);
  const [open, setOpen] = useState<ShotGroup['id'] | null>(null);
  const options = [...groups]
    .reverse()
    .map(({ id }) => ({ value: id, text: `${lines.get(id)?.text ?? ''}, ${lines.get(id)?.when ?? ''}` }));
  const shown = groups.find((group) => group.id === open) ?? null;
  return (
    <section className="group-details">
      <h2 className="plate">On the face</h2>
      <Choice
        name="first"
        value={first.id}
        options={options}
        onKeep={(firstId) => turnTo(bundle.setup.id, { firstId, secondId: second?.id === firstId ? null : (second?.id ?? null) })}
      />
      <Choice
        name="second"
        value={second?.id ?? NONE}
        options={[{ value: NONE, text: 'none' }, ...options.filter((option) => option.value !== first.id)]}
        onKeep={(secondId) =>
          turnTo(bundle.setup.id, {
            firstId: first.id,
            secondId: secondId === NONE ? null : secondId,
            enteringId: secondId === NONE ? first.id : secondId,
          })
        }
      />
      <div className="acts">
        <button type="button" className="link" onClick={() => setOpen(first.id)}>
          How the first was shot
        </button>
        {second !== null && (
          <button type="button" className="link" onClick={() => setOpen(second.id)}>
            How the second was shot
          </button>
        )}
      </div>
      <div className="acts">
        <SaveShots group={first} text={second === null ? 'Save the shots as CSV' : 'Save the first’s shots as CSV'} />
        {second !== null && <SaveShots group={second} text="Save the second’s shots as CSV" />}
        <KeptPhoto group={first} text={second === null ? 'The photo of the target' : 'The first’s photo of the target'} />
        {second !== null && <KeptPhoto group={second} text="The second’s photo of the target" />}
      </div>
      <LeftOut group={first} />
      {second !== null && <LeftOut group={second} />}
      {shown !== null && <HowItWasShot group={shown} onClose={() => setOpen(null)} />}
    </section>
  );
}

function HowItWasShot({ group, onClose }: { group: ShotGroup; onClose(): void }) {
  const bench = useBenchApi();
  const { context } = group;
  const away = async () => {
    const done = await setGroup(bench, group.id, 'A group put away', { archivedAt: now() });
    if (done) onClose();
  };
  return (
    <Dialog
      title="How this group was shot"
      onClose={onClose}
      foot={
        <>
          <button type="button" className="btn" onClick={onClose}>
            Close
          </button>
          <button type="button" className="link" onClick={() => void away()}>
            Put this group away
          </button>
        </>
      }
    >
      <Choice
        name="arrows were"
        value={group.fletching}
        options={[
          { value: 'fletched', text: 'fletched' },
          { value: 'bare', text: 'bare' },
        ]}
        onKeep={(fletching) => void setGroup(bench, group.id, 'Fletched or bare', { fletching })}
      />
      <Figure
        measure="shootingDistance"
        name="distance"
        value={context.distance}
        required
        onKeep={(distance) => distance !== null && void setContext(bench, group.id, 'Distance of a group', { distance })}
      />
      <Choice
        name="face"
        value={context.face}
        options={faceOptions}
        onKeep={(face) => void setContext(bench, group.id, 'Face of a group', { face })}
      />
      <Words
        name="weather"
        value={context.weather}
        most={200}
        onKeep={(weather) => void setContext(bench, group.id, 'Weather of a group', { weather })}
      />
      <Words
        name="light"
        value={context.light}
        most={200}
        onKeep={(light) => void setContext(bench, group.id, 'Light of a group', { light })}
      />
      <Words
        name="kit"
        value={context.kit}
        most={200}
        onKeep={(kit) => void setContext(bench, group.id, 'Kit of a group', { kit })}
        hint="Tab, string, clothing: what may have been other than usual."
      />
      <Words
        name="note"
        value={group.note}
        long
        most={4000}
        onKeep={(text) => void setGroup(bench, group.id, 'Note on a group', { note: text })}
      />
    </Dialog>
  );
}
