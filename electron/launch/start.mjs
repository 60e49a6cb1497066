// `npm start`: installs and builds what is missing, then opens the bench: in Electron, else in a browser window from the loopback host.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { ensureInstalled, root } from './bootstrap.mjs';
import { quietFlags, systemBrowser } from './browser.mjs';
import { electronOrWhyNot } from './electron.mjs';
import { startHost } from './host.mjs';
import { smoke } from './smoke.mjs';

ensureInstalled();
const { buildAll } = await import('./build.mjs');
await buildAll({ onlyWhenStale: true });

if (process.argv.includes('--smoke')) await runSmoke();
else {
  const { file, why } = electronOrWhyNot();
  if (file !== null) runElectron(file);
  else {
    console.log(`Electron cannot be used here (${why}); the bench opens from its loopback host instead.`);
    await runLoopback();
  }
}

async function runSmoke() {
  const host = await startHost();
  try {
    const { version, file, records } = await smoke(host.address);
    console.log(`Fistmele ${version} answers; the notebook ${file} opens with ${records} records.`);
  } catch (error) {
    console.error(`The bench does not start: ${error.message}`);
    process.exitCode = 1;
  } finally {
    await host.stop();
  }
}

function runElectron(file) {
  const child = spawn(file, [root], { stdio: 'inherit' });
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
  child.on('exit', (code) => process.exit(code ?? 0));
}

async function runLoopback() {
  const host = await startHost();
  for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => void host.stop());
  void host.ended.then((code) => process.exit(code));

  const browser = systemBrowser();
  const hasDisplay = process.platform !== 'linux' || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  if (browser === null || !hasDisplay || process.env.FISTMELE_NO_BROWSER) offerAddress(host);
  else openBrowser(browser, host);
}

function offerAddress(host, address = host.address) {
  console.log(`Open this address in a browser on this machine; it works once. Ctrl+C stops the bench.\n${address}`);
  if (!process.stdin.isTTY) return;
  console.log('Press Enter for another address.');
  createInterface({ input: process.stdin }).on('line', () => void host.newAddress().then((address) => console.log(address)));
}

/** A window without tabs and with a profile of its own, thrown away with it. A browser that cannot open one leaves at once. */
function openBrowser(browser, host) {
  const profile = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-window-'));
  const opened = Date.now();
  const window = spawn(browser, [`--app=${host.address}`, `--user-data-dir=${profile}`, ...quietFlags], { stdio: 'ignore' });
  console.log('The bench is open in a window of its own. Close it, or press Ctrl+C, to stop.');
  window.on('error', () => void instead());
  window.on('exit', (code) => void (code !== 0 && Date.now() - opened < 5000 ? instead() : host.stop()));
  void host.ended.then(() => window.kill());
  process.on('exit', () => fs.rmSync(profile, { recursive: true, force: true, maxRetries: 3 }));

  let isOffered = false;
  async function instead() {
    if (isOffered) return;
    isOffered = true;
    console.log('That browser could not open a window.');
    offerAddress(host, await host.newAddress());
  }
}
