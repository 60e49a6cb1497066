// `npm run build:core`: core as one plain ES module with its types, for anybody's script.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { ensureInstalled, root } from './bootstrap.mjs';

ensureInstalled();
const { build } = await import('vite');
const out = path.join(root, 'dist/core');
fs.rmSync(out, { recursive: true, force: true });
await build({
  root,
  configFile: false,
  logLevel: 'warn',
  publicDir: false,
  build: {
    target: 'es2023',
    outDir: out,
    minify: false,
    sourcemap: true,
    lib: { entry: path.join(root, 'core/index.ts'), formats: ['es'], fileName: () => 'index.js' },
  },
});
const tsc = path.join(root, 'node_modules/typescript/bin/tsc');
const types = ['-p', 'core', '--composite', 'false', '--incremental', 'false', '--tsBuildInfoFile', 'null'];
const done = spawnSync(process.execPath, [tsc, ...types, '--outDir', out], { cwd: root, stdio: 'inherit' });
process.exit(done.status ?? 1);
