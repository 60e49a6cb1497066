import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, type Page, test as base } from 'playwright/test';
import { type RunningHost, startHost } from '../../electron/launch/host.mjs';

interface Hosted<Host> {
  readonly notebook: string;
  readonly host: Host;
}

// The host of a journey lives for seconds: to compile SQLite a second time, for speed, costs more than all it does.
const hostOf = (notebook: string): Promise<RunningHost> =>
  startHost({ env: { ...process.env, FISTMELE_NOTEBOOK: notebook }, nodeFlags: ['--liftoff-only'] });

/** A bench of the test's own: the built loopback host on a notebook in a temporary folder, and a page admitted to it. */
export class TestBench {
  readonly page: Page;
  readonly notebook: string;
  /** What the page complained of in its console; the fixture expects nothing at the end. */
  readonly complaints: string[] = [];
  #host: RunningHost | null;

  constructor(page: Page, { notebook, host }: Hosted<RunningHost>) {
    this.page = page;
    this.notebook = notebook;
    this.#host = host;
    page.on('pageerror', (error) => this.complaints.push(String(error)));
    page.on('console', (message) => {
      if (message.type() !== 'error' && message.type() !== 'warning') return;
      // A stopped host is part of some journeys; that the browser says so is right.
      if (/ERR_CONNECTION_REFUSED|ERR_INCOMPLETE_CHUNKED|ERR_EMPTY_RESPONSE/.test(message.text())) return;
      this.complaints.push(message.text());
    });
  }

  /** Starts the host on the test's notebook; the page is not opened by this. */
  async start(): Promise<void> {
    this.#host = await hostOf(this.notebook);
  }

  async stop(): Promise<void> {
    await this.#host?.stop();
    this.#host = null;
  }

  /** An address that admits one page, once. */
  async newAddress(): Promise<string> {
    if (this.#host === null) throw new Error('the host is not running');
    return this.#host.newAddress();
  }

  /** Opens the bench in the test's page, and waits until it is open, or says why it is not. */
  async open(): Promise<void> {
    await this.page.goto(await this.newAddress());
    await this.page.locator('main').waitFor();
  }

  /** As a user does in the evening and the next morning: the host stops and starts, the page is opened anew, the notebook is the same. */
  async restart(): Promise<void> {
    await this.page.goto('about:blank');
    await this.stop();
    await this.start();
    await this.open();
  }
}

export const test = base.extend<{ hosted: Hosted<Promise<RunningHost>>; bench: TestBench }>({
  // Of itself, before all others: the host starts while the browser makes a page.
  hosted: [
    // The first argument names what a fixture needs.
    // oxlint-disable-next-line no-empty-pattern
    async ({}, use) => {
      const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-e2e-'));
      const notebook = path.join(folder, 'notebook.sqlite');
      await use({ notebook, host: hostOf(notebook) });
      fs.rmSync(folder, { recursive: true, force: true });
    },
    { auto: true },
  ],
  bench: async ({ hosted, page }, use) => {
    const bench = new TestBench(page, { ...hosted, host: await hosted.host });
    await bench.open();
    await use(bench);
    await page.goto('about:blank');
    await bench.stop();
    expect(bench.complaints, 'complaints in the console').toEqual([]);
  },
});
export { expect };
