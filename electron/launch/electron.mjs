// Electron's own program: whether it is on this machine, and how to get it. Node's own modules only.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { root } from './bootstrap.mjs';

const FOLDER = path.join(root, 'node_modules/electron');
const FAILURE = path.join(root, '.cache/electron-download-failed.json');
const DAY = 24 * 60 * 60 * 1000;
const LONGEST_WAIT = 180_000;

/** Looks at the disk only. Asking the package itself would start the download. */
function electronBinary() {
  try {
    const folder = process.env.ELECTRON_OVERRIDE_DIST_PATH ?? path.join(FOLDER, 'dist');
    const file = path.join(folder, fs.readFileSync(path.join(FOLDER, 'path.txt'), 'utf8'));
    return fs.existsSync(file) ? file : null;
  } catch {
    return null;
  }
}

/** The program, downloaded if need be; or null and why. A download that failed is not tried again for a day. */
export function electronOrWhyNot() {
  if (process.env.FISTMELE_NO_ELECTRON) return { file: null, why: 'FISTMELE_NO_ELECTRON is set' };
  const { platform, env } = process;
  if (platform === 'linux' && !env.DISPLAY && !env.WAYLAND_DISPLAY) return { file: null, why: 'there is no display' };
  if (platform === 'linux' && process.getuid?.() === 0) return { file: null, why: 'it does not run as root' };
  const there = electronBinary();
  if (there !== null) return { file: there, why: '' };
  const failure = lastFailure();
  if (failure !== null) return { file: null, why: `${failure}; tried today` };

  console.log("Fetching Electron's program, once ...");
  const done = spawnSync(process.execPath, [path.join(FOLDER, 'install.js')], {
    cwd: root,
    encoding: 'utf8',
    timeout: LONGEST_WAIT,
  });
  const got = electronBinary();
  if (got !== null) return { file: got, why: '' };
  const said = done.error?.message ?? done.stderr.split('\n').find((line) => line.trim() !== '') ?? 'it ended early';
  const why = `its download failed: ${said.replace(/^\w*Error: /, '')}`;
  fs.mkdirSync(path.dirname(FAILURE), { recursive: true });
  fs.writeFileSync(FAILURE, JSON.stringify({ at: Date.now(), why }));
  return { file: null, why };
}

function lastFailure() {
  try {
    const { at, why } = JSON.parse(fs.readFileSync(FAILURE, 'utf8'));
    return Date.now() - at < DAY ? why : null;
  } catch {
    return null;
  }
}
