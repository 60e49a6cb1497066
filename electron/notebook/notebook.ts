import type { UndoState, Written } from '../../core/host.ts';
import {
  type BenchRecord,
  type Change,
  type Preferences,
  type Problem,
  type Result,
  type ShotsEdit,
  type Stamp,
  ok,
  refuse,
} from '../../core/model/index.ts';
import { MOST_CALL_BYTES, TOO_LARGE } from '../../core/channels.ts';
import { altersSomething, nextRevision, shotsChange, type Step, stepsOf } from './edits.ts';
import { type Entry, Journal } from './journal.ts';
import { applyPatch, inverse, type Patch, patchBetween } from './patch.ts';
import { readPreferences, writePreferences } from './preferences.ts';
import { notebookProblem } from './problems.ts';
import { liveRows, readRow, recordOf, textOf, writeRow } from './rows.ts';
import type { Sql } from './sql.ts';

/** An open notebook. Every write is one transaction, whole or not at all; every refusal is a sentence. */
export class Notebook {
  readonly #sql: Sql;
  readonly #journal: Journal;
  readonly #now: () => Stamp;

  constructor(sql: Sql, now: () => Stamp) {
    this.#sql = sql;
    this.#journal = new Journal(sql);
    this.#now = now;
  }

  load(): { records: BenchRecord[]; state: UndoState; problems: Problem[] } {
    const records: BenchRecord[] = [];
    const problems: Problem[] = [];
    for (const row of liveRows(this.#sql)) {
      const record = recordOf(row);
      if (record.ok) records.push(record.value);
      else problems.push(record.problem);
    }
    return { records, state: this.state, problems };
  }

  get state(): UndoState {
    return this.#journal.state;
  }

  /** An edit that leaves its record as it is counts for nothing; a Change of only such edits leaves no trace, and redo as it is. */
  apply(change: Change): Result<Written> {
    const steps = stepsOf(this.#sql, change);
    if (!steps.ok) return steps;
    const real = steps.value.filter(altersSomething);
    const written = real.reduce((sum, step) => sum + (step.after.text?.length ?? 0), 0);
    if (written > MOST_CALL_BYTES) return refuse('too-large', TOO_LARGE);
    const patches = real.map(({ before, after }) => patchBetween(after.id, after.kind, before?.text ?? null, after.text));
    return this.#write('do', change.label, steps.value, patches);
  }

  /** A Change that says only which shots it puts into a group and which it takes out. */
  changeShots(label: string, edit: ShotsEdit): Result<{ revision: number; state: UndoState }> {
    const change = shotsChange(this.#sql, label, edit);
    if (!change.ok) return change;
    const written = this.apply(change.value);
    if (!written.ok) return written;
    const [group] = written.value.records;
    return ok({ revision: group?.record?.revision ?? edit.revision, state: written.value.state });
  }

  /** `expected` is the entry that the caller's window shows as the last: it may not undo what it has not seen. */
  undo(expected: number): Result<Written> {
    const entry = this.#journal.lastUndoable;
    if (entry === null) return refuse('nothing-to-undo', 'There is nothing to undo.');
    if (entry.seq !== expected) return moved(overtaken(entry, expected));
    return this.#replay('undo', entry, this.#journal.patches(entry).map(inverse).reverse());
  }

  redo(expected: number): Result<Written> {
    const entry = this.#journal.lastRedoable;
    if (entry === null) return refuse('nothing-to-redo', 'There is nothing to redo.');
    if (entry.seq !== expected)
      return moved(`In another window “${entry.label}” has become the next to do again; nothing was done.`);
    return this.#replay('redo', entry, this.#journal.patches(entry));
  }

  preferences(): Preferences {
    return readPreferences(this.#sql);
  }

  setPreferences(preferences: Preferences): Result<Preferences> {
    return this.#attempt(() => {
      writePreferences(this.#sql, preferences);
      return preferences;
    });
  }

  /** Puts records in without a Change, so that a demo begins with nothing to undo. */
  seed(records: readonly BenchRecord[]): Result<number> {
    return this.#attempt(() => {
      for (const record of records) writeRow(this.#sql, { id: record.id, kind: record.kind, revision: 0, text: textOf(record) });
      return records.length;
    });
  }

  #replay(kind: 'undo' | 'redo', entry: Entry, patches: Patch[]): Result<Written> {
    const steps: Step[] = [];
    for (const patch of patches) {
      const before = readRow(this.#sql, patch.id);
      const text = applyPatch(before?.text ?? null, patch);
      if (text === undefined)
        return refuse('journal-mismatch', `"${entry.label}" no longer fits what the notebook holds; nothing was written.`);
      steps.push({ before, after: { id: patch.id, kind: patch.kind, revision: nextRevision(before), text } });
    }
    return this.#write(kind, entry.label, steps, patches);
  }

  #write(kind: 'do' | 'undo' | 'redo', label: string, steps: readonly Step[], patches: readonly Patch[]): Result<Written> {
    const records: Written['records'] = [];
    for (const { after } of steps) {
      if (after.text === null) {
        records.push({ id: after.id, record: null });
        continue;
      }
      const record = recordOf(after);
      if (!record.ok) return record;
      records.push({ id: after.id, record: record.value });
    }
    if (!steps.some(altersSomething)) return ok({ records, state: this.state });
    return this.#attempt(() => {
      for (const { after } of steps.filter(altersSomething)) writeRow(this.#sql, after);
      this.#journal.append(kind, label, this.#now(), patches);
      return { records, state: this.#journal.state };
    });
  }

  /** A full disk or a vanished drive is the world's doing, not a bug: the transaction is taken back and a sentence says so. */
  #attempt<T>(work: () => T): Result<T> {
    try {
      return ok(this.#sql.transaction(work));
    } catch (error) {
      this.#journal.reread();
      return { ok: false, problem: notebookProblem.cannotWrite(error instanceof Error ? error.message : String(error)) };
    }
  }

  close(): void {
    this.#sql.close();
  }
}

/** Either somebody put a Change on top, or took the top off. */
const overtaken = ({ seq, label }: Entry, expected: number): string =>
  seq > expected
    ? `Another window’s change “${label}” is now the last; nothing was undone.`
    : `Another window has undone the last change already, and “${label}” is now the last; nothing was undone.`;

const moved = (what: string) => refuse('undo-moved', `${what} Look at it first.`);
