// `npm run bench`, with `-- --json FILE` the same rows as JSON, and with `-- --only TEXT` only the rooms whose name holds that text.
// Figures, not checks: nothing here can fail for being slow.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ensureInstalled, root } from '../../electron/launch/bootstrap.mjs';

ensureInstalled();
const { buildAll, buildProgram } = await import('../../electron/launch/build.mjs');
const { entryRows } = await import('./entry.mjs');
const { frameRows } = await import('./frames.mjs');
const { stripRows } = await import('./strip.mjs');

/**
 * What stands behind a word of the command; null where nobody said it.
 * @param {string} word
 * @param {string} what
 * @param {string} such
 */
function behind(word, what, such) {
  const at = process.argv.indexOf(word);
  if (at < 0) return null;
  const said = process.argv[at + 1];
  if (said !== undefined) return said;
  console.error(`A ${what} was expected after ${word}, as in: npm run bench -- ${word} ${such}`);
  process.exit(2);
}
const jsonFile = behind('--json', 'file', 'bench.json');
const only = behind('--only', 'room', 'aim');

const folder = path.join(root, 'dist/bench');
fs.rmSync(folder, { recursive: true, force: true });
await buildProgram('tests/bench/all.ts', path.join(folder, 'all.js'));
await buildProgram('tests/bench/opening.ts', path.join(folder, 'opening.js'));
/** @typedef {import('./row.ts').Row} Row */
/** @typedef {(folder: string) => Row[] | Promise<Row[]>} Room */
/** @type {{ rooms: Readonly<Record<string, Room>> }} */
const { rooms } = await import(path.join(folder, 'all.js'));
/**
 * What is measured in the built page.
 * @type {Readonly<Record<string, Room>>}
 */
const inPage = { frames: frameRows, entry: () => entryRows(), 'strip of aim': stripRows };
/** @param {Readonly<Record<string, Room>>} all */
const chosen = (all) => Object.entries(all).filter(([name]) => name.includes(only ?? ''));
if (chosen({ ...rooms, ...inPage }).length === 0) {
  console.error(`No room of that name: there are ${Object.keys({ ...rooms, ...inPage }).join(', ')}.`);
  process.exit(2);
}

/** @param {string[]} texts */
const cells = (...[id = '', value = '', unit = '', reference = '', ratio = '']) =>
  id.padEnd(36) + value.padStart(12) + '  ' + unit.padEnd(4) + reference.padStart(12) + ratio.padStart(10);
/** @param {number | null} value */
const figure = (value) => (value === null ? '' : value !== 0 && Math.abs(value) < 0.001 ? value.toExponential(1) : format(value));
/** @param {number} value */
const format = (value) =>
  value.toLocaleString('en-GB', { maximumSignificantDigits: Math.abs(value) >= 1000 ? Math.trunc(Math.log10(value)) + 1 : 3 });

console.log(
  `Node ${process.version}, ${os.cpus()[0]?.model ?? 'unknown processor'}, ${os.platform()}. Medians, contestants in turn; processor time, but wall time of the notebook and of a strip in the page.`,
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
/** @type {Row[]} */
const rows = [];
/** @param {[name: string, room: Room][]} some */
async function measure(some) {
  for (const [, room] of some) {
    const found = await room(books);
    rows.push(...found);
    tell(found);
  }
}
await measure(chosen(rooms));
if (chosen(inPage).length > 0) await buildAll();
await measure(chosen(inPage));
fs.rmSync(books, { recursive: true, force: true });
if (jsonFile !== null) fs.writeFileSync(jsonFile, `${JSON.stringify(rows, null, 2)}\n`);
