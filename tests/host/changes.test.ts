import { describe, expect, it, onTestFinished } from 'vitest';
import type { Change } from '../../core/model/index.ts';
import { migrate, migrations } from '../../electron/notebook/migrations.ts';
import { Notebook } from '../../electron/notebook/notebook.ts';
import { openSql } from '../../electron/notebook/sql.ts';
import {
  aBow,
  aGroup,
  anArcher,
  aSnapshot,
  change,
  opened,
  openedToClose,
  problemOf,
  stamp,
  stateWords,
  tempNotebook,
  undone,
  valueOf,
  wordsOf,
} from './support.ts';

describe('A Change', () => {
  it('gives birth to a record with revision 0 and counts each write one further', async () => {
    const notebook = await opened();
    const born = valueOf(notebook.apply(change(null, anArcher(1))));
    expect(born.records).toEqual([{ id: anArcher(1).id, record: anArcher(1) }]);
    const renamed = valueOf(notebook.apply(change(anArcher(1), anArcher(1, 'Renamed'))));
    expect(renamed.records[0]?.record).toEqual({ ...anArcher(1, 'Renamed'), revision: 1 });
    expect(notebook.load().records).toEqual([{ ...anArcher(1, 'Renamed'), revision: 1 }]);
  });

  it('takes the revision from the store, whatever the caller wrote into it', async () => {
    const notebook = await opened();
    const born = valueOf(notebook.apply(change(null, { ...anArcher(1), revision: 77 })));
    expect(born.records[0]?.record?.revision).toBe(0);
  });

  it('is still there when the notebook is closed and opened again', async () => {
    const file = tempNotebook();
    const first = await openedToClose(file);
    valueOf(first.notebook.apply(change(null, aBow(2))));
    await first.close();
    expect((await opened(file)).load().records).toEqual([aBow(2)]);
  });

  it('on a stale revision is refused with a sentence that names the record, and nothing is written', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1, 'Rowan'))));
    valueOf(notebook.apply(change(anArcher(1, 'Rowan'), anArcher(1, 'Ash'))));
    const problem = problemOf(notebook.apply(change(anArcher(1, 'Rowan'), anArcher(1, 'Elm'))));
    expect(problem.code).toBe('stale');
    expect(problem.sentence).toMatch(/Another window changed "Ash" since; nothing was written/);
    expect(notebook.load().records).toMatchObject([{ name: 'Ash', revision: 1 }]);
  });

  it('of several records is applied whole or not at all', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1))));
    const mixed: Change = {
      label: 'Two at once',
      edits: [
        { id: aBow(2).id, before: null, after: aBow(2) },
        { id: anArcher(1).id, before: { ...anArcher(1), revision: 5 }, after: anArcher(1, 'Other') },
      ],
    };
    expect(problemOf(notebook.apply(mixed)).code).toBe('stale');
    expect(notebook.load().records).toEqual([anArcher(1)]);
    expect(wordsOf(notebook.state)).toEqual({ undo: 'A change', redo: null });
  });

  it.each([
    ['a birth on an identity that is taken', change(null, anArcher(1, 'Second')), 'id-taken'],
    ['a write on a record that is not there', change(aBow(9), aBow(9, 'Renamed')), 'stale'],
    ['a removal', change(anArcher(1), null), 'removal'],
    [
      'an edit whose record has another identity',
      { label: 'x', edits: [{ id: anArcher(3).id, before: null, after: anArcher(4) }] },
      'other-record',
    ],
    ['a record that becomes another kind', change({ ...aBow(1) }, aBow(1)), 'other-record'],
    [
      'two edits of one record',
      {
        label: 'x',
        edits: [
          { id: anArcher(1).id, before: anArcher(1), after: anArcher(1, 'One') },
          { id: anArcher(1).id, before: anArcher(1), after: anArcher(1, 'Two') },
        ],
      },
      'edited-twice',
    ],
  ])('refuses %s', async (_what, refused, code) => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1))));
    const problem = problemOf(notebook.apply(refused));
    expect(problem.code).toBe(code);
    expect(problem.sentence).toMatch(/nothing was written/i);
    expect(notebook.load().records).toEqual([anArcher(1)]);
  });

  it('keeps a group of 100,000 shots, written and read whole', async () => {
    const file = tempNotebook();
    const first = await openedToClose(file);
    valueOf(first.notebook.apply(change(null, aGroup(1, 100_000))));
    await first.close();
    expect((await opened(file)).load().records).toEqual([aGroup(1, 100_000)]);
  });

  it('larger than one call may carry is refused', async () => {
    const notebook = await opened();
    const edits = [1, 2, 3].map((n) => ({ id: aGroup(n, 1).id, before: null, after: aGroup(n, 100_000) }));
    expect(problemOf(notebook.apply({ label: 'Far too many', edits })).code).toBe('too-large');
    expect(notebook.load().records).toEqual([]);
  });
});

