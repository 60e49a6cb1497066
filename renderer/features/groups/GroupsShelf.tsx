import { useState } from 'react';
import { Dialog } from '../../design/index.ts';
import { dayText, now } from '../../state/clock.ts';
import { groupsOf } from '../../state/selectors.ts';
import { useBench, useBundle, useUnits } from '../../state/useBench.ts';
import { RackItem } from '../frame/RackItem.tsx';
import { pairOf } from './derive.ts';
import { NewGroup } from './NewGroup.tsx';
import { arrowsText, shelfText } from './shelfText.ts';
import { turnTo, usePage } from './store.ts';

/** The groups of this set-up in the rack, newest first. A fletched one is put in the first place, a bare one in the second. */
export function GroupsShelf() {
  const bundle = useBundle();
  return bundle === null ? null : <Shelf setupId={bundle.setup.id} />;
}

function Shelf({ setupId }: { setupId: string }) {
  const bundle = useBundle();
  const units = useUnits();
  const groups = useBench((state) => groupsOf(state.records, state.setupId));
  const page = usePage(setupId);
  const pair = pairOf(groups, page);
  const [adding, setAdding] = useState(false);
  const today = now();
  if (bundle === null) return null;
  return (
    <>
      {groups.length > 0 && <h2>{bundle.archer.name}’s groups</h2>}
      {[...groups].reverse().map((group) => (
        <RackItem
          key={group.id}
          text={shelfText(group, units)}
          small={`${dayText(group.context.shotAt, today)}, ${arrowsText(group)}`}
          on={group.id === pair.first?.id || group.id === pair.second?.id}
          onChoose={() =>
            turnTo(
              setupId,
              group.fletching === 'bare' && pair.first !== null && pair.first.id !== group.id
                ? { firstId: pair.first.id, secondId: group.id, entering: 'second' }
                : {
                    firstId: group.id,
                    secondId: pair.second?.id === group.id ? null : (pair.second?.id ?? null),
                    entering: 'first',
                  },
            )
          }
        />
      ))}
      {groups.length > 0 && <RackItem text="New group" small="fletched or bare" quiet onChoose={() => setAdding(true)} />}
      {adding && (
        <Dialog title="A new group" onClose={() => setAdding(false)} foot={<></>}>
          <NewGroup bundle={bundle} latest={groups.at(-1) ?? null} onDone={() => setAdding(false)} />
        </Dialog>
      )}
    </>
  );
}
