import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Book } from '../core/host.ts';
import { ok, type Problem, refuse, type Result, type Stamp } from '../core/model/index.ts';
import { demoRecords } from '../fixtures/demo/index.ts';
import { makeDemoFolder } from './demoFolders.ts';
import type { Notebook } from './notebook/notebook.ts';
import { openNotebook, type OpenNotebook } from './notebook/open.ts';

/** The user's own notebook and the demo's, each opened when it is first asked for. They never share a file. */
export class Books {
  readonly #file: string;
  readonly #now: () => Stamp;
  readonly #open: Partial<Record<Book, Promise<Result<OpenNotebook>>>> = {};
  #demoFolder: string | null = null;

  constructor(file: string, now: () => Stamp) {
    this.#file = file;
    this.#now = now;
  }

  get file(): string {
    return this.#file;
  }

  /** A notebook that could not be opened is tried again at the next call, so that mending it needs no restart. */
  async open(book: Book): Promise<Result<Notebook>> {
    const opening = (this.#open[book] ??= book === 'own' ? openNotebook(this.#file, { now: this.#now }) : this.#openDemo());
    const forget = () => {
      if (this.#open[book] === opening) delete this.#open[book];
    };
    const opened = await opening.catch((error: unknown) => {
      forget();
      throw error;
    });
    if (opened.ok) return ok(opened.value.notebook);
    forget();
    return opened;
  }

  async problem(): Promise<Problem | null> {
    const own = await this.open('own');
    return own.ok ? null : own.problem;
  }

  /** One that will not close keeps neither the other nor the demo's folder; what went wrong is thrown when all is done. */
  async close(): Promise<void> {
    const closings = Object.values(this.#open).map(async (opening) => {
      const opened = await opening;
      if (opened.ok) await opened.value.close();
    });
    const ends = await Promise.allSettled(closings);
    if (this.#demoFolder !== null) fs.rmSync(this.#demoFolder, { recursive: true, force: true });
    const faults = ends.flatMap((end) => (end.status === 'rejected' ? [end.reason as unknown] : []));
    if (faults.length > 0) throw new AggregateError(faults, 'a notebook could not be closed');
  }

  async #openDemo(): Promise<Result<OpenNotebook>> {
    try {
      this.#demoFolder ??= makeDemoFolder();
    } catch (error) {
      return refuse(
        'demo-no-place',
        `The demo has no place to be made in (${reasonOf(error)}). Make room in ${os.tmpdir()}, then try again.`,
      );
    }
    const opened = await openNotebook(path.join(this.#demoFolder, 'demo.sqlite'), { now: this.#now });
    if (!opened.ok) return opened;
    const seeded = opened.value.notebook.seed(demoRecords(this.#now()));
    if (seeded.ok) return opened;
    await opened.value.close();
    return seeded;
  }
}

const reasonOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
