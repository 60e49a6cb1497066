import { z } from 'zod';
import type { Stamp } from '../../core/model/index.ts';
import type { JournalStep, UndoState } from '../../core/host.ts';
import { Patch } from './patch.ts';
import type { Sql } from './sql.ts';

type Kind = 'do' | 'undo' | 'redo';

/** How a row without edits is written. A Change always edits something, so such a row can only be a seal. */
const SEALED = '[]';

/** A Change as the journal has it: its number and its label. */
export interface Entry {
  readonly seq: number;
  readonly label: string;
}

/**
 * The journal is only ever appended to. What can be undone and redone follows from the order of its rows: a Change goes on the undo
 * pile and empties the redo pile, an undo moves the top of one pile to the other, a redo moves it back. A seal empties both: the rows
 * before it are kept to be read, but their patches no longer fit.
 */
export class Journal {
  readonly #sql: Sql;
  #undoable: Entry[] = [];
  #redoable: Entry[] = [];

  constructor(sql: Sql) {
    this.#sql = sql;
    this.reread();
  }

  /** Also after a failed transaction, when the piles may tell of a row that was taken back. */
  reread(): void {
    this.#undoable = [];
    this.#redoable = [];
    const sealed = Number(this.#sql.get('SELECT max(seq) AS seq FROM journal WHERE edits = ?', SEALED)?.['seq'] ?? 0);
    for (const row of this.#sql.all('SELECT seq, kind, label FROM journal WHERE seq > ? ORDER BY seq', sealed)) {
      this.#pile(row['kind'] as Kind, { seq: Number(row['seq']), label: String(row['label']) });
    }
  }

  get lastUndoable(): Entry | null {
    return this.#undoable.at(-1) ?? null;
  }

  get lastRedoable(): Entry | null {
    return this.#redoable.at(-1) ?? null;
  }

  get state(): UndoState {
    return { undo: asStep(this.lastUndoable), redo: asStep(this.lastRedoable) };
  }

  append(kind: Kind, label: string, at: Stamp, patches: readonly Patch[]): void {
    this.#sql.run(
      'INSERT INTO journal(kind, label, at, edits) VALUES (?, ?, ?, ?)',
      kind,
      label,
      JSON.stringify(at),
      JSON.stringify(patches),
    );
    const seq = Number(this.#sql.get('SELECT max(seq) AS seq FROM journal')?.['seq']);
    this.#pile(kind, { seq, label });
  }

  patches(entry: Entry): Patch[] {
    return z
      .array(Patch)
      .parse(JSON.parse(String(this.#sql.get('SELECT edits FROM journal WHERE seq = ?', entry.seq)?.['edits'])));
  }

  #pile(kind: Kind, entry: Entry): void {
    if (kind === 'do') {
      this.#undoable.push(entry);
      this.#redoable = [];
    } else {
      const [from, to] = kind === 'undo' ? [this.#undoable, this.#redoable] : [this.#redoable, this.#undoable];
      const moved = from.pop();
      if (moved !== undefined) to.push(moved);
    }
  }
}

/** Nothing before this row can be undone or done again. */
export function seal(sql: Sql, label: string, at: Stamp): void {
  sql.run("INSERT INTO journal(kind, label, at, edits) VALUES ('do', ?, ?, ?)", label, JSON.stringify(at), SEALED);
}

const asStep = (entry: Entry | null): JournalStep | null => (entry === null ? null : { label: entry.label, entry: entry.seq });
