import type { Finding } from '../../findings/finding.ts';
import { braceStep } from '../braceStep.ts';
import type { NextStep } from '../reading.ts';
import { emptyWhy } from '../shiftWhy.ts';
import { lowered, stepOf } from '../step.ts';
import { tillerStep } from '../tillerStep.ts';
import { disputedOf } from './disputed.ts';
import type { TrialInput, TrialReading } from './types.ts';

type Said = Pick<TrialReading, 'headline' | 'subline' | 'verdict' | 'next' | 'ifNot' | 'waste'> & Partial<TrialReading>;

/**
 * A reading with everything that it does not say left empty.
 *
 * @equation no figures, plot, causes, further steps or more arrows unless given; what the trade disputes by the kind of trial
 * @param input - the trial with its records [record]
 * @param said - what it says [record]
 * @returns the reading [record]
 * @validity any texts
 * @source own derivation
 * @example outcome(exampleTrialInput, { headline: 'None', subline: 'None yet.', verdict: 'too few', next: stepOf('shoot', 'Shoot', 'Shoot.', {}), ifNot: '', waste: '' }).predicted // null
 */
export function outcome({ trial, units }: Pick<TrialInput, 'trial' | 'units'>, said: Said): TrialReading {
  return {
    figures: [],
    plot: null,
    causes: [],
    others: [],
    predicted: null,
    disputed: disputedOf(trial.trial, units),
    more: null,
    why: emptyWhy(said.subline),
    ...said,
  };
}

/**
 * The reading while something forbids the trial.
 *
 * @equation the first stop, and nothing of what was shot
 * @param input - the trial with its records [record]
 * @param stop - the first of trialStops [record]
 * @returns the reading, verdict `stopped` [record]
 * @validity any stop
 * @source common practice
 * @example stopped(exampleTrialInput, { id: 'hand', level: 'stop', title: 'A stop', detail: 'Mend it.', rule: null, short: { figure: '', word: '' }, why: null, action: null }).headline // "Nothing is shot: a stop"
 */
export function stopped(input: TrialInput, stop: Finding): TrialReading {
  const { bundle, units } = input;
  // A brace height outside the maker's range is a stop whose mending is itself the next change.
  const mend = stop.id === 'braceHeight' ? braceStep(bundle, units, 'Then go on with the trial.') : null;
  return outcome(input, {
    headline: `Nothing is shot: ${lowered(stop.title)}`,
    subline: stop.detail,
    verdict: 'stopped',
    next: mend ?? stepOf('stop', stop.title, stop.detail, { rule: stop.why?.text ?? stop.detail }),
    ifNot: 'Nothing is shot until it is mended; the bow maker or a technician has the last word.',
    waste: 'Any arrow shot before that.',
  });
}

/**
 * What comes before any other change: the brace height, then the tiller.
 *
 * @equation braceStep, else tillerStep, else the step itself; the step then stands among the others
 * @param input - the trial with its records [record]
 * @param next - what would be next [record]
 * @param others - what else there is [list]
 * @param then - what to shoot after the gate [text]
 * @returns the next step and the others [record]
 * @validity stops are looked at before
 * @source common practice
 * @example gated(exampleTrialInput, stepOf('leave', 'Leave it', 'Leave it.', {}), [], '').next.title // "Leave it"
 */
export function gated(
  { bundle, units }: TrialInput,
  next: NextStep,
  others: readonly NextStep[],
  then: string,
): Pick<TrialReading, 'next' | 'others'> {
  const gate = braceStep(bundle, units, then) ?? tillerStep(bundle, units, then);
  return gate === null ? { next, others } : { next: gate, others: [next, ...others] };
}

/**
 * A trial that was shot and cannot be read, with the reason.
 *
 * @equation headline "No reading" with what is wrong; the reason; what to shoot again
 * @param input - the trial with its records [record]
 * @param headline - what is wrong [text]
 * @param reason - why, as a sentence [text]
 * @param next - what to do [record]
 * @param rest - figures, plot and causes where there are some [record]
 * @returns the reading, verdict `void` [record]
 * @validity any texts
 * @source common practice
 * @example voided(exampleTrialInput, 'No reading: two forms', 'One form was expected.', stepOf('again', 'Shoot again', 'Again.', {}), {}).verdict // "void"
 */
export function voided(
  input: TrialInput,
  headline: string,
  reason: string,
  next: NextStep,
  rest: Partial<TrialReading>,
): TrialReading {
  return outcome(input, {
    headline,
    subline: reason,
    verdict: 'void',
    next,
    ifNot: 'If it cannot be kept the same, leave this trial: what is read from it would not be the bow\u2019s.',
    waste: 'Turning anything on the strength of these arrows.',
    ...rest,
  });
}
