// The longest task of the page's main thread while shots are set, pulled and nudged with 10,000 of them on the face: in a real Chromium,
// through the host and the notebook's disk. What a task costs is its processor time; how long it was held up depends on the machine's
// other work, so that is told beside it.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { quietFlags, systemBrowser } from '../../electron/launch/browser.mjs';
import { startHost } from '../../electron/launch/host.mjs';

const SHOTS = 10_000;
const TIMES = 6;
/** Long enough for the figures that follow a shot in their own time [ms]. */
const SETTLED = 700;

/** A sunflower's seeds fill a disc of 0.1 m, six to an end. */
const table = () =>
  ['arrow;end;x (mm);y (mm)']
    .concat(
      Array.from({ length: SHOTS }, (_, i) => {
        const [radius, angle] = [100 * Math.sqrt(i / SHOTS), i * Math.PI * (3 - Math.sqrt(5))];
        return `${(i % 6) + 1};${1 + Math.floor(i / 6)};${(radius * Math.cos(angle)).toFixed(1)};${(radius * Math.sin(angle)).toFixed(1)}`;
      }),
    )
    .join('\n');

/** @typedef {{ name: string, ph: string, pid: number, tid: number, dur?: number, tdur?: number, args?: { name?: string } }} TraceEvent */

/**
 * The longest task of the page's main thread while something is done [ms].
 * @param {import('playwright').Browser} browser
 * @param {() => Promise<void>} act
 */
async function longestTask(browser, act) {
  const session = await browser.newBrowserCDPSession();
  /** @type {TraceEvent[]} */
  const events = [];
  session.on('Tracing.dataCollected', ({ value }) =>
    events.push(.../** @type {TraceEvent[]} */ (/** @type {unknown} */ (value))),
  );
  const whole = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.start', {
    traceConfig: { includedCategories: ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'] },
    transferMode: 'ReportEvents',
  });
  await act();
  await session.send('Tracing.end');
  await whole;
  await session.detach();
  const threads = new Set(
    events
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = events.filter(({ name, ph, pid, tid }) => ph === 'X' && /RunTask/.test(name) && threads.has(`${pid} ${tid}`));
  const most = (/** @type {'dur' | 'tdur'} */ key) =>
    tasks.reduce((longest, task) => Math.max(longest, (task[key] ?? 0) / 1000), 0);
  return { processor: most('tdur'), wall: most('dur') };
}

/**
 * Rows of milliseconds, none where there is no browser. The page must be built.
 * @returns {Promise<import('./row.ts').Row[]>}
 */
export async function entryRows() {
  const executablePath = systemBrowser();
  if (executablePath === null) return [];
  const { chromium } = await import('playwright');
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-entry-'));
  const host = await startHost({ env: { ...process.env, FISTMELE_NOTEBOOK: path.join(folder, 'notebook.sqlite') } });
  const browser = await chromium.launch({ executablePath, args: [...quietFlags] });
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(await host.newAddress());
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2 in');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: 'Groups', exact: true }).click();
  await page.getByRole('button', { name: 'Begin a fletched group' }).click();
  await page.getByRole('button', { name: 'Table', exact: true }).click();
  const file = { name: 'shots.csv', mimeType: 'text/csv', buffer: Buffer.from(table()) };
  await page.locator('dialog input[type="file"]').setInputFiles(file);
  await page.getByRole('button', { name: /^Keep 10,000 shots/ }).click();
  const face = page.locator('.face-target');
  await page.waitForFunction(() =>
    / 10000 shots in /.test(document.querySelector('.face-target')?.getAttribute('aria-label') ?? ''),
  );
  await page.waitForTimeout(SETTLED);
  const box = await face.locator('.frame-line').boundingBox();
  if (box === null) throw new Error('no face on the page');
  const [left, top] = [box.x + box.width * 0.3, box.y + box.height * 0.3];
  const acts = {
    set: async () => {
      for (let i = 0; i < TIMES; i++) {
        await page.mouse.click(left + 20 * i, top + 10 * i);
        await page.waitForTimeout(SETTLED);
      }
    },
    pull: async () => {
      for (let i = 0; i < TIMES; i++) {
        await page.mouse.move(left + 20 * i, top + 10 * i);
        await page.mouse.down();
        await page.mouse.move(left + 20 * i + 40, top + 10 * i + 60, { steps: 20 });
        await page.mouse.up();
        await page.waitForTimeout(SETTLED);
      }
    },
    nudge: async () => {
      for (let i = 0; i < TIMES; i++) {
        await face.press('ArrowRight');
        await page.waitForTimeout(SETTLED);
      }
    },
    point: async () => {
      for (let i = 0; i < 40; i++) {
        await page.mouse.move(left + 4 * i, top + 3 * i);
        await page.waitForTimeout(20);
      }
    },
  };
  const rows = [];
  for (const [name, act] of Object.entries(acts)) {
    const { processor, wall } = await longestTask(browser, act);
    rows.push({ id: `shots.10000.${name}.longest-task`, value: processor, unit: 'ms', reference: null, ratio: null });
    rows.push({ id: `shots.10000.${name}.longest-task-wall`, value: wall, unit: 'ms', reference: null, ratio: null });
  }
  await browser.close();
  await host.stop();
  fs.rmSync(folder, { recursive: true, force: true });
  return rows;
}
