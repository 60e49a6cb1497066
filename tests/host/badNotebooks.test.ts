import fs from 'node:fs';
import path from 'node:path';
import sqlite from 'node-sqlite3-wasm';
import { describe, expect, it } from 'vitest';
import { NOTEBOOK_VERSION } from '../../core/model/index.ts';
import { type Migration, migrations } from '../../electron/notebook/migrations.ts';
import type { OpenNotebook } from '../../electron/notebook/open.ts';
import { openSql } from '../../electron/notebook/sql.ts';
import {
  aBow,
  aGroup,
  anArcher,
  change,
  opened,
  openedToClose,
  problemOf,
  refusalOf,
  tempFolder,
  tempNotebook,
  uuid,
  valueOf,
} from './support.ts';

/** A sound notebook with two records, closed. */
async function soundNotebook(): Promise<string> {
  const file = tempNotebook();
  const open = await openedToClose(file);
  valueOf(open.notebook.apply(change(null, anArcher(1))));
  valueOf(open.notebook.apply(change(null, aGroup(2, 3000))));
  await open.close();
  return file;
}

/** The whole folder as it lies on the disk: a refused notebook must be left exactly so. */
const asItLies = (file: string) => {
  const folder = path.dirname(file);
  return Object.fromEntries(
    fs
      .readdirSync(folder)
      .map((name) => [
        name,
        fs.statSync(path.join(folder, name)).isFile() ? fs.readFileSync(path.join(folder, name), 'base64') : 'folder',
      ]),
  );
};

const damages: readonly { what: string; harm: (file: string) => void; code: string; says: RegExp }[] = [
  {
    what: 'cut to half its length',
    harm: (file) => fs.truncateSync(file, Math.floor(fs.statSync(file).size / 2)),
    code: 'notebook-damaged',
    says: /bytes are left/,
  },
  {
    what: 'cut within its first bytes',
    harm: (file) => fs.truncateSync(file, 60),
    code: 'notebook-not-one',
    says: /not a Fistmele notebook/,
  },
  { what: 'emptied', harm: (file) => fs.truncateSync(file, 0), code: 'notebook-not-one', says: /not a Fistmele notebook/ },
  {
    what: 'overwritten with text',
    harm: (file) => fs.writeFileSync(file, 'Brace height 8 1/2\n'.repeat(50)),
    code: 'notebook-not-one',
    says: /move it away/,
  },
  {
    what: 'a folder',
    harm: (file) => {
      fs.rmSync(file);
      fs.mkdirSync(file);
    },
    code: 'notebook-not-one',
    says: /not a Fistmele notebook/,
  },
  {
    what: "another program's database",
    harm: (file) => {
      fs.rmSync(file);
      const db = new sqlite.Database(file);
      db.exec('CREATE TABLE cake(id)');
      db.close();
    },
    code: 'notebook-not-one',
    says: /not a Fistmele notebook/,
  },
  {
    what: 'scribbled over in the middle',
    harm: (file) => {
      const bytes = fs.readFileSync(file);
      bytes.fill(0x5a, 4096, 4096 * 3);
      fs.writeFileSync(file, bytes);
    },
    code: 'notebook-damaged',
    says: /put back a copy/,
  },
  {
    what: 'marked as not to be written',
    harm: (file) => fs.chmodSync(file, 0o444),
    code: 'notebook-read-only',
    says: /right to write/,
  },
  {
    what: 'in a folder marked as not to be written',
    harm: (file) => fs.chmodSync(path.dirname(file), 0o555),
    code: 'notebook-read-only',
    says: /right to write/,
  },
  {
    what: "beside another program's unfinished write",
    harm: (file) => fs.writeFileSync(`${file}-journal`, 'unfinished'),
    code: 'notebook-strange-journal',
    says: /another program/,
  },
  {
    what: 'gone, with its companion left behind',
    harm: (file) => {
      fs.rmSync(file);
      fs.writeFileSync(`${file}-wal`, 'left');
    },
    code: 'notebook-orphan-log',
    says: /Put the notebook back/,
  },
];

describe('A notebook that is', () => {
  it.each(damages)('$what is refused with a sentence, and left as it lies', async ({ harm, code, says }) => {
    const file = await soundNotebook();
    harm(file);
    const before = asItLies(file);
    const problem = await refusalOf(file);
    expect(problem.code).toBe(code);
    expect(problem.sentence).toContain(path.basename(file));
    expect(problem.sentence).toMatch(says);
    expect(asItLies(file)).toEqual(before);
  });

  it('open in another bench is refused, and can be opened when that one has let go', async () => {
    const file = await soundNotebook();
    const first = await openedToClose(file);
    const problem = await refusalOf(file);
    expect(problem.code).toBe('notebook-locked');
    expect(problem.sentence).toMatch(/open in another Fistmele\. Close that one, then try again/);
    const link = path.join(tempFolder(), 'link.sqlite');
    fs.symlinkSync(file, link);
    expect((await refusalOf(link)).code, 'by another road to the same file').toBe('notebook-locked');
    await first.close();
    expect((await opened(file)).load().records).toHaveLength(2);
  });

  it('where no folder can be made is refused', async () => {
    const inTheWay = path.join(tempFolder(), 'file');
    fs.writeFileSync(inTheWay, '');
    const problem = await refusalOf(path.join(inTheWay, 'notebook.sqlite'));
    expect(problem.code).toBe('notebook-unreachable');
    expect(problem.sentence).toMatch(/FISTMELE_NOTEBOOK/);
  });

  it('left with the lock of a killed bench opens all the same', async () => {
    const file = await soundNotebook();
    fs.mkdirSync(`${file}.lock`);
    expect((await opened(file)).load().records).toHaveLength(2);
  });
});

