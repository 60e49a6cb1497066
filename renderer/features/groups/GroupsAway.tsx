import { useMemo } from 'react';
import type { Id } from '../../../core/model/common.ts';
import { PutAway } from '../../design/PutAway.tsx';
import { useBench, useBenchApi } from '../../state/useBench.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { groupsAway } from './derive.ts';
import { setGroup } from './edits.ts';
import { useGroupLines } from './useGroupLines.ts';

/** The groups of this set-up that were put away: they count in no reading until they are taken out again. */
export function GroupsAway({ setupId }: { setupId: Id }) {
  const records = useBench((state) => state.records);
  const bench = useBenchApi();
  const away = useMemo(() => groupsAway(records, setupId), [records, setupId]);
  const lines = useGroupLines(away);
  return (
    <PutAway
      items={away.map((group) => ({
        id: group.id,
        name: lines.get(group.id)?.text ?? '',
        small: lines.get(group.id)?.small ?? '',
      }))}
      onTakeOut={(id) => void setGroup(bench, id, 'A group taken out again', { archivedAt: null }).then(keepFocus)}
    />
  );
}
