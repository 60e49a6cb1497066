import type { Trial } from '../../../core/model/trial.ts';
import type { TrialReading, TrialSheet } from '../../../core/trials/index.ts';
import { wasChanged } from './changed.ts';
import { soFar } from './standing.ts';

export type Act = 'note' | 'shoot' | 'plan' | 'again' | 'end';

/** What to do now is the one filled button; null while there is none. */
export function actNow(trial: Trial, reading: Pick<TrialReading, 'next' | 'others' | 'verdict'>, rows: TrialSheet): Act | null {
  if (trial.ended !== null) return null;
  if (wasChanged(trial, reading)) return 'again';
  if (soFar(trial, rows, reading) && reading.next.kind !== 'measure' && reading.next.kind !== 'stop') return 'shoot';
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
