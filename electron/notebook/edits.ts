import { isDeepStrictEqual } from 'node:util';
import {
  type BenchRecord,
  type Change,
  type RecordEdit,
  type Result,
  type ShotsEdit,
  ok,
  refuse,
  withShots,
} from '../../core/model/index.ts';
import { nameOf, readRow, recordOf, type RecordRow, textOf } from './rows.ts';
import type { Sql } from './sql.ts';

/** A row before a write and after it; null before is a record that never was. The same row on both sides: nothing to write. */
export interface Step {
  readonly before: RecordRow | null;
  readonly after: RecordRow;
}
export const altersSomething = ({ before, after }: Step): boolean => before !== after;

/** What a Change would write, or the reason why none of it may be written. */
export function stepsOf(sql: Sql, change: Change): Result<Step[]> {
  const seen = new Set<string>();
  const steps: Step[] = [];
  for (const edit of change.edits) {
    if (seen.has(edit.id)) return refuse('edited-twice', 'One Change edits the same record twice; nothing was written.');
    seen.add(edit.id);
    const step = stepOf(sql, edit);
    if (!step.ok) return step;
    steps.push(step.value);
  }
  return ok(steps);
}

function stepOf(sql: Sql, edit: RecordEdit): Result<Step> {
  const { id, before, after } = edit;
  if (after === null) {
    return refuse(
      'removal',
      'A record is put in the archive, not removed; nothing was written. Archive it, or undo what made it.',
    );
  }
  if (after.id !== id || (before !== null && (before.id !== id || before.kind !== after.kind))) return otherRecord;
  const row = readRow(sql, id);
  if (before === null) {
    if (row !== null && row.text !== null) {
      return refuse(
        'id-taken',
        `A record with the identity of ${nameOf(after)} is already in the notebook; nothing was written.`,
      );
    }
  } else {
    if (row === null || row.text === null) {
      return refuse(
        'stale',
        `${begun(nameOf(after))} is no longer in the notebook: another window took it out. Nothing was written.`,
      );
    }
    const stored = recordOf(row);
    if (!stored.ok) return stored;
    if (row.kind !== after.kind) return otherRecord;
    if (row.revision !== before.revision) {
      return refuse(
        'stale',
        `Another window changed ${nameOf(stored.value)} since; nothing was written. Look at it as it now stands, then make your change again.`,
      );
    }
    if (stored.value.kind === 'snapshot' && !differOnlyInArchive(stored.value, after)) {
      return refuse(
        'snapshot-fixed',
        `The snapshot ${nameOf(stored.value)} stays as it was taken; nothing was written. Take a new one instead.`,
      );
    }
  }
  const text = textOf(after);
  if (row !== null && row.text === text) return ok({ before: row, after: row });
  return ok({ before: row, after: { id, kind: after.kind, revision: nextRevision(row), text } });
}

/** The Change that an edit of shots comes to, on the group as the notebook holds it. */
export function shotsChange(sql: Sql, label: string, edit: ShotsEdit): Result<Change> {
  const row = readRow(sql, edit.groupId);
  const stored = row === null || row.text === null ? null : recordOf(row);
  if (stored?.ok === false) return stored;
  if (stored === null || stored.value.kind !== 'group')
    return refuse('stale', 'This group is no longer in the notebook: another window took it out. Nothing was written.');
  const { id, kind, shots } = stored.value;
  const before = { id, kind, revision: edit.revision };
  return ok({ label, edits: [{ id, before, after: { ...stored.value, shots: withShots(shots, edit) } }] });
}

const otherRecord = refuse('other-record', 'An edit keeps a record what it is and whose it is; nothing was written.');
const begun = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A record is born with revision 0; each write, undo and redo counts one further, also while it is gone. */
export const nextRevision = (row: RecordRow | null): number => (row === null ? 0 : row.revision + 1);

/** Compared as they are written, so that neither the order of the keys nor a minus before a nought counts. */
function differOnlyInArchive(stored: BenchRecord, after: BenchRecord): boolean {
  const written = (record: BenchRecord): unknown => JSON.parse(textOf({ ...record, archivedAt: null }));
  return isDeepStrictEqual(written(stored), written(after));
}
