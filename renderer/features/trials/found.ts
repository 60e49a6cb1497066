import { dayText } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Stamp } from '../../../core/model/common.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Trial } from '../../../core/model/trial.ts';
import { readTrial, type TrialReading } from '../../../core/trials/index.ts';
import type { Records } from '../../state/selectors.ts';
import { sheetOf, trialInput } from './derive.ts';
import { soFar } from './standing.ts';

interface Found {
  /** What it says, in its own headline; null while it says nothing. */
  readonly found: string | null;
  /** What the next trial of its kind says of the change; null before that was shot, or where nothing was changed. */
  readonly since: string | null;
}

/** What a trial found, and by the next one of its kind whether its change helped. */
export function foundBy(
  records: Records,
  bundle: Bundle,
  trials: readonly Trial[],
  trial: Trial,
  units: UnitChoice,
  now: Stamp,
): Found {
  const reading = told(records, bundle, trial, units, now);
  const later = trials
    .filter(({ trial: kind, born }) => kind === trial.trial && born.at > trial.born.at)
    .toSorted((a, b) => a.born.at.localeCompare(b.born.at));
  const after = later
    .map((one) => ({ day: dayText(one.born, now), reading: told(records, bundle, one, units, now) }))
    .find((one) => one.reading !== null);
  const turned = trial.changes.length > 0 && trial.trial !== 'a against b';
  return {
    found: reading?.headline ?? null,
    since: !turned || after === undefined || after.reading === null ? null : sinceText(after.day, after.reading),
  };
}

/** The reading, where it is one: nothing that was shot in part, or that more arrows must tell. */
function told(records: Records, bundle: Bundle, trial: Trial, units: UnitChoice, now: Stamp): TrialReading | null {
  const reading = readTrial(trialInput(records, bundle, trial, units, now));
  const one = reading.verdict === 'read' || reading.verdict === 'nothing shown';
  return one && !soFar(trial, sheetOf(records, trial, units), reading) ? reading : null;
}

/** Nothing more to turn: so far as one trial tells, it helped. */
function sinceText(day: string, { headline, next, verdict }: TrialReading): string {
  const said = `${day}: ${headline.charAt(0).toLowerCase()}${headline.slice(1)}`;
  if (next.kind === 'leave' || verdict === 'nothing shown') return `Shot again ${said}. It helped, so far as that tells.`;
  return `Shot again ${said}. Not enough, or not that.`;
}
