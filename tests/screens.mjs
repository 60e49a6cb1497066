// Every screen of the demo as a picture: light, dark and a small window, and the empty start. `-- --guide` also renews the README's pictures.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ensureInstalled, root } from '../electron/launch/bootstrap.mjs';

ensureInstalled();
const { chromium } = await import('playwright');
const { buildAll } = await import('../electron/launch/build.mjs');
const { systemBrowser } = await import('../electron/launch/browser.mjs');
const { startHost } = await import('../electron/launch/host.mjs');

const out = path.join(root, 'test-results/screens');
const guide = path.join(root, 'renderer/guide/pictures');
const forGuide = process.argv.includes('--guide');
/** @type {{ name: string, colorScheme: 'light' | 'dark', width: number, height: number }[]} */
const sizes = [
  { name: 'light', colorScheme: 'light', width: 1280, height: 800 },
  { name: 'dark', colorScheme: 'dark', width: 1280, height: 800 },
  { name: 'light-1024', colorScheme: 'light', width: 1024, height: 700 },
  { name: 'dark-1024', colorScheme: 'dark', width: 1024, height: 700 },
];
const screens = ['Bow', 'Arrow', 'Groups', 'Trials', 'Aim', 'Compare', 'Record'];

/** One page further down in the work, if there is any more of it. */
const scrolledDown = () => {
  const work = [...document.querySelectorAll('.body')].find((body) => body.scrollHeight > body.clientHeight + 2);
  if (work === undefined) return false;
  const before = work.scrollTop;
  work.scrollTop += work.clientHeight - 40;
  return work.scrollTop > before + 8;
};

await buildAll();
fs.mkdirSync(out, { recursive: true });
fs.mkdirSync(guide, { recursive: true });
const executablePath = systemBrowser() ?? undefined;
const quiet = ['--disable-background-networking', '--disable-component-update', '--disable-sync'];
const browser = await chromium.launch({
  ...(executablePath === undefined ? {} : { executablePath }),
  args: process.getuid?.() === 0 ? [...quiet, '--no-sandbox'] : quiet,
});

for (const size of sizes) {
  // A notebook of its own for each, so that each has an empty start to show.
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-screens-'));
  const host = await startHost({ env: { ...process.env, FISTMELE_NOTEBOOK: path.join(folder, 'notebook.sqlite') } });
  const context = await browser.newContext({
    viewport: { width: size.width, height: size.height },
    colorScheme: size.colorScheme,
  });
  const page = await context.newPage();
  /** @param {string} name */
  const picture = async (name) => {
    await page.evaluate(() => document.fonts.ready);
    await page.waitForTimeout(300);
    await page.screenshot({ path: path.join(out, `${name}-${size.name}.png`) });
  };
  /** @param {string} prefix */
  const walk = async (prefix) => {
    for (const screen of screens) {
      await page.getByRole('navigation', { name: 'Screens' }).getByRole('button', { name: screen, exact: true }).click();
      await picture(`${prefix}${screen.toLowerCase()}`);
      for (let down = 2; await page.evaluate(scrolledDown); down++) await picture(`${prefix}${screen.toLowerCase()}-${down}`);
    }
  };

  await page.goto(await host.newAddress());
  await page.getByRole('heading', { level: 1 }).waitFor();
  await picture('first');
  await page.getByLabel('brace height', { exact: true }).fill('8 1/2');
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Go on to the bow' }).click();
  await walk('empty-');
  await page.getByRole('button', { name: 'Demo bench' }).click();
  await page.getByText('demo bench', { exact: true }).waitFor();
  await page
    .getByRole('button', { name: /^Tobin/ })
    .first()
    .click();
  await walk('');

  await context.close();
  await host.stop();
  fs.rmSync(folder, { recursive: true, force: true });
}
await browser.close();
if (forGuide)
  for (const screen of screens)
    fs.copyFileSync(path.join(out, `${screen.toLowerCase()}-light.png`), path.join(guide, `${screen.toLowerCase()}.png`));
console.log(`${fs.readdirSync(out).length} pictures in ${path.relative(root, out)}`);
