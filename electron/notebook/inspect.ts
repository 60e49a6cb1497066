import fs from 'node:fs';
import path from 'node:path';
import type { Problem } from '../../core/model/index.ts';
import { notebookProblem } from './problems.ts';

/** "Fist": marks the file as a notebook of this program (SQLite's application_id). */
export const NOTEBOOK_MARK = 0x46697374;

/**
 * Looks at the file's own bytes before SQLite touches it, because opening a database may write: a bad notebook is left untouched.
 * Unsettled is one that opening would alter, by folding in a log that was left behind or by putting it into WAL mode; its header may
 * be older than its log, so the last word is `judgeCopy`'s. The places in the header are those of the SQLite file format
 * (sqlite.org/fileformat.html, "The Database Header").
 */
export function inspect(file: string, known: number): 'absent' | 'sound' | 'unsettled' | Problem {
  if (sizeOf(`${file}-journal`) > 0) return notebookProblem.strangeJournal(file);
  const logged = sizeOf(`${file}-wal`) > 0;
  if (!fs.existsSync(file)) {
    if (logged) return notebookProblem.orphanLog(file);
    return isMarkedReadOnly(path.dirname(path.resolve(file))) ? notebookProblem.readOnly(file) : 'absent';
  }
  if (!fs.statSync(file).isFile()) return notebookProblem.notOne(file);
  const header = readHeader(file);
  if (header.length < 100 || header.toString('latin1', 0, 16) !== 'SQLite format 3\0') return notebookProblem.notOne(file);
  if (header.readUInt32BE(68) !== NOTEBOOK_MARK) return notebookProblem.notOne(file);
  const version = header.readUInt32BE(60);
  if (version > known) return notebookProblem.newer(file, version, known);
  const pageBytes = header.readUInt16BE(16) === 1 ? 65536 : header.readUInt16BE(16);
  const expected = pageBytes * header.readUInt32BE(28);
  // A log that was not yet folded in may hold the missing pages; then the copy shows it.
  if (!logged && sizeOf(file) < expected) {
    return notebookProblem.damaged(file, `${sizeOf(file)} of ${expected} bytes are left`);
  }
  if (isMarkedReadOnly(file) || isMarkedReadOnly(path.dirname(path.resolve(file)))) return notebookProblem.readOnly(file);
  const isInWalMode = header[18] === 2 && header[19] === 2;
  return logged || !isInWalMode ? 'unsettled' : 'sound';
}

function readHeader(file: string): Buffer {
  const handle = fs.openSync(file, 'r');
  try {
    const header = Buffer.alloc(100);
    return header.subarray(0, fs.readSync(handle, header, 0, 100, 0));
  } finally {
    fs.closeSync(handle);
  }
}

function sizeOf(file: string): number {
  return fs.statSync(file, { throwIfNoEntry: false })?.size ?? 0;
}

/** Whoever took away every right to write meant it, even where the system would let a superuser through. */
function isMarkedReadOnly(at: string): boolean {
  if (process.platform !== 'win32' || fs.statSync(at).isFile()) {
    if ((fs.statSync(at).mode & 0o222) === 0) return true;
  }
  try {
    fs.accessSync(at, fs.constants.W_OK);
    return false;
  } catch {
    return true;
  }
}
