import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Book } from '../core/host.ts';
import { ok, type Problem, type Result, type Stamp } from '../core/model/index.ts';
import { demoRecords } from '../fixtures/demo/index.ts';
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
    const opened = await opening;
    if (opened.ok) return ok(opened.value.notebook);
    if (this.#open[book] === opening) delete this.#open[book];
    return opened;
  }

  async problem(): Promise<Problem | null> {
    const own = await this.open('own');
    return own.ok ? null : own.problem;
  }

  async close(): Promise<void> {
    for (const opening of Object.values(this.#open)) {
      const opened = await opening;
      if (opened.ok) await opened.value.close();
    }
    if (this.#demoFolder !== null) fs.rmSync(this.#demoFolder, { recursive: true, force: true });
  }

  async #openDemo(): Promise<Result<OpenNotebook>> {
    this.#demoFolder ??= fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-demo-'));
    const opened = await openNotebook(path.join(this.#demoFolder, 'demo.sqlite'), { now: this.#now });
    if (!opened.ok) return opened;
    const seeded = opened.value.notebook.seed(demoRecords(this.#now()));
    if (seeded.ok) return opened;
    await opened.value.close();
    return seeded;
  }
}
