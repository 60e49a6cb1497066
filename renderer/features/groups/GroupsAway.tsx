import { useMemo } from 'react';
import type { Id } from '../../../core/model/common.ts';
import { PutAway } from '../../design/PutAway.tsx';
import { now, whenText } from '../../state/clock.ts';
import { useBench, useBenchApi, useUnits } from '../../state/useBench.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { groupsAway } from './derive.ts';
import { setGroup } from './edits.ts';
import { arrowsText, shelfText } from './shelfText.ts';

/** The groups of this set-up that were put away: they count in no reading until they are taken out again. */
export function GroupsAway({ setupId }: { setupId: Id }) {
  const records = useBench((state) => state.records);
  const units = useUnits();
  const bench = useBenchApi();
  const today = now();
  const away = useMemo(() => groupsAway(records, setupId), [records, setupId]);
  return (
    <PutAway
      items={away.map((group) => ({
        id: group.id,
        name: shelfText(group, units),
        small: `${whenText(group.context.shotAt, today)}, ${arrowsText(group)}`,
      }))}
      onTakeOut={(id) => void setGroup(bench, id, 'A group taken out again', { archivedAt: null }).then(keepFocus)}
    />
  );
}
