import type { Trial } from '../../../core/model/trial.ts';
import type { TrialBrief, TrialInput, TrialReading, TrialSheet } from '../../../core/trials/index.ts';

/** What every part of a trial's page looks at. */
export interface PartProps {
  readonly input: TrialInput;
  readonly trial: Trial;
  readonly told: TrialBrief;
  readonly rows: TrialSheet;
  readonly reading: TrialReading;
}
