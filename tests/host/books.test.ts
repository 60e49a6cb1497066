import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { demoRecords } from '../../fixtures/demo/index.ts';
import { Books } from '../../electron/books.ts';
import { anArcher, change, openedToClose, stamp, tempFolder, tempNotebook, valueOf } from './support.ts';

function booksOn(file: string): Books {
  const books = new Books(file, () => stamp);
  onTestFinished(() => books.close());
  return books;
}

describe("The demo's notebook", () => {
  it('holds the demo, with nothing to undo', async () => {
    const demo = valueOf(await booksOn(tempNotebook()).open('demo'));
    const { records, state, problems } = demo.load();
    expect(problems).toEqual([]);
    expect(new Set(records.map(({ id }) => id))).toEqual(new Set(demoRecords(stamp).map(({ id }) => id)));
    expect(state).toEqual({ undo: null, redo: null });
  });

  it('and the own one never mix', async () => {
    const books = booksOn(tempNotebook());
    const own = valueOf(await books.open('own'));
    const demo = valueOf(await books.open('demo'));
    const seeded = demo.load().records.length;
    valueOf(demo.apply(change(null, anArcher(1, 'Only in the demo'))));
    expect(own.load()).toEqual({ records: [], state: { undo: null, redo: null }, problems: [] });
    valueOf(own.apply(change(null, anArcher(2, 'Only in the own'))));
    expect(demo.load().records).toHaveLength(seeded + 1);
  });

  it('is thrown away when the bench closes', async () => {
    const temp = tempFolder();
    vi.stubEnv('TMPDIR', temp);
    const books = booksOn(tempNotebook());
    valueOf(await books.open('demo'));
    const [made] = fs.readdirSync(temp).filter((name) => name.startsWith('fistmele-demo-'));
    expect(fs.readdirSync(path.join(temp, made ?? 'none'))).toContain('demo.sqlite');
    await books.close();
    vi.unstubAllEnvs();
    expect(fs.existsSync(path.join(temp, made ?? 'none'))).toBe(false);
  });

  it('opens even while the own notebook cannot be', async () => {
    const file = tempNotebook();
    fs.writeFileSync(file, 'not a notebook');
    const books = booksOn(file);
    expect((await books.problem())?.code).toBe('notebook-not-one');
    expect((await books.open('demo')).ok).toBe(true);
  });
});

describe('A notebook with a problem', () => {
  it('is tried again at the next call, so that mending it needs no restart', async () => {
    const file = tempNotebook();
    const other = await openedToClose(file);
    const books = booksOn(file);
    expect((await books.problem())?.code).toBe('notebook-locked');
    await other.close();
    expect(await books.problem()).toBeNull();
  });

  it('that is asked for twice at once is opened once', async () => {
    const books = booksOn(tempNotebook());
    const [first, second] = await Promise.all([books.open('own'), books.open('own')]);
    expect(valueOf(first)).toBe(valueOf(second));
  });
});
