import type { Stamp } from '../../core/model/index.ts';
import { seal } from './journal.ts';
import type { Sql } from './sql.ts';

/** One step from the version before it. A new notebook is made by the same steps, from an empty file at version 0. */
export interface Migration {
  readonly to: number;
  /**
   * Whether it alters the text of any record. The journal's patches say at which character a text changed, so none from before such a
   * step fits what stands after it: the journal is sealed, undo and redo begin empty, and its rows stay to be read.
   */
  readonly rewritesRecords: boolean;
  readonly run: (sql: Sql) => void;
}

/**
 * `record.json` holds a record without its revision, and is null for one that is gone: the revision goes on counting, so that a
 * window still holding the old one cannot write on a record that undo removed and redo brought back.
 */
const version1 = `
  CREATE TABLE record(
    id TEXT PRIMARY KEY,
    kind TEXT NOT NULL,
    revision INTEGER NOT NULL,
    json TEXT
  ) STRICT;
  CREATE TABLE journal(
    seq INTEGER PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind IN ('do', 'undo', 'redo')),
    label TEXT NOT NULL,
    at TEXT NOT NULL,
    edits TEXT NOT NULL
  ) STRICT;
  CREATE TABLE preference(
    key TEXT PRIMARY KEY,
    json TEXT NOT NULL
  ) STRICT;`;

export const migrations: readonly Migration[] = [
  { to: 1, rewritesRecords: false, run: (sql) => sql.exec(version1) },
  // Its new fields have blanks of their own, so no record is touched and undo reaches back beyond it; the number keeps version 1 out.
  { to: 2, rewritesRecords: false, run: () => undefined },
  // The same again, twice.
  { to: 3, rewritesRecords: false, run: () => undefined },
  { to: 4, rewritesRecords: false, run: () => undefined },
];

/** Each step stands or falls with its version number, so a notebook is never between two versions. */
export function migrate(sql: Sql, steps: readonly Migration[], now: () => Stamp): void {
  for (const step of steps) {
    if (step.to <= versionOf(sql)) continue;
    sql.transaction(() => {
      step.run(sql);
      if (step.rewritesRecords) seal(sql, `The notebook moved to version ${step.to}`, now());
      sql.exec(`PRAGMA user_version = ${step.to}`);
    });
  }
}

export const versionOf = (sql: Sql): number => Number(sql.get('PRAGMA user_version')?.['user_version']);
