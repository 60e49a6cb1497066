import { allFindings } from '../../findings/all.ts';
import type { Cause } from '../reading.ts';
import type { TrialInput } from './types.ts';

/** Findings of Bow and Arrow that bear on what a trial reads, beside those that the causes weigh themselves. */
const bears = {
  height: ['tiller', 'nockFit', 'stringAge', 'lookOver.bow'],
  side: ['nockFit', 'arrowsMatch', 'weight', 'partsAgainstWhole', 'lookOver.arrowSet'],
  scatter: ['arrowsMatch', 'arrowFlaws', 'lookOver.arrowSet', 'nockFit', 'stringAge', 'ability', 'lookOver.bow'],
} as const;

/**
 * What Bow and Arrow have on record that may lie behind a reading.
 *
 * @equation the findings that bear on it and stand as a caution or unknown, each as a cause with its detail as evidence
 * @param input - the trial with its records [record]
 * @param what - what was read [choice]
 * @returns causes, cautions first [list]
 * @validity any set-up; what is in order is no cause and is left out
 * @source common practice
 * @example findingCauses(exampleTrialInput, 'height') // []
 */
export function findingCauses({ bundle, units, now }: TrialInput, what: keyof typeof bears): readonly Cause[] {
  const ids: readonly string[] = bears[what];
  return allFindings(bundle, { units, now })
    .filter(({ id, level }) => ids.includes(id) && (level === 'caution' || level === 'unknown'))
    .map(({ title, detail }) => ({ cause: title, evidenceFor: [detail], evidenceAgainst: [] }));
}

/**
 * What was not the same throughout, as a cause beside the others.
 *
 * @equation one cause with every difference as evidence
 * @param weakens - sentences of sameThroughout [list]
 * @returns the cause; none when nothing differed [list]
 * @validity any sentences
 * @source common practice
 * @example contextCauses([]) // []
 */
export function contextCauses(weakens: readonly string[]): readonly Cause[] {
  if (weakens.length === 0) return [];
  return [{ cause: 'Something else was not the same throughout', evidenceFor: weakens, evidenceAgainst: [] }];
}
