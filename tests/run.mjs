// `npm test`: everything that is checked, on a fresh clone too. Its last line is the sum over every runner.
import '../electron/launch/nodeVersion.mjs';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import path from 'node:path';
import { ensureInstalled, root } from '../electron/launch/bootstrap.mjs';
import { browserForTests } from './browser.mjs';
import { playwrightSum, vitestSum } from './sums.mjs';

ensureInstalled();
const results = path.join(root, '.cache/results');
fs.rmSync(results, { recursive: true, force: true });
const began = Date.now();
/** @type {Row[]} */
const rows = [];

/**
 * @typedef {import('./sums.mjs').Sum} Sum
 * @typedef {Sum & { name: string, seconds: number }} Row
 */

/**
 * Runs one program and notes how it ended. What it says stands together, unless it is shown as it comes: two run side by side.
 *
 * @param {string} name
 * @param {string} file
 * @param {string[]} args
 * @param {{ env?: NodeJS.ProcessEnv, sum?: (isOk: boolean) => Sum, live?: boolean }} options
 */
async function run(name, file, args, { env = process.env, sum = endSum, live = false } = {}) {
  const start = Date.now();
  const title = `\n== ${name}\n`;
  if (live) process.stdout.write(title);
  const child = spawn(process.execPath, [path.join(root, file), ...args], { cwd: root, env, stdio: live ? 'inherit' : 'pipe' });
  let text = '';
  for (const stream of [child.stdout, child.stderr])
    stream?.setEncoding('utf8').on('data', (/** @type {string} */ part) => (text += part));
  const [code] = await once(child, 'close');
  if (!live) process.stdout.write(title + text);
  rows.push({ name, seconds: (Date.now() - start) / 1000, ...sum(code === 0) });
}
/**
 * A program without tests of its own is one check: it ends well or it does not.
 *
 * @param {boolean} isOk
 */
const endSum = (isOk) => ({ passed: isOk ? 1 : 0, failed: isOk ? 0 : 1, skipped: 0 });

// The type checker keeps one core busy while the other goes on to the tests.
const types = run('types', 'node_modules/typescript/bin/tsc', ['-b']);
await run('lint', 'node_modules/oxlint/bin/oxlint', ['--type-aware', '--deny-warnings']); // as `npm run lint`
await run('format', 'node_modules/oxfmt/bin/oxfmt', ['--check', '.']);
// What is built is there before the tests, some of which start it.
await run('build', 'electron/launch/build.mjs', []);
const vitestJson = path.join(results, 'vitest.json');
await run(
  'vitest',
  'node_modules/vitest/vitest.mjs',
  [
    'run',
    '--config=tests/vitest.config.ts',
    ...['default', 'json', path.join(root, 'tests/hung.ts')].map((reporter) => `--reporter=${reporter}`),
    `--outputFile.json=${vitestJson}`,
  ],
  { live: true, sum: (isOk) => vitestSum(vitestJson, isOk) },
);
await types;
const browser = browserForTests();
if (browser === null) console.error('No Chromium is to be had: install one, or name it in FISTMELE_BROWSER.');
await run('playwright', 'node_modules/playwright/cli.js', ['test', '--config', 'tests/playwright.config.ts'], {
  live: true,
  env: { ...process.env, ...(browser ? { FISTMELE_BROWSER: browser } : {}) },
  sum: (isOk) => playwrightSum(path.join(results, 'playwright.json'), isOk),
});

const total = { passed: 0, failed: 0, skipped: 0 };
/** @param {Sum} sum */
const words = ({ passed, failed, skipped }) => `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
console.log('');
for (const row of rows) {
  for (const key of /** @type {const} */ (['passed', 'failed', 'skipped'])) total[key] += row[key];
  console.log(`${row.name.padEnd(12)} ${words(row).padEnd(32)} ${row.seconds.toFixed(1)} s`);
}
console.log(`all in ${((Date.now() - began) / 1000).toFixed(0)} s`);
console.log(words(total));
process.exit(total.failed > 0 ? 1 : 0);
