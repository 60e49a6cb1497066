import fs from 'node:fs';
import path from 'node:path';
import type { Sql } from './sql.ts';

/**
 * Before a notebook moves to a newer version, the older one is kept beside it, for whoever must go back. The copy has its name only
 * once it is whole on the disk, and never takes the name of an earlier one.
 */
export function keepCopy(sql: Sql, file: string, version: number): void {
  // What is still in the log would be missing from the copy.
  const folded = sql.get('PRAGMA wal_checkpoint(TRUNCATE)');
  if (Number(folded?.['busy']) !== 0) throw new Error('the log could not be folded in before the older notebook was copied');
  const copy = freeName(`${file}.version-${version}`);
  const unfinished = `${copy}.tmp`;
  fs.copyFileSync(file, unfinished);
  toDisk(unfinished, 'r+');
  fs.renameSync(unfinished, copy);
  if (process.platform !== 'win32') toDisk(path.dirname(path.resolve(copy)), 'r'); // Windows opens no folders
}

function freeName(name: string): string {
  for (let n = 1; ; n++) {
    const numbered = n === 1 ? name : `${name}-${n}`;
    if (!fs.existsSync(numbered)) return numbered;
  }
}

function toDisk(at: string, flags: string): void {
  const handle = fs.openSync(at, flags);
  try {
    fs.fsyncSync(handle);
  } finally {
    fs.closeSync(handle);
  }
}

/** A database of ours that nobody is to have, with its companions. */
export function removeDatabase(file: string): void {
  for (const suffix of ['', '-journal', '-wal', '-shm']) fs.rmSync(file + suffix, { force: true });
  fs.rmSync(`${file}.lock`, { recursive: true, force: true });
}
