import { goTo } from '../../findings/parts.ts';
import { fingerProblem } from '../bareProblem.ts';
import { stepOf } from '../step.ts';
import { voided } from './outcome.ts';
import type { TrialInput, TrialReading } from './types.ts';

/**
 * The reading where tuning for a finger release does not apply: what was measured is shown, and nothing is turned.
 *
 * @equation fingerProblem; a compound is left, a hand that does not match is checked
 * @param input - the trial with its records [record]
 * @param shown - figures and plot [record]
 * @returns the reading; null where it applies [record]
 * @validity any set-up
 * @source common practice
 * @example notForFingers(exampleTrialInput, {}) // null
 */
export function notForFingers(input: TrialInput, shown: Partial<TrialReading>): TrialReading | null {
  const problem = fingerProblem(input.bundle);
  if (problem === null) return null;
  const compound = problem.code === 'compound';
  const next = compound
    ? stepOf('leave', 'No next change for a compound', problem.sentence, {})
    : stepOf('measure', 'Check whose hand is on record', problem.sentence, { go: goTo('Go to the hand', 'bow', 'archer.hand') });
  const headline = compound ? 'No reading for a compound' : 'No reading: bow and archer of different hands';
  return voided(input, headline, problem.sentence, next, shown);
}
