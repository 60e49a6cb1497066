import sqlite from 'node-sqlite3-wasm';

export type Value = string | number | null;
export type Row = Readonly<Record<string, unknown>>;

/** The little of SQL that the notebook needs, so that the driver can be exchanged (DEVELOPERS.md says for which, and when). */
export interface Sql {
  exec(script: string): void;
  run(statement: string, ...values: Value[]): void;
  get(statement: string, ...values: Value[]): Row | null;
  all(statement: string, ...values: Value[]): Row[];
  /** All of it or nothing: whatever `work` throws undoes what it wrote. */
  transaction<T>(work: () => T): T;
  close(): void;
}

/**
 * node-sqlite3-wasm loses its footing after a crash in its ordinary mode: it takes its own lock for another writer's and never rolls
 * a hot journal back. In WAL mode under an exclusive lock it kept everything through hundreds of kills, so nothing else is accepted.
 * The exclusive lock has to be asked for first: a WAL file cannot be opened by this driver without it.
 */
export function openSql(file: string, pagesCached?: number): Sql {
  const db = new sqlite.Database(file, { fileMustExist: false });
  try {
    const locking = db.get('PRAGMA locking_mode = EXCLUSIVE');
    const journal = db.get('PRAGMA journal_mode = WAL');
    if (locking?.['locking_mode'] !== 'exclusive' || journal?.['journal_mode'] !== 'wal') {
      throw new Error(`the file would not go into exclusive WAL mode: ${JSON.stringify([locking, journal])}`);
    }
    db.exec('PRAGMA synchronous = FULL; PRAGMA wal_autocheckpoint = 256');
    if (pagesCached !== undefined) db.exec(`PRAGMA cache_size = ${Math.trunc(pagesCached)}`);
  } catch (error) {
    db.close();
    throw error;
  }
  return {
    exec: (script) => db.exec(script),
    run: (statement, ...values) => void db.run(statement, values),
    get: (statement, ...values) => (db.get(statement, values) as Row | null | undefined) ?? null,
    all: (statement, ...values) => db.all(statement, values) as Row[],
    transaction(work) {
      db.exec('BEGIN IMMEDIATE');
      try {
        const value = work();
        db.exec('COMMIT');
        return value;
      } catch (error) {
        if (db.inTransaction) db.exec('ROLLBACK');
        throw error;
      }
    },
    close: () => {
      if (db.isOpen) db.close();
    },
  };
}
