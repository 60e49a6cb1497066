// `npm run calibration`: by simulation over known truths, how often the bench's verdicts and intervals are right.
// The rows go to the standard output as JSON, the readable table to the other. `-- --quick` draws a twentieth, `-- --only TEXT` some
// figures, `-- --write` renews the table in core/SCIENCE.md. The same seed gives the same rows, whatever else runs.
import { fork } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { ensureInstalled, root } from '../../electron/launch/bootstrap.mjs';

ensureInstalled();
const { values } = parseArgs({
  options: {
    quick: { type: 'boolean', default: false },
    write: { type: 'boolean', default: false },
    only: { type: 'string', default: '' },
    seed: { type: 'string', default: '1' },
    workers: { type: 'string', default: '2' },
    times: { type: 'boolean', default: false },
  },
});
const seed = Number(values.seed);
const workers = Number(values.workers);
if (!Number.isInteger(seed) || ![1, 2].includes(workers)) {
  console.error('A whole number was expected after --seed, and 1 or 2 after --workers.');
  process.exit(2);
}
if (values.write && (values.quick || values.only !== '')) {
  console.error('Only a full run may renew the table: leave --quick and --only out.');
  process.exit(2);
}

const { buildProgram } = await import('../../electron/launch/build.mjs');
const program = path.join(root, 'dist/calibration/all.js');
await buildProgram('tests/calibration/all.ts', program);
/** @type {typeof import('./all.ts')} */
const { figures, worstRows, tableOf, renewed } = await import(program);

const asked = figures.map((_, index) => index).filter((index) => figures[index]?.name.includes(values.only));
/** @type {Map<number, import('./row.ts').Row[]>} */
const found = new Map();
const waiting = [...asked];
let seconds = 0;

/** @returns {Promise<void>} */
const work = () =>
  new Promise((resolve, reject) => {
    const child = fork(path.join(import.meta.dirname, 'worker.mjs'), [program]);
    const next = () => {
      const index = waiting.shift();
      if (index === undefined) child.disconnect();
      else child.send({ index, seed, quick: values.quick });
    };
    child.on('message', (/** @type {any} */ message) => {
      if (message !== 'ready') {
        found.set(message.index, message.rows);
        seconds += message.seconds;
        if (values.times) console.error(`${message.seconds.toFixed(1)} s  ${figures[message.index]?.name}`);
      }
      next();
    });
    child.on('exit', (code) => (code === 0 ? resolve() : reject(new Error(`a worker ended with ${code}`))));
  });
await Promise.all(Array.from({ length: workers }, work));

const rows = asked.flatMap((index) => found.get(index) ?? []);
const all = [...worstRows(rows), ...rows];
console.log(`[\n${all.map((row) => JSON.stringify(row)).join(',\n')}\n]`);
console.error(tableOf(all));
const missed = all.filter(({ holds }) => holds === false);
console.error(
  `\n${all.length} rows, seed ${seed}, ${seconds.toFixed(0)} s of processor time. ${missed.length === 0 ? 'All bounds hold.' : `Not held: ${missed.map(({ name, value }) => `${name} (${value.toFixed(4)})`).join('; ')}.`}`,
);
if (values.write) {
  const page = path.join(root, 'core/SCIENCE.md');
  const told = `Renewed by \`npm run calibration -- --write\` with seed ${seed}; ${all.length} rows.`;
  fs.writeFileSync(page, renewed(fs.readFileSync(page, 'utf8'), `${told}\n\n${tableOf(all)}`));
}
