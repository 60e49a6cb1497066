// `npm run soak`: what `npm test` only samples. Hundreds of kills, in every way the sample knows, and every property with other seeds.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { ensureInstalled, root } from '../electron/launch/bootstrap.mjs';

ensureInstalled();
const { values } = parseArgs({
  options: {
    kills: { type: 'string', default: '200' },
    seeds: { type: 'string', default: '20' },
    seed: { type: 'string', default: String(Date.now() % 1e6) },
  },
});
const kills = Number(values.kills);
const { runnerImport } = await import('vite');
const { buildWriter } = await import('./host/buildWriter.mjs');
const { module } = await runnerImport(path.join(root, 'tests/host/killing.ts'), { root, configFile: false });
const { killOnce, seeded } = module;

const ways = [
  { name: 'writing, transactions over a small cache', kills, shots: 1500, pagesCached: 16, while: 'writing', fresh: false },
  {
    name: "writing, transactions over SQLite's own cache",
    kills: Math.ceil(kills / 4),
    shots: 24_000,
    pagesCached: 0,
    while: 'writing',
    fresh: false,
  },
  { name: 'while the notebook is being made', kills, shots: 10, pagesCached: 0, while: 'opening', fresh: true },
];
console.log(`seed ${values.seed}`);
const random = seeded(Number(values.seed));
const writer = await buildWriter();
let faults = 0;
for (const way of ways) {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'fistmele-soak-'));
  let [found, lastFile] = [0, ''];
  for (let i = 0; i < way.kills; i++) {
    // A journal of thousands of large Changes would only make the looking slow, so every 50 kills a new notebook is taken.
    const file = path.join(folder, way.fresh ? `${i}.sqlite` : `${Math.floor(i / 50)}.sqlite`);
    if (file !== lastFile && lastFile !== '') for (const suffix of ['', '-wal']) fs.rmSync(lastFile + suffix, { force: true });
    lastFile = file;
    const report = await killOnce(writer, file, { ...way, share: 1.2 * random() });
    if (report.fault !== null) {
      faults++;
      console.log(`  kill ${i}: ${report.fault}`);
    }
    found = report.found;
  }
  fs.rmSync(folder, { recursive: true, force: true });
  console.log(`${way.name}: ${way.kills} kills, the last notebook held ${found} Changes`);
}
fs.rmSync(path.dirname(writer), { recursive: true, force: true });

const tests = path.join(root, 'tests');
const properties = fs
  .readdirSync(tests, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.test.ts') && fs.readFileSync(path.join(tests, file), 'utf8').includes("'fast-check'"));
for (let i = 0; i < Number(values.seeds); i++) {
  const seed = String(Math.floor(1e9 * random()));
  const vitest = [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--config=tests/vitest.config.ts',
    '--reporter=dot',
    '--reporter=tests/hung.ts',
  ];
  const { status, stdout, stderr } = spawnSync(process.execPath, [...vitest, ...properties], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, FISTMELE_SEED: seed },
  });
  if (status !== 0) faults++;
  console.log(`properties, seed ${seed}: ${status === 0 ? 'all hold' : `${stdout}${stderr}`}`);
}
console.log(faults === 0 ? 'nothing lost, nothing torn, every property holds' : `${faults} faults`);
process.exit(faults === 0 ? 0 : 1);
