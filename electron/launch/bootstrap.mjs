// What must run before anything is installed: Node's own modules only.
import './nodeVersion.mjs';
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

export const root = path.resolve(import.meta.dirname, '../..');

/**
 * Installs the packages unless the ones that the lock file names are there. npm's own list of what it installed is compared, so nothing is done
 * twice and nothing that was installed by hand is thrown away for want of a stamp.
 */
export function ensureInstalled() {
  if (isInstalled()) return;
  console.log('Installing the packages, once ...');
  // Another package manager that runs us names itself there too, and would not read the lock file.
  const named = process.env.npm_execpath ?? '';
  const npm = /(^|[/\\])npm-cli\.[cm]?js$/.test(named) ? named : null;
  const args = ['ci', '--no-audit', '--no-fund', '--include=dev', '--loglevel=error'];
  /** @type {import('node:child_process').SpawnSyncOptions} */
  const options = { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] };
  const done = npm
    ? spawnSync(process.execPath, [npm, ...args], options)
    : spawnSync('npm', args, { ...options, shell: process.platform === 'win32' });
  if (done.status === 0) return;
  console.error('The packages could not be installed. Run "npm ci" in this folder to see why, then try again.');
  process.exit(done.status ?? 1);
}

function isInstalled() {
  const wanted = packagesOf(path.join(root, 'package-lock.json'));
  const there = packagesOf(path.join(root, 'node_modules/.package-lock.json'));
  return Object.entries(wanted).every(
    ([at, { version, optional, peer }]) => at === '' || optional || peer || there[at]?.version === version,
  );
}

/**
 * @param {string} lockFile
 * @returns {Record<string, { version?: string, optional?: boolean, peer?: boolean }>}
 */
function packagesOf(lockFile) {
  try {
    return JSON.parse(fs.readFileSync(lockFile, 'utf8')).packages;
  } catch {
    return {};
  }
}
