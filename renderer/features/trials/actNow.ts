import type { Trial } from '../../../core/model/trial.ts';
import type { TrialReading, TrialSheet } from '../../../core/trials/index.ts';

export type Act = 'note' | 'shoot' | 'plan' | 'again' | 'end';

/** The last thing that was noted is a check, which turned nothing: what the bow asks for comes after it. */
export function onlyChecked({ changes, ended }: Trial, { others }: Pick<TrialReading, 'others'>): boolean {
  const last = changes.at(-1);
  return ended === null && last !== undefined && others.some(({ kind, title }) => kind === 'measure' && title === last.title);
}

/** Whether something was turned since it was shot: it is shot again before anything else. */
export const wasChanged = (trial: Trial, reading: Pick<TrialReading, 'others'>): boolean =>
  trial.changes.length > 0 && !onlyChecked(trial, reading);

/** What to do now is the one filled button; null while there is none. */
export function actNow(trial: Trial, reading: Pick<TrialReading, 'next' | 'others'>, rows: TrialSheet): Act | null {
  if (trial.ended !== null) return null;
  if (wasChanged(trial, reading)) return 'again';
  switch (reading.next.kind) {
    case 'change':
    case 'measure':
      return 'note';
    case 'leave':
      return 'end';
    case 'stop':
      return null;
    case 'shoot':
      return rows.next === null ? 'plan' : 'shoot';
    case 'again':
      return rows.next === null ? 'again' : 'shoot';
  }
}
