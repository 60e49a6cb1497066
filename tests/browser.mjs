// A Chromium to test with: the machine's own, else Playwright's download, else the distribution's package.
import { spawnSync } from 'node:child_process';
import { root } from '../electron/launch/bootstrap.mjs';
import { systemBrowser } from '../electron/launch/browser.mjs';

/** The browser's file; '' for the one Playwright keeps itself; null when none is to be had. */
export function browserForTests() {
  const there = systemBrowser();
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
  spawnSync('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium'], quiet);
  return systemBrowser();
}
