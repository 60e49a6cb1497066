import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import type { HostEvent } from '../../core/host.ts';
import { MOST_WAITING_BYTES, Streams } from '../../electron/loopback/streams.ts';
import { aGroup } from './support.ts';

const event: HostEvent = {
  event: 'notebook.changed',
  book: 'own',
  written: { records: [{ id: aGroup(1, 0).id, record: aGroup(1, 20_000) }], state: { undo: null, redo: null } },
};
const turn = () => new Promise((done) => setImmediate(done));
const lineBytes = JSON.stringify(event).length + 1;

describe('A page that listens and reads', () => {
  it('gets every line, however many there are', async () => {
    const streams = new Streams();
    const page = new PassThrough();
    let got = 0;
    page.on('data', (part: Buffer) => (got += part.length));
    streams.add('reads', page);
    const times = Math.ceil(MOST_WAITING_BYTES / lineBytes) + 5;
    for (let i = 0; i < times; i++) {
      streams.tell(event, 'another');
      await turn();
    }
    expect(page.destroyed).toBe(false);
    expect(got).toBe(times * lineBytes);
  });
});

describe('A page that no longer reads', () => {
  it('loses its line once two of the largest Changes wait for it, and the others keep theirs', async () => {
    const streams = new Streams();
    const asleep = new PassThrough();
    const awake = new PassThrough();
    awake.resume();
    streams.add('asleep', asleep);
    streams.add('awake', awake);
    let told = 0;
    while (!asleep.destroyed && told < 1000) {
      streams.tell(event, 'another');
      told++;
      await turn();
    }
    expect(told * lineBytes).toBeGreaterThan(MOST_WAITING_BYTES);
    expect(told * lineBytes).toBeLessThan(MOST_WAITING_BYTES + 3 * lineBytes);
    streams.tell(event, 'another');
    expect(awake.destroyed).toBe(false);
  });
});
