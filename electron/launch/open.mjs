// Installs and builds what is missing, then opens the bench: in Electron, else in a browser window from the loopback host.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { ensureInstalled, root } from './bootstrap.mjs';
import { hasDesktop, openAddress, quietFlags, systemBrowser } from './browser.mjs';
import { endOf } from './child.mjs';
import { electronOrWhyNot } from './electron.mjs';
import { startHost } from './host.mjs';
import { smoke } from './smoke.mjs';

/** @typedef {import('./host.mjs').RunningHost} RunningHost */

/** Set by Ctrl+C and its like: what ends after that has not failed. */
let isStopping = false;

/** @param {(signal: NodeJS.Signals) => void} stop */
function onStop(stop) {
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
    process.on(signal, () => {
      isStopping = true;
      stop(signal);
    });
  }
}

export async function start() {
  // Whoever reads our lines may go away, as in `npm start | head -1`; the bench stays.
  process.stdout.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
    if (error.code !== 'EPIPE') throw error;
  });
  ensureInstalled();
  const { buildAll } = await import('./build.mjs');
  await buildAll({ onlyWhenStale: true });
  if (process.argv.includes('--smoke')) return runSmoke();
  const { file, why } = electronOrWhyNot();
  if (file !== null) return runElectron(file);
  console.log(`Electron cannot be used here (${why}); the bench opens from its loopback host instead.`);
  return runLoopback();
}

async function runSmoke() {
  const host = await startHost();
  try {
    const { version, file, records } = await smoke(host.address);
    console.log(`Fistmele ${version} answers; the notebook ${file} opens with ${records} records.`);
  } catch (error) {
    console.error(`The bench does not start: ${error instanceof Error ? error.message : String(error)}`);
    process.exitCode = 1;
  } finally {
    await host.stop();
  }
}

/**
 * Exported for its test, since Electron itself is not everywhere.
 *
 * @param {string} file
 */
export async function runElectron(file) {
  const child = spawn(file, [root], { stdio: 'inherit' });
  onStop((signal) => child.kill(signal));
  const { code, why, isEarly } = await endOf(child);
  if (!isEarly || isStopping) process.exit(code);
  console.log(`Electron does not run here (${why}); the bench opens from its loopback host instead.`);
  await runLoopback();
}

async function runLoopback() {
  const host = await startHost();
  onStop(() => void host.stop());
  void host.ended.then(async (code) => {
    await closeWindow();
    process.exit(code);
  });

  const browser = systemBrowser();
  if (process.env.FISTMELE_NO_BROWSER || !hasDesktop()) offerAddress(host);
  else if (browser !== null) await openWindow(browser, host);
  else if (await openAddress(host.address)) {
    console.log('The bench is open in your browser. Ctrl+C stops it.');
    offerMore(host);
  } else offerAddress(host);
}

/** @param {RunningHost} host */
function offerAddress(host) {
  console.log(`Open this address in a browser on this machine; it works once. Ctrl+C stops the bench.\n${host.address}`);
  offerMore(host);
}

/** @param {RunningHost} host */
function offerMore(host) {
  if (!process.stdin.isTTY) return;
  console.log('Press Enter for another address.');
  createInterface({ input: process.stdin }).on('line', () => {
    host.newAddress().then(console.log, () => {}); // a host that has ended ends us too
  });
}

/** What has to be done about the window before we end; and how long it may take. */
let closeWindow = async () => {};
const LONGEST_CLOSING = 3000;

/**
 * A window without tabs and with a profile of its own, thrown away with it.
 *
 * @param {string} browser
 * @param {RunningHost} host
 */
async function openWindow(browser, host) {
  const profile = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-window-'));
  process.on('exit', () => {
    try {
      fs.rmSync(profile, { recursive: true, force: true, maxRetries: 3 });
    } catch {
      // the browser may still hold a file; the system clears its temporary folder itself
    }
  });
  const window = spawn(browser, [`--app=${host.address}`, `--user-data-dir=${profile}`, ...quietFlags], { stdio: 'ignore' });
  const end = endOf(window);
  closeWindow = async () => {
    window.kill();
    await Promise.race([end, new Promise((waited) => setTimeout(waited, LONGEST_CLOSING))]);
  };
  console.log('The bench is open in a window of its own. Close it, or press Ctrl+C, to stop.');
  const { why, isEarly } = await end;
  if (!isEarly || isStopping) return void host.stop();
  console.log(`The browser ${browser} does not run here (${why}).`);
  // It may have spent the address before it fell over.
  offerAddress({ ...host, address: await host.newAddress() });
}
