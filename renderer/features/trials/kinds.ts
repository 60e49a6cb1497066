import type { TrialKind } from '../../../core/model/trial.ts';

/** The trials as they are spoken of, in the order in which the trade shoots them. */
export const kindNames: Readonly<Record<TrialKind, string>> = {
  'brace height': 'Brace height',
  'bare shaft': 'Bare shaft',
  'nocking point': 'Nocking point',
  'paper tear': 'Paper tear',
  clearance: 'Clearance',
  'walk-back': 'Walk-back',
  'a against b': 'A against B',
};

export const kindsInOrder = Object.keys(kindNames) as TrialKind[];
