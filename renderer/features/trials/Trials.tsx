import type { Bundle } from '../../../core/model/bundle.ts';
import { trialsOf } from '../../state/selectors.ts';
import { useBench, useBundle } from '../../state/useBench.ts';
import { ChooseTrial } from './ChooseTrial.tsx';
import { useChosenTrial } from './store.ts';
import { TrialPage } from './TrialPage.tsx';
import './trials.css';
import './shootPart.css';
import './readPart.css';

/** The trade's tuning tests, each a numbered page: plan, shoot, read, change. */
export function Trials() {
  const bundle = useBundle();
  return bundle === null ? null : <OfSetup bundle={bundle} />;
}

function OfSetup({ bundle }: { bundle: Bundle }) {
  const trials = useBench((state) => trialsOf(state.records, state.setupId, false));
  const chosen = useChosenTrial(bundle.setup.id);
  const trial = trials.find(({ id }) => id === chosen);
  return trial === undefined ? (
    <ChooseTrial bundle={bundle} trials={trials} />
  ) : (
    <TrialPage key={trial.id} bundle={bundle} trial={trial} />
  );
}
