import { useMemo } from 'react';
import { dayText } from '../../../../core/findings/index.ts';
import type { Id } from '../../../../core/model/common.ts';
import type { SightMark } from '../../../../core/model/sightMark.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import { PutAway } from '../../../design/PutAway.tsx';
import { now } from '../../../state/clock.ts';
import { useBench, useBenchApi, useUnits } from '../../../state/useBench.ts';
import { keepFocus } from '../../frame/keepFocus.ts';
import { putMarkAway } from './edits.ts';
import { farText } from './words.ts';

/** Marks that were put away: out of table and fit until they are taken out again. */
export function MarksAway({ setupId }: { setupId: Id }) {
  const bench = useBenchApi();
  const units = useUnits();
  const records = useBench((state) => state.records);
  const away = useMemo(() => {
    const found: SightMark[] = [];
    for (const record of records.values())
      if (record.kind === 'sightMark' && record.setupId === setupId && record.archivedAt !== null) found.push(record);
    return found.sort((a, b) => a.distance - b.distance);
  }, [records, setupId]);
  return (
    <PutAway
      items={away.map(({ id, distance, reading, context }) => ({
        id,
        name: `${farText(distance, units)}, ${textQuantity(reading, 'reading', units)}`,
        small: dayText(context.shotAt, now()),
      }))}
      onTakeOut={(id) => {
        const mark = away.find((one) => one.id === id);
        if (mark !== undefined) void putMarkAway(bench, mark, false).then(keepFocus);
      }}
    />
  );
}
