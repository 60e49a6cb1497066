// The longest task of the page's main thread in everything that is done on the face and beside it with 10,000 shots there: in a real
// Chromium, through the host and the notebook's disk.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { quietFlags, systemBrowser } from '../../electron/launch/browser.mjs';
import { startHost } from '../../electron/launch/host.mjs';
import { faceActs, manyShots } from './faceActs.mjs';
import { longestTask } from './longestTask.mjs';

/**
 * Rows of milliseconds, none where there is no browser. The page must be built.
 * @param {typeof longestTask} [longest] what watches an act
 * @returns {Promise<import('./row.ts').Row[]>}
 */
export async function entryRows(longest = longestTask) {
  const executablePath = systemBrowser();
  if (executablePath === null) return [];
  const { chromium } = await import('playwright');
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-entry-'));
  const host = await startHost({ env: { ...process.env, FISTMELE_NOTEBOOK: path.join(folder, 'notebook.sqlite') } });
  const browser = await chromium.launch({ executablePath, args: [...quietFlags] });
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  const rows = [];
  try {
    await page.goto(await host.newAddress());
    await manyShots(page);
    for (const [name, turns] of Object.entries(faceActs(page))) {
      let [processor, wall] = [0, 0];
      for await (const act of turns()) {
        const found = await longest(page, act);
        processor = Math.max(processor, found.processor);
        wall = Math.max(wall, found.wall);
      }
      rows.push({ id: `shots.10000.${name}.longest-task`, value: processor, unit: 'ms', reference: null, ratio: null });
      rows.push({ id: `shots.10000.${name}.longest-task-wall`, value: wall, unit: 'ms', reference: null, ratio: null });
    }
  } finally {
    await browser.close();
    await host.stop();
    fs.rmSync(folder, { recursive: true, force: true });
  }
  return rows;
}
