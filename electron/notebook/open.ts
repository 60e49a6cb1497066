import fs from 'node:fs';
import path from 'node:path';
import { NOTEBOOK_VERSION, type Problem, type Result, type Stamp } from '../../core/model/index.ts';
import { keepCopy, removeDatabase } from './copies.ts';
import { inspect, NOTEBOOK_MARK } from './inspect.ts';
import { judge, judgeCopy } from './judge.ts';
import { migrate, type Migration, migrations, versionOf } from './migrations.ts';
import { acquire, type Mutex } from './mutex.ts';
import { Notebook } from './notebook.ts';
import { notebookProblem } from './problems.ts';
import { openSql, type Sql } from './sql.ts';

export interface OpenOptions {
  readonly now: () => Stamp;
  /** For tests of the path between versions. */
  readonly migrations?: readonly Migration[];
  /** For tests that need transactions larger than the page cache. */
  readonly pagesCached?: number;
}

export interface OpenNotebook {
  readonly notebook: Notebook;
  close(): Promise<void>;
}

/** Opens the notebook, and makes it where there is none. Whatever is wrong with it comes back as a sentence, the file unaltered. */
export async function openNotebook(file: string, options: OpenOptions): Promise<Result<OpenNotebook>> {
  let mutex: Mutex | null;
  try {
    fs.mkdirSync(path.dirname(path.resolve(file)), { recursive: true, mode: 0o700 });
    mutex = await acquire(file);
  } catch (error) {
    return failed(notebookProblem.unreachable(file, why(error)));
  }
  if (mutex === null) return failed(notebookProblem.locked(file));

  const held = mutex;
  const opened = openHeld(file, options);
  if (!opened.ok) {
    await held.release();
    return opened;
  }
  const notebook = opened.value;
  const close = async () => {
    try {
      notebook.close();
    } finally {
      await held.release(); // the driver's own lock, if it should be left, is cleared by whoever holds the mutex next
    }
  };
  return { ok: true, value: { notebook, close } };
}

/** With the mutex held: nobody else of ours can be in the file. */
function openHeld(file: string, options: OpenOptions): Result<Notebook> {
  const steps = options.migrations ?? migrations;
  const newest = steps.at(-1)?.to ?? NOTEBOOK_VERSION;
  let sql: Sql | undefined;
  try {
    const found = inspect(file, newest);
    if (typeof found === 'object') return failed(found);
    fs.rmSync(`${file}.lock`, { recursive: true, force: true }); // left by a killed process: its owner would hold the mutex
    if (found === 'absent') create(file, steps, options.now);
    const refusal = found === 'unsettled' ? judgeCopy(file, newest) : null;
    if (refusal !== null) return failed(refusal);
    sql = openSql(file, options.pagesCached);
    const wrong = judge(sql, file, newest);
    if (wrong !== null) {
      sql.close();
      return failed(wrong);
    }
    const version = versionOf(sql);
    if (version < newest) keepCopy(sql, file, version);
    migrate(sql, steps, options.now);
    return { ok: true, value: new Notebook(sql, options.now) };
  } catch (error) {
    closeQuietly(sql);
    return failed(problemOf(file, error));
  }
}

/** Made whole under another name and then renamed, so that a killed birth leaves no half notebook. */
function create(file: string, steps: readonly Migration[], now: () => Stamp): void {
  const unborn = `${file}.new`;
  removeDatabase(unborn);
  let sql: Sql | undefined;
  try {
    sql = openSql(unborn);
    sql.exec(`PRAGMA application_id = ${NOTEBOOK_MARK}`);
    migrate(sql, steps, now);
    sql.close();
    fs.renameSync(unborn, file);
  } catch (error) {
    closeQuietly(sql);
    removeDatabase(unborn);
    throw error;
  }
}

/** After a fault of its own: what is reported is the fault, not what closing then adds to it. */
function closeQuietly(sql: Sql | undefined): void {
  try {
    sql?.close();
  } catch {
    // the first fault says more
  }
}

const failed = (problem: Problem): Result<never> => ({ ok: false, problem });
const why = (error: unknown) => (error instanceof Error ? error.message : String(error));

function problemOf(file: string, error: unknown): Problem {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') return notebookProblem.readOnly(file);
  if (/malformed|not a database|corrupt/i.test(why(error))) return notebookProblem.damaged(file, why(error));
  return notebookProblem.unreachable(file, why(error));
}
