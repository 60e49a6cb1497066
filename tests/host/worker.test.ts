import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import type { Bench } from '../../electron/bench.ts';
import { benchInWorker } from '../../electron/benchInWorker.ts';
import { buildProgram } from '../../electron/launch/build.mjs';
import { aGroup, anArcher, change, openedToClose, tempNotebook } from './support.ts';

const folder = path.join(import.meta.dirname, `../../.cache/worker-${process.pid}`);
const program = path.join(folder, 'worker.js');
beforeAll(() => buildProgram('electron/worker.ts', program));
afterAll(() => fs.rmSync(folder, { recursive: true }));

function benchOn(file: string, thread = program): Bench {
  const bench = benchInWorker(thread, { file, shell: 'loopback', version: '1.2.3' });
  onTestFinished(() => bench.close());
  return bench;
}
const own = { book: 'own' };

describe('The bench in its own thread', () => {
  it('answers as it does without one, and lets go of the notebook when it is closed', async () => {
    const file = tempNotebook();
    const bench = benchOn(file);
    expect((await bench.call('bench.info', null)).reply).toEqual({
      ok: true,
      value: { shell: 'loopback', version: '1.2.3', notebook: { file, problem: null } },
    });
    const { event } = await bench.call('notebook.apply', { ...own, change: change(null, anArcher(1)) });
    expect(event).toMatchObject({ event: 'notebook.changed', book: 'own' });
    await bench.close();
    expect(fs.existsSync(`${file}-wal`)).toBe(false);
    expect((await openedToClose(file)).notebook.load().records).toEqual([anArcher(1)]);
  });

  it('answers many calls at once, each its own', async () => {
    const bench = benchOn(tempNotebook());
    const births = Array.from({ length: 40 }, (_, n) =>
      bench.call('notebook.apply', { ...own, change: change(null, anArcher(n)) }),
    );
    const replies = await Promise.all(births);
    expect(replies.map(({ reply }) => reply)).toMatchObject(
      Array.from({ length: 40 }, (_, n) => ({ ok: true, value: { records: [{ record: { name: `Archer ${n}` } }] } })),
    );
  });

  it('carries a group of 100,000 shots there and back', async () => {
    const bench = benchOn(tempNotebook());
    expect((await bench.call('notebook.apply', { ...own, change: change(null, aGroup(1, 100_000)) })).reply.ok).toBe(true);
    const { reply } = await bench.call('notebook.load', own);
    expect(reply).toMatchObject({ ok: true, value: { records: [{ kind: 'group' }] } });
    expect((reply as { value: { records: { shots: unknown[] }[] } }).value.records[0]?.shots).toEqual(aGroup(1, 100_000).shots);
  });

  it('that has ended answers in a sentence, and so do the calls that were waiting', async () => {
    const bench = benchOn(tempNotebook());
    await bench.close();
    expect((await bench.call('notebook.load', own)).reply).toMatchObject({ ok: false, problem: { code: 'notebook-stopped' } });

    const broken = path.join(folder, 'broken.js');
    fs.writeFileSync(
      broken,
      "import { parentPort } from 'node:worker_threads'; parentPort.on('message', () => { throw new Error('a fault'); });",
    );
    const failing = benchOn(tempNotebook(), broken);
    const { reply } = await failing.call('notebook.load', own);
    expect(reply).toMatchObject({
      ok: false,
      problem: { sentence: expect.stringMatching(/stopped answering\. What was saved stays/) as string },
    });
  });
});
