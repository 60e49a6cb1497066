import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { demoRecords } from '../../fixtures/demo/index.ts';
import { Books } from '../../electron/books.ts';
import { sweepDemoFolders } from '../../electron/demoFolders.ts';
import { anArcher, change, openedToClose, problemOf, stamp, tempFolder, tempNotebook, valueOf } from './support.ts';

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

describe("The demo's folder", () => {
  /** A temporary folder of this test alone, in which the demo is made. */
  function ownTemp(): string {
    const temp = tempFolder();
    vi.stubEnv('TMPDIR', temp);
    onTestFinished(() => void vi.unstubAllEnvs());
    return temp;
  }

  it('that cannot be made is a refusal with a sentence, and is made at the next call that can', async () => {
    const books = booksOn(tempNotebook());
    const temp = ownTemp();
    vi.stubEnv('TMPDIR', path.join(temp, 'not there'));
    expect(problemOf(await books.open('demo'))).toMatchObject({
      code: 'demo-no-place',
      sentence: expect.stringMatching(
        /^The demo has no place to be made in \(ENOENT.*\. Make room in .*, then try again\.$/,
      ) as string,
    });
    vi.stubEnv('TMPDIR', temp);
    expect(valueOf(await books.open('demo')).load().records.length).toBeGreaterThan(0);
  });

  it('of a killed bench is swept; a living one, a foreign one and one with other things in it stay', () => {
    const target = tempFolder();
    const temp = ownTemp();
    const gone = spawnSync(process.execPath, ['-e', '']).pid; // has been, and is no more
    const make = (name: string, inside = 'demo.sqlite') => {
      fs.mkdirSync(path.join(temp, name));
      fs.writeFileSync(path.join(temp, name, inside), '');
    };
    make(`fistmele-demo-${gone}-swept`);
    make(`fistmele-demo-${gone}-other`, 'letter.txt');
    make(`fistmele-demo-${process.pid}-living`);
    make(`somebody-demo-${gone}-x`);
    fs.writeFileSync(path.join(target, 'demo.sqlite'), '');
    fs.symlinkSync(target, path.join(temp, `fistmele-demo-${gone}-link`));
    sweepDemoFolders();
    expect(fs.readdirSync(temp).sort()).toEqual(
      [
        `fistmele-demo-${gone}-link`,
        `fistmele-demo-${gone}-other`,
        `fistmele-demo-${process.pid}-living`,
        `somebody-demo-${gone}-x`,
      ].sort(),
    );
    expect(fs.readdirSync(target)).toEqual(['demo.sqlite']);
  });

  it('is thrown away, and both books are closed, even when one will not close', async () => {
    const file = tempNotebook();
    const temp = ownTemp();
    const books = new Books(file, () => stamp);
    const own = valueOf(await books.open('own'));
    valueOf(await books.open('demo'));
    const close = own.close.bind(own);
    own.close = () => {
      close();
      throw new Error('the disk is gone');
    };
    await expect(books.close()).rejects.toThrow('could not be closed');
    expect(fs.readdirSync(temp)).toEqual([]);
    await (await openedToClose(file)).close();
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
