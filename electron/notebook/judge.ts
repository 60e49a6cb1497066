import fs from 'node:fs';
import type { Problem } from '../../core/model/index.ts';
import { removeDatabase } from './copies.ts';
import { versionOf } from './migrations.ts';
import { notebookProblem } from './problems.ts';
import { openSql, type Sql } from './sql.ts';

/** What SQLite itself finds wrong with an open notebook; null when all is well. */
export function judge(sql: Sql, file: string, known: number): Problem | null {
  const health = String(sql.get('PRAGMA quick_check(1)')?.['quick_check']);
  if (health !== 'ok') return notebookProblem.damaged(file, health);
  const version = versionOf(sql);
  return version > known ? notebookProblem.newer(file, version, known) : null;
}

/**
 * Opening a notebook whose log was left behind folds the log in, and one that is not in WAL mode is rewritten: both would alter a
 * notebook that then has to be refused. So a copy, log and all, is opened first, and the notebook only if the copy is found sound.
 */
export function judgeCopy(file: string, known: number): Problem | null {
  const copy = `${file}.look`;
  removeDatabase(copy);
  try {
    fs.copyFileSync(file, copy);
    if (fs.existsSync(`${file}-wal`)) fs.copyFileSync(`${file}-wal`, `${copy}-wal`);
    const sql = openSql(copy);
    try {
      return judge(sql, file, known);
    } finally {
      sql.close();
    }
  } finally {
    removeDatabase(copy);
  }
}
