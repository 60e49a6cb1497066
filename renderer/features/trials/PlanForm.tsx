import type { Trial, TrialKind } from '../../../core/model/trial.ts';
import { Words } from '../../design/index.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { CountField } from './CountField.tsx';
import { setPlan, setTrial } from './edits.ts';
import { ListField } from './ListField.tsx';

interface Names {
  /** Where it is shot from; null where that is all one. */
  readonly distances: string | null;
  readonly steps?: string;
  readonly ends: string | null;
  readonly arrows: string;
  readonly others?: string;
}

/** What a plan's figures are called in each trial; what is not named there is not asked. */
const names: Readonly<Record<TrialKind, Names>> = {
  'bare shaft': { distances: 'distances', ends: 'ends at each', arrows: 'fletched an end', others: 'bare an end' },
  'paper tear': { distances: 'distances to the paper', ends: null, arrows: 'shots at each', others: 'bare shafts at each' },
  'walk-back': { distances: 'distances', ends: 'ends at each', arrows: 'arrows an end' },
  'brace height': { distances: 'distance', steps: 'brace heights', ends: 'ends at each', arrows: 'arrows an end' },
  'nocking point': {
    distances: 'distance',
    steps: 'nocking points',
    ends: 'ends at each',
    arrows: 'fletched an end',
    others: 'bare an end',
  },
  clearance: { distances: null, ends: null, arrows: 'shots' },
  'a against b': { distances: 'distance', ends: 'ends', arrows: 'of A an end', others: 'of B an end' },
};

const MOST_DISTANCES = 12;
const MOST_STEPS = 20;
const MOST_ARROWS = 24;
const MOST_ENDS = 40;

/** The figures of a trial's plan. They may be altered later too: what was shot stays, whatever the plan becomes. */
export function PlanForm({ trial }: { trial: Trial }) {
  const bench = useBenchApi();
  const { plan, trial: kind } = trial;
  const named = names[kind];
  const set = (label: string) => (patch: Parameters<typeof setPlan>[3]) => setPlan(bench, trial.id, label, patch);
  return (
    <div className="form plan-form">
      {kind === 'a against b' && (
        <Words
          name="the change on trial"
          value={trial.between}
          most={200}
          {...(trial.between === '' ? { hint: 'For instance: A the plain string, B with silencers on it.' } : {})}
          onKeep={(between) => setTrial(bench, trial.id, 'The change on trial', { between })}
        />
      )}
      {named.distances !== null && (
        <ListField
          name={named.distances}
          measure="shootingDistance"
          values={plan.distances}
          most={MOST_DISTANCES}
          onKeep={(distances) => set('Distances of a trial')({ distances })}
        />
      )}
      {named.steps !== undefined && (
        <ListField
          name={named.steps}
          measure={kind === 'nocking point' ? 'nockingPoint' : 'braceHeight'}
          values={plan.steps}
          most={MOST_STEPS}
          onKeep={(steps) => set('Settings of a trial')({ steps })}
        />
      )}
      {named.ends !== null && (
        <CountField
          name={named.ends}
          value={plan.ends}
          least={1}
          most={MOST_ENDS}
          onKeep={(ends) => set('Ends of a trial')({ ends })}
        />
      )}
      <CountField
        name={named.arrows}
        value={plan.arrows}
        least={1}
        most={MOST_ARROWS}
        onKeep={(arrows) => set('Arrows of a trial')({ arrows })}
      />
      {named.others !== undefined && (
        <CountField
          name={named.others}
          value={plan.others}
          least={kind === 'nocking point' || kind === 'paper tear' ? 0 : 1}
          most={MOST_ARROWS}
          onKeep={(others) => set('Arrows of a trial')({ others })}
        />
      )}
    </div>
  );
}
