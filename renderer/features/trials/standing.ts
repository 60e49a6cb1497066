import type { Trial } from '../../../core/model/trial.ts';
import type { TrialReading, TrialSheet } from '../../../core/trials/index.ts';
import { wasChanged } from './changed.ts';

/** Shots that are wanted and of which there is none yet. */
export const unshot = ({ rows }: TrialSheet): boolean =>
  rows.some(({ done, shot, optional }) => !done && shot === 0 && !optional);

/** How many arrows of the plan are left. */
export const arrowsLeft = ({ rows }: TrialSheet): number =>
  rows.reduce((sum, { arrows, shot, optional }) => sum + (optional ? 0 : Math.max(0, arrows - shot)), 0);

/** As many of each as a bare-shaft reading is worth, at one distance. */
const ENOUGH = { first: 6, second: 4 } as const;

function enough({ rows }: TrialSheet): boolean {
  const shotAt = (distance: number, which: 'first' | 'second') =>
    rows.reduce((sum, row) => sum + (row.place?.distance === distance && row.which === which ? row.shot : 0), 0);
  const distances = new Set(rows.flatMap(({ place }) => (place === null ? [] : [place.distance])));
  return [...distances].some((at) => shotAt(at, 'first') >= ENOUGH.first && shotAt(at, 'second') >= ENOUGH.second);
}

/** Its verdict stands though part of the plan was not shot: what is shown of bare shafts stays shown. */
export const standsEarly = (trial: Trial, rows: TrialSheet, reading: Pick<TrialReading, 'verdict'>): boolean =>
  trial.trial === 'bare shaft' && unshot(rows) && enough(rows) && reading.verdict === 'read';

/** What was shot so far is no verdict: a sweep is read once all of it was shot, lest the first that looks well is taken. */
export const soFar = (trial: Trial, rows: TrialSheet, reading: Pick<TrialReading, 'verdict' | 'others'>): boolean =>
  trial.ended === null &&
  unshot(rows) &&
  !wasChanged(trial, reading) &&
  !standsEarly(trial, rows, reading) &&
  (reading.verdict === 'read' || reading.verdict === 'nothing shown');
