import fs from 'node:fs';
import { openNotebook } from '../../electron/notebook/open.ts';
import type { BenchRecord } from '../../core/model/index.ts';
import { counted, settled } from './killed.ts';

/**
 * The child that is killed: opens the notebook, then writes the same growing number into two records with every Change and says so when
 * the write is done. Killed at any moment, it must have lost nothing that it said, and the two must never differ.
 */
/** Straight to the pipe: when the one who should kill it has gone, this throws, and the child does not write on for ever. */
const say = (line: string) => fs.writeSync(1, `${line}\n`);

const [file = '', shotsEach = '0', pagesCached = '0'] = process.argv.slice(2);
say('begin');
const opened = await openNotebook(file, {
  now: () => ({ at: '2026-06-01T10:00:00Z', offsetMinutes: 0 }),
  ...(pagesCached === '0' ? {} : { pagesCached: Number(pagesCached) }),
});
if (!opened.ok) {
  say(`refused ${opened.problem.code}`);
  process.exit(1);
}
const { notebook } = opened.value;
say('open');
for (;;) {
  const [one, two] = settled(notebook.load().records);
  const next = one === null ? 1 : Number(one.note) + 1;
  const written = notebook.apply({ label: String(next), edits: [edit(one, 1), edit(two, 2)] });
  function edit(before: BenchRecord | null, which: 1 | 2) {
    const after = counted(which, next, Number(shotsEach));
    return { id: after.id, before, after };
  }
  if (!written.ok) {
    say(`refused ${written.problem.sentence}`);
    process.exit(1);
  }
  say(`wrote ${next}`);
}
