import { now, whenText } from '../../state/clock.ts';
import { trialsOf } from '../../state/selectors.ts';
import { useBench, useBundle, useUnits } from '../../state/useBench.ts';
import { RackItem } from '../frame/RackItem.tsx';
import { sheetOf, stateText } from './derive.ts';
import { chooseTrial, useChosenTrial } from './store.ts';
import { withUnit } from './words.ts';

/** The trials of this set-up in the rack: those that go on first, then those that were ended, newest first. */
export function TrialsShelf() {
  const bundle = useBundle();
  return bundle === null ? null : <Shelf setupId={bundle.setup.id} name={bundle.archer.name} />;
}

function Shelf({ setupId, name }: { setupId: string; name: string }) {
  const units = useUnits();
  const records = useBench((state) => state.records);
  const trials = trialsOf(records, setupId, false);
  const chosen = useChosenTrial(setupId);
  const today = now();
  if (trials.length === 0) return null;
  const inOrder = [...trials.filter(({ ended }) => ended === null), ...trials.filter(({ ended }) => ended !== null)];
  return (
    <>
      <h2>{name}’s trials</h2>
      {inOrder.map((trial) => (
        <RackItem
          key={trial.id}
          text={withUnit(trial.name)}
          small={`${whenText(trial.born, today)}, ${stateText(trial, sheetOf(records, trial, units))}`}
          on={trial.id === chosen}
          onChoose={() => chooseTrial(setupId, trial.id)}
        />
      ))}
      <RackItem text="New trial" small="one of seven" quiet onChoose={() => chooseTrial(setupId, null)} />
    </>
  );
}
