import { exampleBare, exampleBundle, exampleFletched, exampleNow } from '../../model/example.ts';
import { defaultPreferences } from '../../model/preferences.ts';
import type { Trial, TrialKind } from '../../model/trial.ts';
import { newTrialPlan } from './plan.ts';
import type { TrialInput } from './types.ts';

const { setup } = exampleBundle;
const units = defaultPreferences.units;

const begun = (kind: TrialKind): Trial => ({
  id: '10000000-0000-4000-8000-000000000007',
  revision: 0,
  born: exampleNow,
  archivedAt: null,
  kind: 'trial',
  setupId: setup.id,
  trial: kind,
  name: 'Example trial',
  plan: newTrialPlan(kind, exampleBundle, units),
  cautionsRead: exampleNow,
  groups: [],
  tears: [],
  clearance: [],
  between: '',
  changes: [],
  ended: null,
  note: '',
});

/** For the examples in the documentation: a bare-shaft trial of the example's two groups at 18 m. Invented. */
export const exampleTrialInput: TrialInput = {
  trial: {
    ...begun('bare shaft'),
    plan: { distances: [18], ends: 2, arrows: 3, others: 2, steps: [] },
    groups: [{ distance: 18, step: null, first: exampleFletched.id, second: exampleBare.id, speeds: [] }],
  },
  bundle: exampleBundle,
  groups: new Map([
    [exampleFletched.id, exampleFletched],
    [exampleBare.id, exampleBare],
  ]),
  units,
  now: exampleNow,
  spread: { perMetre: 0.001, degreesOfFreedom: 10, from: '1 group at 18 m' },
};

/**
 * A trial of any kind just begun with the example's set-up, for the examples in the documentation.
 *
 * @equation the usual plan, and nothing shot
 * @param kind - which trial [choice]
 * @returns the trial with its records [record]
 * @validity every kind
 * @source own derivation
 * @example exampleTrial('clearance').trial.plan.arrows // 3
 */
export function exampleTrial(kind: TrialKind): TrialInput {
  return { ...exampleTrialInput, trial: begun(kind), groups: new Map() };
}
