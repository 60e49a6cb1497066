// How long a person waits, from the Enter that keeps a figure to the next frame in which the checks have followed it: in a real Chromium,
// through the host and the notebook's disk.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { quietFlags, systemBrowser } from '../../electron/launch/browser.mjs';
import { startHost } from '../../electron/launch/host.mjs';

const EDITS = 21;
const edits = [
  { screen: 'Bow', field: 'brace height', figures: ['8 1/2 in', '8 3/4 in'] },
  { screen: 'Arrow', field: 'length', figures: ['28 1/4 in', '28 3/4 in'] },
];

/** @param {number[]} values */
const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;

/** In the page: when Enter came, and the first frame after something changed among the findings. */
const watch = () =>
  new Promise((resolve) => {
    const findings = document.querySelector('[data-region="findings"]');
    if (findings === null) throw new Error('no findings on the page');
    let began = 0;
    addEventListener('keydown', (event) => event.key === 'Enter' && (began = performance.now()), { capture: true, once: true });
    const seen = new MutationObserver(() => {
      if (began === 0) return;
      seen.disconnect();
      // The frame is painted when the task after its callbacks runs.
      requestAnimationFrame(() => setTimeout(() => resolve(performance.now() - began)));
    });
    seen.observe(findings, { subtree: true, childList: true, characterData: true, attributes: true });
  });

/**
 * Rows of milliseconds, none where there is no browser. The page must be built.
 * @returns {Promise<import('./row.ts').Row[]>}
 */
export async function frameRows() {
  const executablePath = systemBrowser();
  if (executablePath === null) return [];
  const { chromium } = await import('playwright');
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-frames-'));
  const host = await startHost({ env: { ...process.env, FISTMELE_NOTEBOOK: path.join(folder, 'notebook.sqlite') } });
  const browser = await chromium.launch({ executablePath, args: [...quietFlags] });
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(await host.newAddress());
  await page.getByRole('button', { name: 'Open the demo bench' }).click();
  await page
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  const rows = [];
  for (const { screen, field, figures } of edits) {
    await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
    const input = page.getByLabel(field, { exact: true });
    const waits = [];
    for (let i = 0; i < EDITS; i++) {
      await input.fill(String(figures[i % 2]));
      const waited = page.evaluate(watch);
      await page.waitForTimeout(50);
      await input.press('Enter');
      waits.push(Number(await waited));
    }
    rows.push({
      id: `screen.${screen.toLowerCase()}.enter-to-frame`,
      value: median(waits),
      unit: 'ms',
      reference: null,
      ratio: null,
    });
  }
  await browser.close();
  await host.stop();
  fs.rmSync(folder, { recursive: true, force: true });
  return rows;
}
