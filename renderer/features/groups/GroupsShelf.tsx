import { useState } from 'react';
import { groupsOf } from '../../state/selectors.ts';
import { useBench, useBundle } from '../../state/useBench.ts';
import { RackItem } from '../frame/RackItem.tsx';
import { besideOf, pairOf } from './derive.ts';
import { NewGroupPage } from './NewGroup.tsx';
import { turnTo, usePage } from './store.ts';
import { useGroupLines } from './useGroupLines.ts';

/** The groups of this set-up in the rack, newest first. A fletched one is put in the first place, a bare one in the second. */
export function GroupsShelf() {
  const bundle = useBundle();
  return bundle === null ? null : <Shelf setupId={bundle.setup.id} />;
}

function Shelf({ setupId }: { setupId: string }) {
  const bundle = useBundle();
  const groups = useBench((state) => groupsOf(state.records, state.setupId));
  const lines = useGroupLines(groups);
  const page = usePage(setupId);
  const pair = pairOf(groups, page);
  const [adding, setAdding] = useState(false);
  if (bundle === null) return null;
  return (
    <>
      {groups.length > 0 && <h2>{bundle.archer.name}’s groups</h2>}
      {[...groups].reverse().map((group) => (
        <RackItem
          key={group.id}
          text={lines.get(group.id)?.text ?? ''}
          small={lines.get(group.id)?.small ?? ''}
          on={group.id === pair.first?.id || group.id === pair.second?.id}
          onChoose={() => turnTo(setupId, besideOf(pair, group))}
        />
      ))}
      {groups.length > 0 && <RackItem text="New group" small="fletched or bare" quiet onChoose={() => setAdding(true)} />}
      {adding && <NewGroupPage bundle={bundle} groups={groups} onClose={() => setAdding(false)} />}
    </>
  );
}
