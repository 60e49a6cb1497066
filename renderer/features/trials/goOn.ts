import type { Id } from '../../../core/model/common.ts';
import { brief, readTrial, type TrialInput, type TrialRow, type TrialSheet } from '../../../core/trials/index.ts';
import type { Bench } from '../../state/bench.ts';
import { focusEntry } from '../groups/entry/focusEntry.ts';
import { rowAfter } from './derive.ts';
import { wasChanged } from './changed.ts';
import { takeUp } from './edits.ts';
import { faceFor } from './faceFor.ts';
import { standIn } from './store.ts';

/** Takes a row in hand; its group is begun with it, so that the face takes the first click. While a stop stands no group is begun, nor once a change was noted. */
export async function takeRow(bench: Bench, input: TrialInput, row: TrialRow): Promise<void> {
  standIn(input.trial.id, { part: 'shoot', row: row.key });
  if (brief(input).stops.length > 0 || wasChanged(input.trial, readTrial(input))) return;
  await takeUp(bench, input.trial.id, row, faceFor(input, row));
  if (row.which === 'first' || row.which === 'second') focusEntry('face');
}

/** After a row that is entered at one stroke the next that is wanted is in hand by itself; after the last one, what they say. */
export function afterRow(trialId: Id, rows: TrialSheet, key: string): void {
  standIn(trialId, { part: rowAfter(rows, key) === null ? 'read' : 'shoot', row: null });
}

/** Goes on to the next row that is wanted; after the last one, to what they say. */
export async function goOn(bench: Bench, input: TrialInput, rows: TrialSheet, key: string): Promise<void> {
  const next = rowAfter(rows, key);
  if (next === null) return standIn(input.trial.id, { part: 'read', row: null });
  await takeRow(bench, input, next);
}
