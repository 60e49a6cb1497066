import { stepOf } from '../../../core/trials/step.ts';
import type { TrialInput, TrialReading } from '../../../core/trials/index.ts';

export const readTrial = ({ trial }: TrialInput): TrialReading => ({
  headline: `No reading yet of ${trial.trial}`,
  subline: 'Too few arrows.',
  verdict: 'too few',
  figures: [],
  plot: null,
  causes: [],
  next: stepOf('shoot', 'Shoot', 'Shoot more.', {}),
  others: [],
  predicted: null,
  ifNot: 'Stop.',
  waste: 'More.',
  disputed: [],
  more: null,
  why: stepOf('shoot', 'Shoot', 'Shoot more.', {}).why,
});
