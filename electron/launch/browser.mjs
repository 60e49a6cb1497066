// A Chromium of this machine's own, to open the bench in and to run the tests with; or whatever browser its user reads with.
// Node's own modules only.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { endOf } from './child.mjs';

/** Keeps the browser to itself: without these it calls home, which this program never does. */
export const quietFlags = [
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-sync',
  '--disable-quic',
  '--metrics-recording-only',
  // Chromium's sandbox cannot be had as root; only then is it left off.
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];

export function systemBrowser() {
  return [process.env.FISTMELE_BROWSER, ...candidates()].find((file) => file && fs.existsSync(file)) ?? null;
}

function candidates() {
  const { platform, env } = process;
  if (platform === 'win32') {
    const folders = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].filter((folder) => folder !== undefined);
    return folders.flatMap((folder) => [
      path.join(folder, 'Google/Chrome/Application/chrome.exe'),
      path.join(folder, 'Microsoft/Edge/Application/msedge.exe'),
    ]);
  }
  if (platform === 'darwin') {
    return ['Google Chrome', 'Chromium', 'Microsoft Edge'].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
  }
  return ['chromium', 'chromium-browser', 'google-chrome', 'microsoft-edge'].map((name) => `/usr/bin/${name}`);
}

/** Whether there is a desktop on which a window could appear. */
export function hasDesktop() {
  return process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/**
 * Opens an address in the user's own browser, as the desktop would. False when it has no way, or says that it failed.
 *
 * @param {string} address
 */
export async function openAddress(address) {
  const [file, ...args] = openerOf(address);
  const { code } = await endOf(spawn(file, args, { stdio: 'ignore', windowsVerbatimArguments: true }));
  return code === 0;
}

/**
 * @param {string} address
 * @returns {[string, ...string[]]}
 */
function openerOf(address) {
  if (process.platform === 'win32') return ['cmd', '/c', 'start', '""', address];
  return [process.platform === 'darwin' ? 'open' : 'xdg-open', address];
}
