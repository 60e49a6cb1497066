import type { Trial } from '../../../core/model/trial.ts';
import type { TrialReading } from '../../../core/trials/index.ts';

/** Steps that only look or measure are called so, whatever the reading asks for by now. */
const CHECK = /^(?:Measure|Check) /;

/** The last thing that was noted is a check, which turned nothing: what the bow asks for comes after it. */
export function onlyChecked({ changes, ended }: Trial, { others }: Pick<TrialReading, 'others'>): boolean {
  const last = changes.at(-1);
  if (ended !== null || last === undefined || last.patch !== null) return false;
  return CHECK.test(last.title) || others.some(({ kind, title }) => kind === 'measure' && title === last.title);
}

/** Whether something was turned since it was shot: it is shot again before anything else. */
export const wasChanged = (trial: Trial, reading: Pick<TrialReading, 'others'>): boolean =>
  trial.changes.length > 0 && !onlyChecked(trial, reading);