describe('An edit that leaves its record as it is', () => {
  it('alone leaves no trace: no revision counted, nothing in the journal, and redo as it was', async () => {
    const file = tempNotebook();
    const open = await openedToClose(file);
    valueOf(open.notebook.apply(change(null, anArcher(1), 'Enter')));
    valueOf(open.notebook.apply(change(null, aBow(2), 'Another')));
    const { state } = valueOf(undone(open.notebook));
    const answer = valueOf(open.notebook.apply(change(anArcher(1), anArcher(1), 'Nothing')));
    expect(answer).toEqual({ records: [{ id: anArcher(1).id, record: anArcher(1) }], state });
    expect(wordsOf(state)).toEqual({ undo: 'Enter', redo: 'Another' });
    await open.close();
    const sql = openSql(file);
    expect(sql.all('SELECT label FROM journal').map(({ label }) => label)).toEqual(['Enter', 'Another', 'Another']);
    sql.close();
  });

  it('is dropped from a Change of several, and its record still answered', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1), 'Enter')));
    const edits = [
      { id: anArcher(1).id, before: anArcher(1), after: anArcher(1) },
      { id: aBow(2).id, before: null, after: aBow(2) },
    ];
    const answer = valueOf(notebook.apply({ label: 'Bow', edits }));
    expect(answer.records.map(({ record }) => record)).toEqual([anArcher(1), aBow(2)]);
    expect(valueOf(undone(notebook)).records).toEqual([{ id: aBow(2).id, record: null }]);
  });

  it('is still refused when the record is another by now', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1))));
    valueOf(notebook.apply(change(anArcher(1), anArcher(1, 'Renamed'))));
    expect(problemOf(notebook.apply(change(anArcher(1), anArcher(1)))).code).toBe('stale');
  });
});

describe('A write that the disk refuses', () => {
  it('is taken back whole, and a sentence says that nothing was changed', () => {
    const sql = openSql(tempNotebook());
    onTestFinished(() => sql.close());
    migrate(sql, migrations, () => stamp);
    let isFull = false;
    const onFullDisk: typeof sql = {
      ...sql,
      run: (statement, ...values) => {
        if (isFull && statement.includes('INTO journal')) throw new Error('database or disk is full');
        sql.run(statement, ...values);
      },
    };
    const notebook = new Notebook(onFullDisk, () => stamp);
    valueOf(notebook.apply(change(null, anArcher(1), 'Enter')));
    isFull = true;
    const problem = problemOf(notebook.apply(change(null, aBow(2), 'Too much')));
    expect(problem).toMatchObject({ code: 'notebook-cannot-write' });
    expect(problem.sentence).toMatch(/disk is full\)\. Nothing was changed: make room/);
    expect(problemOf(undone(notebook)).code).toBe('notebook-cannot-write');
    isFull = false;
    expect(notebook.load()).toMatchObject({ records: [anArcher(1)], problems: [] });
    expect(wordsOf(notebook.state)).toEqual({ undo: 'Enter', redo: null });
    expect(stateWords(undone(notebook))).toEqual({ undo: null, redo: 'Enter' });
  });
});

describe('A snapshot', () => {
  it('stays as it was taken', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, aSnapshot(1))));
    for (const altered of [
      { ...aSnapshot(1), name: 'Another name' },
      { ...aSnapshot(1), groups: [] },
      { ...aSnapshot(1), archivedAt: stamp, note: 'slipped in' },
    ]) {
      const problem = problemOf(notebook.apply(change(aSnapshot(1), altered)));
      expect(problem.code).toBe('snapshot-fixed');
      expect(problem.sentence).toContain('"Snapshot 1"');
    }
    expect(notebook.load().records).toEqual([aSnapshot(1)]);
  });

  it('can be put into the archive and taken out of it', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, aSnapshot(1))));
    const archived =
      valueOf(notebook.apply(change(aSnapshot(1), { ...aSnapshot(1), archivedAt: stamp }))).records[0]?.record ?? null;
    expect(archived).toEqual({ ...aSnapshot(1), archivedAt: stamp, revision: 1 });
    const restored = valueOf(notebook.apply(change(archived, aSnapshot(1)))).records[0]?.record;
    expect(restored).toEqual({ ...aSnapshot(1), revision: 2 });
  });

  it('goes with the Change that took it when that is undone', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, aSnapshot(1))));
    expect(valueOf(undone(notebook)).records).toEqual([{ id: aSnapshot(1).id, record: null }]);
    expect(notebook.load().records).toEqual([]);
  });
});
