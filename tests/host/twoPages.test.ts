import fs from 'node:fs';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { Readable } from 'node:stream';
import type { ReadableStream } from 'node:stream/web';
import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import { contract, type Channel, type HostEvent, type Input, type Output } from '../../core/host.ts';
import type { Result } from '../../core/model/index.ts';
import { createBench } from '../../electron/bench.ts';
import { type Loopback, serve } from '../../electron/loopback/serve.ts';
import { anArcher, change, problemOf, tempFolder, valueOf } from './support.ts';

interface Page {
  call<C extends Channel>(channel: C, input: Input<C>): Promise<Result<Output<C>>>;
  readonly heard: HostEvent[];
}

/** A page as the browser is one: admitted by an address of its own, with a name of its own, listening. */
async function openPage(host: Loopback, name: string): Promise<Page> {
  const { origin, hash } = new URL(host.newAddress());
  const code = new URLSearchParams(hash.slice(1)).get('code') ?? '';
  const post = async (at: string, bearer: string, input: unknown): Promise<unknown> => {
    const headers = { origin, 'content-type': 'application/json', authorization: `Bearer ${bearer}`, 'x-fistmele-page': name };
    const answer = await fetch(`${origin}/api/${at}`, { method: 'POST', headers, body: JSON.stringify(input) });
    return answer.json();
  };
  const { token } = (await post('session', code, null)) as { token: string };
  const end = new AbortController();
  onTestFinished(() => end.abort());
  const events = await fetch(`${origin}/api/events`, {
    headers: { authorization: `Bearer ${token}`, 'x-fistmele-page': name },
    signal: end.signal,
  });
  const heard: HostEvent[] = [];
  const lines = Readable.fromWeb(events.body as ReadableStream);
  lines.on('error', () => {}); // the end of the test
  createInterface({ input: lines })
    .on('line', (line) => heard.push(JSON.parse(line) as HostEvent))
    .on('error', () => {});
  return {
    heard,
    async call(channel, input) {
      const answer = (await post(channel, token, input)) as Result<never>;
      if (answer.ok) contract[channel].output.parse(answer.value);
      return answer;
    },
  };
}

let one: Page;
let two: Page;
beforeEach(async () => {
  const folder = tempFolder();
  fs.writeFileSync(path.join(folder, 'index.html'), '<!doctype html><title>bench</title>');
  const bench = createBench({ file: path.join(folder, 'notebook.sqlite'), shell: 'loopback', version: '0' });
  const host = await serve(bench, folder);
  onTestFinished(async () => {
    await host.close();
    await bench.close();
  });
  [one, two] = [await openPage(host, 'one'), await openPage(host, 'two')];
});

const book = 'own';
const named = (page: Page, name: string, label: string) =>
  page.call('notebook.apply', { book, change: change(anArcher(1), anArcher(1, name), label) });

describe('Two pages on one notebook', () => {
  it('each hear of what the other wrote, and not of what they wrote themselves', async () => {
    const born = valueOf(await one.call('notebook.apply', { book, change: change(null, anArcher(1), 'Enter Archer 1') }));
    await expect.poll(() => two.heard).toEqual([{ event: 'notebook.changed', book, written: born }]);
    const renamed = valueOf(await named(two, 'Wren', 'Rename'));
    await expect.poll(() => one.heard).toEqual([{ event: 'notebook.changed', book, written: renamed }]);
    expect(two.heard).toHaveLength(1);
    expect(valueOf(await one.call('notebook.load', { book }))).toEqual(valueOf(await two.call('notebook.load', { book })));
  });

  it('do not write over each other: the later one is refused and nobody hears of it', async () => {
    valueOf(await one.call('notebook.apply', { book, change: change(null, anArcher(1), 'Enter Archer 1') }));
    valueOf(await named(one, 'Wren', 'Rename'));
    const problem = problemOf(await named(two, 'Robin', 'Rename too'));
    expect(problem.code).toBe('stale');
    expect(problem.sentence).toMatch(/^Another window changed "Wren" since; nothing was written\./);
    valueOf(await two.call('notebook.apply', { book, change: change(null, anArcher(2), 'Enter Archer 2') }));
    await expect.poll(() => one.heard.length).toBe(1);
    expect(one.heard[0]).toMatchObject({ written: { records: [{ record: { name: 'Archer 2' } }] } });
  });

  it('do not undo what they have not seen: each is told what is now the last, and may then', async () => {
    const born = valueOf(await one.call('notebook.apply', { book, change: change(null, anArcher(1), 'Enter Archer 1') }));
    const shown = born.state.undo?.entry ?? -1;
    const renamed = valueOf(await named(two, 'Wren', 'Rename'));
    expect(problemOf(await one.call('notebook.undo', { book, expected: shown }))).toEqual({
      code: 'undo-moved',
      sentence: 'Another window’s change “Rename” is now the last; nothing was undone. Look at it first.',
    });
    expect(valueOf(await one.call('notebook.load', { book })).records).toMatchObject([{ name: 'Wren' }]);
    expect(two.heard, 'a refusal is no news').toHaveLength(1);
    valueOf(await one.call('notebook.undo', { book, expected: renamed.state.undo?.entry ?? -1 }));
    await expect.poll(() => two.heard.at(-1)).toMatchObject({ written: { records: [{ record: { name: 'Archer 1' } }] } });
  });
});
