import { useState } from 'react';
import { now, whenText } from '../../state/clock.ts';
import { groupsOf } from '../../state/selectors.ts';
import { useBench, useBundle, useUnits } from '../../state/useBench.ts';
import { RackItem } from '../frame/RackItem.tsx';
import { besideOf, pairOf } from './derive.ts';
import { NewGroupPage } from './NewGroup.tsx';
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
          small={`${whenText(group.context.shotAt, today)}, ${arrowsText(group)}`}
          on={group.id === pair.first?.id || group.id === pair.second?.id}
          onChoose={() => turnTo(setupId, besideOf(pair, group))}
        />
      ))}
      {groups.length > 0 && <RackItem text="New group" small="fletched or bare" quiet onChoose={() => setAdding(true)} />}
      {adding && <NewGroupPage bundle={bundle} groups={groups} onClose={() => setAdding(false)} />}
    </>
  );
}
