// Builds what runs: the page, and the four programs of the shell. Vite bundles all of it; SQLite's WASM package stays outside.
import fs from 'node:fs';
import { builtinModules } from 'node:module';
import path from 'node:path';
import { root } from './bootstrap.mjs';

/** Loaded when something is to be built; a start that has nothing to build does not wait for it. */
const vite = () => import('vite');

const external = ['electron', 'node-sqlite3-wasm', ...builtinModules, /^node:/];

/**
 * One program for Node or Electron, in one file.
 *
 * @param {string} entry
 * @param {string} outFile
 * @param {'es' | 'cjs'} format
 */
export async function buildProgram(entry, outFile, format = 'es') {
  const { build } = await vite();
  return build({
    root,
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    resolve: { conditions: ['node'] },
    ssr: { noExternal: true },
    build: {
      target: 'node20',
      outDir: path.dirname(outFile),
      emptyOutDir: false,
      minify: false,
      sourcemap: true,
      lib: { entry: path.join(root, entry), formats: [format], fileName: () => path.basename(outFile) },
      rollupOptions: { external },
    },
  });
}

export async function buildShell(outDir = path.join(root, 'dist/electron')) {
  await buildProgram('electron/main.ts', path.join(outDir, 'main.js'));
  await buildProgram('electron/preload.ts', path.join(outDir, 'preload.cjs'), 'cjs');
  await buildProgram('electron/loopback/main.ts', path.join(outDir, 'host.js'));
  await buildProgram('electron/worker.ts', path.join(outDir, 'worker.js'));
}

export async function buildPage() {
  const { build } = await vite();
  await build({ configFile: path.join(root, 'renderer/vite.config.ts'), logLevel: 'warn' });
}

const STAMP = path.join(root, 'dist/.built');
const SOURCES = ['core', 'electron', 'renderer', 'fixtures/demo', 'package-lock.json'];

/** Whether anything that is built from is younger than the last build. */
function isStale() {
  const built = fs.statSync(STAMP, { throwIfNoEntry: false })?.mtimeMs ?? 0;
  /** @type {(at: string) => boolean} */
  const younger = (at) => {
    const found = fs.statSync(at);
    if (found.mtimeMs > built) return true;
    return found.isDirectory() && fs.readdirSync(at).some((name) => younger(path.join(at, name)));
  };
  return SOURCES.some((source) => younger(path.join(root, source)));
}

export async function buildAll({ onlyWhenStale = false } = {}) {
  if (onlyWhenStale && !isStale()) return;
  const began = new Date();
  fs.rmSync(STAMP, { force: true });
  await buildPage();
  await buildShell();
  fs.writeFileSync(STAMP, '');
  fs.utimesSync(STAMP, began, began); // what was edited during the build is built the next time
}

if (process.argv[1] === import.meta.filename) {
  const began = Date.now();
  await buildAll();
  console.log(`built in ${((Date.now() - began) / 1000).toFixed(1)} s`);
}