/** What a killed bench leaves: the notebook as it was last folded, and a log with what was written since. */
async function withLeftoverLog(write: (file: string) => Promise<OpenNotebook>): Promise<string> {
  const file = await soundNotebook();
  const open = await write(file);
  const left = tempNotebook();
  for (const suffix of ['', '-wal']) fs.copyFileSync(file + suffix, left + suffix);
  await open.close();
  return left;
}
async function twoMore(file: string): Promise<OpenNotebook> {
  const open = await openedToClose(file);
  valueOf(open.notebook.apply(change(null, anArcher(3))));
  valueOf(open.notebook.apply(change(null, aBow(4))));
  return open;
}
const nextVersion: Migration = {
  to: NOTEBOOK_VERSION + 1,
  rewritesRecords: false,
  run: (sql) => sql.exec('CREATE TABLE later(id TEXT) STRICT'),
};

describe('A notebook with a log that was left behind', () => {
  it('opens with what stands in the log', async () => {
    const file = await withLeftoverLog(twoMore);
    expect(fs.statSync(`${file}-wal`).size).toBeGreaterThan(0);
    expect((await opened(file)).load().records).toHaveLength(4);
    expect(fs.readdirSync(path.dirname(file)).filter((name) => name.includes('.look'))).toEqual([]);
  });

  it.each([
    ['cut to half its length', (file: string) => fs.truncateSync(file, Math.floor(fs.statSync(file).size / 2))],
    [
      'scribbled over in the middle',
      (file: string) => {
        const bytes = fs.readFileSync(file);
        bytes.fill(0x5a, 4096 * 10, 4096 * 12); // pages of the group of 3000 shots, which the log does not hold
        fs.writeFileSync(file, bytes);
      },
    ],
  ])('and %s is refused, and both lie as they lay', async (_what, harm) => {
    const file = await withLeftoverLog(twoMore);
    harm(file);
    const before = asItLies(file);
    const problem = await refusalOf(file);
    expect(problem.code).toBe('notebook-damaged');
    expect(problem.sentence).toContain(`Its companion ${file}-wal belongs to it`);
    expect(asItLies(file)).toEqual(before);
  });

  it('in which alone it says that it is newer is refused, and both lie as they lay', async () => {
    const file = await withLeftoverLog((at) => openedToClose(at, { migrations: [...migrations, nextVersion] }));
    expect(fs.readFileSync(file).readUInt32BE(60), 'the header is still of the older version').toBe(NOTEBOOK_VERSION);
    const before = asItLies(file);
    const problem = await refusalOf(file);
    expect(problem.code).toBe('notebook-newer');
    expect(problem.sentence).toContain(`${file}-wal belongs to it`);
    expect(asItLies(file)).toEqual(before);
  });

  it('and a header that says newer is refused on sight', async () => {
    const file = await withLeftoverLog(twoMore);
    const bytes = fs.readFileSync(file);
    bytes.writeUInt32BE(NOTEBOOK_VERSION + 1, 60);
    fs.writeFileSync(file, bytes);
    const before = asItLies(file);
    expect((await refusalOf(file)).code).toBe('notebook-newer');
    expect(asItLies(file)).toEqual(before);
  });
});

describe('When something fails on the way', () => {
  const failing: Migration = {
    to: 1,
    rewritesRecords: false,
    run: () => {
      throw new Error('the step broke off');
    },
  };
  const openHandles = (folder: string) =>
    fs.readdirSync('/proc/self/fd').filter((fd) => {
      try {
        return fs.readlinkSync(`/proc/self/fd/${fd}`).startsWith(folder);
      } catch {
        return false;
      }
    });

  it('a notebook that could not be made leaves nothing behind, and can be made the next time', async () => {
    const file = tempNotebook();
    expect((await refusalOf(file, { migrations: [failing] })).sentence).toContain('the step broke off');
    expect(asItLies(file)).toEqual({});
    if (process.platform === 'linux') expect(openHandles(path.dirname(file))).toEqual([]);
    expect((await opened(file)).load().records).toEqual([]);
  });

  it('a notebook whose closing fails still lets go of it', async () => {
    const file = await soundNotebook();
    const open = await openedToClose(file);
    const close = open.notebook.close.bind(open.notebook);
    open.notebook.close = () => {
      close();
      throw new Error('the disk is gone');
    };
    await expect(open.close()).rejects.toThrow('the disk is gone');
    open.notebook.close = () => undefined;
    expect((await opened(file)).load().records).toHaveLength(2);
  });
});

describe('A record that cannot be read', () => {
  it('never keeps the others away, is named among the problems, and stays in the file', async () => {
    const file = await soundNotebook();
    const sql = openSql(file);
    const strange = '{"kind":"bow","colour":"no bow of ours"}';
    sql.run('INSERT INTO record(id, kind, revision, json) VALUES (?, ?, ?, ?)', uuid(7), 'bow', 0, strange);
    sql.run('INSERT INTO record(id, kind, revision, json) VALUES (?, ?, ?, ?)', uuid(8), 'quiver', 0, 'not even JSON');
    sql.close();

    const open = await openedToClose(file);
    const { records, problems } = open.notebook.load();
    expect(records.map(({ id }) => id)).toEqual([uuid(1), uuid(2)]);
    expect(problems.map(({ code }) => code)).toEqual(['record-unreadable', 'record-unreadable']);
    expect(problems[0]?.sentence).toMatch(
      /One bow in the notebook cannot be read by this version\. It was left in the file as it is/,
    );
    expect(problemOf(open.notebook.apply(change(aBow(7), aBow(7, 'Overwritten')))).code).toBe('record-unreadable');
    await open.close();

    const after = openSql(file);
    expect(after.get('SELECT json FROM record WHERE id = ?', uuid(7))?.['json']).toBe(strange);
    after.close();
  });
});
