import fs from 'node:fs';
import type { Problem } from '../../core/model/index.ts';

/** A log that was left behind holds the newest records: whoever moves the notebook has to move both. */
const together = (file: string): string =>
  fs.existsSync(`${file}-wal`) ? ` Its companion ${file}-wal belongs to it; keep the two together.` : '';

/**
 * Every refusal of the notebook as a whole: what is the case, and what to do about it. Those that say that it was left as it is have
 * not written a byte of it; after the others it may have been tidied (a log folded in), but holds what it held.
 */
export const notebookProblem = {
  locked: (file: string): Problem => ({
    code: 'notebook-locked',
    sentence: `The notebook ${file} is open in another Fistmele. Close that one, then try again.`,
  }),
  readOnly: (file: string): Problem => ({
    code: 'notebook-read-only',
    sentence: `The notebook ${file} may not be written to. Give yourself the right to write to it and to its folder, or name another file in FISTMELE_NOTEBOOK, then try again.`,
  }),
  unreachable: (file: string, why: string): Problem => ({
    code: 'notebook-unreachable',
    sentence: `The notebook ${file} cannot be reached (${why}). Mend its folder, or name another file in FISTMELE_NOTEBOOK, then try again.`,
  }),
  notOne: (file: string): Problem => ({
    code: 'notebook-not-one',
    sentence: `${file} is not a Fistmele notebook. It was left as it is: move it away, or name another file in FISTMELE_NOTEBOOK, then try again.`,
  }),
  damaged: (file: string, why: string): Problem => ({
    code: 'notebook-damaged',
    sentence: `The notebook ${file} is damaged (${why}). It was left as it is: put back a copy of it, or move it away and start a new one.${together(file)}`,
  }),
  newer: (file: string, version: number, known: number): Problem => ({
    code: 'notebook-newer',
    sentence: `The notebook ${file} was written by a newer Fistmele (notebook version ${version}; this one knows ${known}). It was left as it is: open it with the newer one.${together(file)}`,
  }),
  strangeJournal: (file: string): Problem => ({
    code: 'notebook-strange-journal',
    sentence: `Beside the notebook lies ${file}-journal, an unfinished write of another program. Open the notebook once with that program, close it there, then try again.`,
  }),
  orphanLog: (file: string): Problem => ({
    code: 'notebook-orphan-log',
    sentence: `The notebook ${file} is missing, but its companion ${file}-wal is there. Put the notebook back beside it, or move the companion away, then try again.`,
  }),
  cannotWrite: (why: string): Problem => ({
    code: 'notebook-cannot-write',
    sentence: `The notebook could not be written (${why}). Nothing was changed: make room on the disk or free the file, then try again.`,
  }),
} as const;
