// `npm run soak`: the long faults, which `npm test` only samples. Hundreds of kills, in every way the sample knows.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { ensureInstalled, root } from '../electron/launch/bootstrap.mjs';

ensureInstalled();
const { values } = parseArgs({
  options: { kills: { type: 'string', default: '200' }, seed: { type: 'string', default: String(Date.now() % 1e6) } },
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
console.log(faults === 0 ? 'nothing lost, nothing torn' : `${faults} faults`);
process.exit(faults === 0 ? 0 : 1);
