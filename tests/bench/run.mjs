// `npm run bench`, and with `-- --json FILE` the same rows as JSON. Figures, not checks: nothing here can fail for being slow.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ensureInstalled, root } from '../../electron/launch/bootstrap.mjs';

ensureInstalled();
const { buildProgram } = await import('../../electron/launch/build.mjs');
const { entryRows } = await import('./entry.mjs');
const { frameRows } = await import('./frames.mjs');

const asked = process.argv.indexOf('--json');
const jsonFile = asked < 0 ? null : process.argv[asked + 1];
if (jsonFile === undefined) {
  console.error('A file was expected after --json, as in: npm run bench -- --json bench.json');
  process.exit(2);
}

const folder = path.join(root, 'dist/bench');
fs.rmSync(folder, { recursive: true, force: true });
await buildProgram('tests/bench/all.ts', path.join(folder, 'all.js'));
await buildProgram('tests/bench/opening.ts', path.join(folder, 'opening.js'));
const { benchRows } = await import(path.join(folder, 'all.js'));

/** @typedef {import('./row.ts').Row} Row */

/** @param {string[]} texts */
const cells = (...[id = '', value = '', unit = '', reference = '', ratio = '']) =>
  id.padEnd(36) + value.padStart(12) + '  ' + unit.padEnd(4) + reference.padStart(12) + ratio.padStart(10);
/** @param {number | null} value */
const figure = (value) => (value === null ? '' : value !== 0 && Math.abs(value) < 0.001 ? value.toExponential(1) : format(value));
/** @param {number} value */
const format = (value) =>
  value.toLocaleString('en-GB', { maximumSignificantDigits: Math.abs(value) >= 1000 ? Math.trunc(Math.log10(value)) + 1 : 3 });

console.log(
  `Node ${process.version}, ${os.cpus()[0]?.model ?? 'unknown processor'}, ${os.platform()}. Medians, contestants in turn; processor time, but for the notebook wall time.`,
);
const load = os.loadavg()[0] ?? 0;
if (load > 1)
  console.log(`The machine is busy (load ${load.toFixed(1)}): trust ratios before times, and the notebook's times least.`);
console.log(cells('figure', 'value', '', 'reference', 'ratio'));
const books = fs.mkdtempSync(path.join(folder, 'notebooks-'));
/** @param {Row[]} found */
const tell = (found) => {
  for (const { id, value, unit, reference, ratio } of found)
    console.log(cells(id, figure(value), unit, figure(reference), figure(ratio)));
};
const rows = await benchRows(books, tell);
const frames = [...(await frameRows()), ...(await entryRows())];
tell(frames);
rows.push(...frames);
fs.rmSync(books, { recursive: true, force: true });
if (jsonFile !== null) fs.writeFileSync(jsonFile, `${JSON.stringify(rows, null, 2)}\n`);
