import fs from 'node:fs';
import path from 'node:path';
import { NOTEBOOK_VERSION, type Problem, type Result, type Stamp } from '../../core/model/index.ts';
import { inspect, NOTEBOOK_MARK } from './inspect.ts';
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

  const opened = openHeld(file, options);
  if (!opened.ok) {
    await mutex.release();
    return opened;
  }
  const held = mutex;
  const notebook = opened.value;
  const close = async () => {
    notebook.close();
    await held.release();
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
    if (found === 'absent') create(file, steps);
    sql = openSql(file, options.pagesCached);
    const health = String(sql.get('PRAGMA quick_check(1)')?.['quick_check']);
    const version = versionOf(sql);
    if (health !== 'ok' || version > newest) {
      sql.close();
      return failed(health === 'ok' ? notebookProblem.newer(file, version, newest) : notebookProblem.damaged(file, health));
    }
    if (version < newest) keepCopy(sql, file, version);
    migrate(sql, steps);
    return { ok: true, value: new Notebook(sql, options.now) };
  } catch (error) {
    sql?.close();
    return failed(problemOf(file, error));
  }
}

/** Made whole under another name and then renamed, so that a killed birth leaves no half notebook. */
function create(file: string, steps: readonly Migration[]): void {
  const unborn = `${file}.new`;
  for (const suffix of ['', '-journal', '-wal']) fs.rmSync(unborn + suffix, { force: true });
  fs.rmSync(`${unborn}.lock`, { recursive: true, force: true });
  const sql = openSql(unborn);
  sql.exec(`PRAGMA application_id = ${NOTEBOOK_MARK}`);
  migrate(sql, steps);
  sql.close();
  fs.renameSync(unborn, file);
}

/** Before a notebook moves to a newer version, the older one is kept beside it, for whoever must go back. */
function keepCopy(sql: Sql, file: string, version: number): void {
  sql.get('PRAGMA wal_checkpoint(TRUNCATE)');
  fs.copyFileSync(file, `${file}.version-${version}`);
}

const failed = (problem: Problem): Result<never> => ({ ok: false, problem });
const why = (error: unknown) => (error instanceof Error ? error.message : String(error));

function problemOf(file: string, error: unknown): Problem {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') return notebookProblem.readOnly(file);
  if (/malformed|not a database|corrupt/i.test(why(error))) return notebookProblem.damaged(file, why(error));
  return notebookProblem.unreachable(file, why(error));
}
