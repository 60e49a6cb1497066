// How long a person waits for a sight strip: from the page's request to its own worker to the answer, in a real Chromium, for 10 to 90 m
// by 1 m with 2,000 draws. Wall time, for a worker's own is not to be had: on a busy machine it tells of the machine.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { quietFlags, systemBrowser } from '../../electron/launch/browser.mjs';
import { startHost } from '../../electron/launch/host.mjs';

/** Fresh pages, each with a worker that has done nothing yet, and edits in each of them. */
const [PAGES, EDITS] = [3, 7];
const ROWS = 81;
const DRAWS = 2000;
/** What a full strip may take [ms]. */
const AT_MOST = 300;

/** @typedef {{ rows: number, draws: number, ms: number }} Strip */

/** @param {number[]} values */
const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;

/** In the page, before any of its own code: every strip that is asked for, and when its answer is there. */
const watch = () => {
  /** @type {Strip[]} */
  const strips = [];
  Object.assign(globalThis, { strips });
  globalThis.Worker = class extends Worker {
    /**
     * @param {string | URL} address
     * @param {WorkerOptions} [options]
     */
    constructor(address, options) {
      super(address, options);
      /** @type {Map<number, { began: number, draws: number }>} */
      this.asked = new Map();
      this.addEventListener('message', ({ data }) => {
        const ask = this.asked.get(data.id);
        if (ask === undefined || data.result?.ok !== true) return;
        strips.push({ rows: data.result.value.length, draws: ask.draws, ms: performance.now() - ask.began });
      });
    }

    /**
     * @param {any} message
     * @override
     */
    postMessage(message) {
      this.asked.set(message.id, { began: performance.now(), draws: message.input?.draws });
      super.postMessage(message);
    }
  };
};

/**
 * The next strip that comes after so many.
 * @param {import('playwright').Page} page
 * @param {number} count
 * @returns {Promise<Strip>}
 */
async function stripAfter(page, count) {
  const handle = await page.waitForFunction((known) => {
    const { strips } = /** @type {{ strips: Strip[] }} */ (/** @type {unknown} */ (globalThis));
    return strips[known];
  }, count);
  return /** @type {Promise<Strip>} */ (handle.jsonValue());
}

/** @param {import('playwright').Page} page */
const stripsOf = (page) =>
  page.evaluate(() => /** @type {{ strips: Strip[] }} */ (/** @type {unknown} */ (globalThis)).strips.length);

/**
 * The first strip of a fresh page, and one for every edit after the span is the whole one.
 * @param {import('playwright').Page} page
 * @returns {Promise<{ first: number, edited: number[] }>}
 */
async function stripsInPage(page) {
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page
    .locator('.rack')
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Aim', exact: true }).click();
  const first = await stripAfter(page, 0);
  await page.locator('[data-field="marks.step"]').selectOption('1');
  for (const [end, metres] of [
    ['from', '10 m'],
    ['to', '90 m'],
  ]) {
    await page.locator(`[data-field="marks.${end}"]`).fill(String(metres));
    await page.keyboard.press('Enter');
  }
  await page.waitForFunction((rows) => {
    const { strips } = /** @type {{ strips: Strip[] }} */ (/** @type {unknown} */ (globalThis));
    return strips.at(-1)?.rows === rows;
  }, ROWS);
  const radius = page.locator('[data-field="settings.sightRadius"]');
  const edited = [];
  for (let i = 0; i < EDITS; i++) {
    const before = await stripsOf(page);
    await radius.fill(`${850 + i} mm`);
    await page.keyboard.press('Enter');
    const { rows, draws, ms } = await stripAfter(page, before);
    if (rows !== ROWS || draws !== DRAWS) throw new Error(`a strip of ${rows} distances by ${draws} draws is another one`);
    edited.push(ms);
  }
  return { first: first.ms, edited };
}

/**
 * Rows of milliseconds, none where there is no browser. The page must be built.
 * @returns {Promise<import('./row.ts').Row[]>}
 */
export async function stripRows() {
  const executablePath = systemBrowser();
  if (executablePath === null) return [];
  const { chromium } = await import('playwright');
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-strip-'));
  const host = await startHost({ env: { ...process.env, FISTMELE_NOTEBOOK: path.join(folder, 'notebook.sqlite') } });
  const browser = await chromium.launch({ executablePath, args: [...quietFlags] });
  const found = [];
  try {
    for (let i = 0; i < PAGES; i++) {
      const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
      await page.addInitScript(watch);
      await page.goto(await host.newAddress());
      found.push(await stripsInPage(page));
      await page.close();
    }
  } finally {
    await browser.close();
    await host.stop();
    fs.rmSync(folder, { recursive: true, force: true });
  }
  const edited = median(found.flatMap((one) => one.edited));
  return [
    { id: 'aim.strip.10-90m.2000-draws.in-page', value: edited, unit: 'ms', reference: AT_MOST, ratio: edited / AT_MOST },
    // Its worker starts meanwhile, and runs code that nobody has compiled yet; of the demo's own distances.
    { id: 'aim.strip.first-of-page', value: median(found.map(({ first }) => first)), unit: 'ms', reference: null, ratio: null },
  ];
}
