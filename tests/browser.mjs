// A Chromium to test with: the machine's own, else Playwright's download, else the distribution's package.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import { root } from '../electron/launch/bootstrap.mjs';
import { systemBrowser } from '../electron/launch/browser.mjs';

/** Chromium without the windows nobody sees here: the same engine for a fifth less work. It is what Playwright fetches for itself, too. */
const SHELL = '/usr/bin/chromium-headless-shell';

/** The browser's file; '' for the one Playwright keeps itself; null when none is to be had. */
export function browserForTests() {
  const there = ownBrowser();
  if (there !== null) return there;
  console.log('No Chromium here; fetching one for the tests ...');
  const env = { ...process.env, PLAYWRIGHT_DOWNLOAD_CONNECTION_TIMEOUT: '15000' };
  const fetched = spawnSync(process.execPath, ['node_modules/playwright/cli.js', 'install', 'chromium-headless-shell'], {
    cwd: root,
    env,
    stdio: 'inherit',
    timeout: 300_000,
  });
  if (fetched.status === 0) return '';
  if (process.platform !== 'linux' || process.getuid?.() !== 0) return null;
  /** @type {import('node:child_process').SpawnSyncOptions} */
  const quiet = { env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }, stdio: ['ignore', 'ignore', 'inherit'] };
  spawnSync('apt-get', ['update', '-q'], quiet);
  for (const name of ['chromium-headless-shell', 'chromium'])
    if (ownBrowser() === null) spawnSync('apt-get', ['install', '-y', '-q', '--no-install-recommends', name], quiet);
  return ownBrowser();
}

const ownBrowser = () => [process.env.FISTMELE_BROWSER, SHELL].find((file) => file && fs.existsSync(file)) ?? systemBrowser();
