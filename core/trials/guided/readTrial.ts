import type { TrialKind } from '../../model/trial.ts';
import { stopped } from './outcome.ts';
import { readBare } from './readBare.ts';
import { readBetween } from './readBetween.ts';
import { readBrace } from './readBrace.ts';
import { readClearance } from './readClearance.ts';
import { readNocking } from './readNocking.ts';
import { readPaper } from './readPaper.ts';
import { readWalkBack } from './readWalkBack.ts';
import { trialStops } from './stops.ts';
import type { TrialInput, TrialReading } from './types.ts';

/**
 * What a trial says: the finding with its doubt, its candidate causes, and the one next change.
 *
 * @equation the stops first; then the reading of its kind
 * @param input - the trial with its records [record]
 * @returns the reading [record]
 * @validity any trial at any stage; too few arrows give no verdict and say how many more
 * @source common practice
 * @example readTrial(exampleTrialInput).next.title // "Firm the button half a turn"
 */
export function readTrial(input: TrialInput): TrialReading {
  const [stop] = trialStops(input);
  return stop === undefined ? readers[input.trial.trial](input) : stopped(input, stop);
}

const readers: Readonly<Record<TrialKind, (input: TrialInput) => TrialReading>> = {
  'bare shaft': readBare,
  'paper tear': readPaper,
  'walk-back': readWalkBack,
  'brace height': readBrace,
  'nocking point': readNocking,
  clearance: readClearance,
  'a against b': readBetween,
};
