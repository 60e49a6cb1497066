import { PutAway } from '../../design/PutAway.tsx';
import type { Id } from '../../../core/model/common.ts';
import { now, whenText } from '../../state/clock.ts';
import { trialsOf } from '../../state/selectors.ts';
import { useBench, useBenchApi, useUnits } from '../../state/useBench.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { sheetOf, stateText } from './derive.ts';
import { setTrial } from './edits.ts';

/** The trials of this set-up that were put away, with what was shot and tried in them. */
export function TrialsAway({ setupId }: { setupId: Id }) {
  const records = useBench((state) => state.records);
  const units = useUnits();
  const bench = useBenchApi();
  const today = now();
  return (
    <PutAway
      items={trialsOf(records, setupId, true).map((trial) => ({
        id: trial.id,
        name: trial.name,
        small: `${whenText(trial.born, today)}, ${stateText(trial, sheetOf(records, trial, units))}`,
      }))}
      onTakeOut={(id) => void setTrial(bench, id, 'A trial taken out again', { archivedAt: null }).then(keepFocus)}
    />
  );
}
