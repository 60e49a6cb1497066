import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BenchRecord, type Change } from '../../core/model/index.ts';
import type { Notebook } from '../../electron/notebook/notebook.ts';
import { anArcher, aGroup, change, opened, openedToClose, problemOf, tempNotebook, uuid, valueOf } from './support.ts';

const nameOf = (record: BenchRecord | undefined) => (record?.kind === 'archer' ? record.name : undefined);
const names = (notebook: Notebook) => notebook.load().records.map(nameOf);

describe('Undo and redo', () => {
  it('say what they would do, in the words of the Change', async () => {
    const notebook = await opened();
    expect(notebook.load().state).toEqual({ undo: null, redo: null });
    valueOf(notebook.apply(change(null, anArcher(1), 'Enter Archer 1')));
    expect(notebook.load().state).toEqual({ undo: 'Enter Archer 1', redo: null });
    expect(valueOf(notebook.undo()).state).toEqual({ undo: null, redo: 'Enter Archer 1' });
    expect(valueOf(notebook.redo()).state).toEqual({ undo: 'Enter Archer 1', redo: null });
  });

  it('with nothing left answer in a sentence', async () => {
    const notebook = await opened();
    expect(problemOf(notebook.undo())).toEqual({ code: 'nothing-to-undo', sentence: 'There is nothing to undo.' });
    expect(problemOf(notebook.redo())).toEqual({ code: 'nothing-to-redo', sentence: 'There is nothing to redo.' });
  });

  it('are themselves in the journal and survive a restart', async () => {
    const file = tempNotebook();
    const first = await openedToClose(file);
    valueOf(first.notebook.apply(change(null, anArcher(1), 'Enter')));
    valueOf(first.notebook.apply(change(anArcher(1), anArcher(1, 'Renamed'), 'Rename')));
    valueOf(first.notebook.undo());
    await first.close();

    const second = await openedToClose(file);
    expect(second.notebook.load().state).toEqual({ undo: 'Enter', redo: 'Rename' });
    expect(names(second.notebook)).toEqual(['Archer 1']);
    valueOf(second.notebook.redo());
    await second.close();

    const third = await opened(file);
    expect(names(third)).toEqual(['Renamed']);
    expect(third.load().state).toEqual({ undo: 'Rename', redo: null });
  });

  it('a new Change after an undo leaves nothing to redo', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1), 'First')));
    valueOf(notebook.undo());
    expect(valueOf(notebook.apply(change(null, anArcher(2), 'Second'))).state).toEqual({ undo: 'Second', redo: null });
  });

  it('count the revision on, so that a window that missed them is refused', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1))));
    valueOf(notebook.apply(change(anArcher(1), anArcher(1, 'Renamed'))));
    expect(valueOf(notebook.undo()).records[0]?.record?.revision).toBe(2);
    expect(valueOf(notebook.undo()).records[0]?.record).toBeNull();
    expect(valueOf(notebook.redo()).records[0]?.record).toEqual({ ...anArcher(1), revision: 4 });
    expect(problemOf(notebook.apply(change(anArcher(1), anArcher(1, 'From an old window')))).code).toBe('stale');
  });

  it('of one shot in a group of 2,000 writes the shot into the journal, not the group', async () => {
    const file = tempNotebook();
    const first = await openedToClose(file);
    valueOf(first.notebook.apply(change(null, aGroup(1, 2000))));
    const before = { ...aGroup(1, 2000) };
    const after = { ...before, shots: before.shots.map((shot, i) => (i === 1234 ? { ...shot, x: 0.01 } : shot)) };
    valueOf(first.notebook.apply(change(before, after, 'Move shot 1235')));
    expect(valueOf(first.notebook.undo()).records[0]?.record).toEqual({ ...before, revision: 2 });
    expect(valueOf(first.notebook.redo()).records[0]?.record).toEqual({ ...after, revision: 3 });
    await first.close();
    const { openSql } = await import('../../electron/notebook/sql.ts');
    const sql = openSql(file);
    const lengths = sql
      .all("SELECT length(edits) AS n FROM journal WHERE label = 'Move shot 1235'")
      .map((row) => Number(row['n']));
    sql.close();
    expect(lengths).toHaveLength(3);
    for (const length of lengths) expect(length).toBeLessThan(300);
  });
});

/** What the notebook ought to hold, by the plainest means: whole states on two piles. Computed independently of the journal. */
class Expected {
  names = new Map<string, string>();
  past: Map<string, string>[] = [];
  future: Map<string, string>[] = [];
  do(id: string, name: string) {
    this.past.push(this.names);
    this.future = [];
    this.names = new Map(this.names).set(id, name);
  }
  undo() {
    const before = this.past.pop();
    if (before === undefined) return;
    this.future.push(this.names);
    this.names = before;
  }
  redo() {
    const after = this.future.pop();
    if (after === undefined) return;
    this.past.push(this.names);
    this.names = after;
  }
}

const step = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.integer({ min: 1, max: 4 }),
      name: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }),
    }),
  },
  { weight: 3, arbitrary: fc.constant('undo' as const) },
  { weight: 2, arbitrary: fc.constant('redo' as const) },
  { weight: 1, arbitrary: fc.constant('reopen' as const) },
);

describe('Any order of Changes, undos, redos and restarts', () => {
  it('leaves what whole copied states would leave', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 30 }), async (steps) => {
        const file = tempNotebook();
        const expected = new Expected();
        let open = await openedToClose(file);
        for (const now of steps) {
          if (now === 'reopen') {
            await open.close();
            open = await openedToClose(file);
          } else if (now === 'undo' || now === 'redo') {
            open.notebook[now]();
            expected[now]();
          } else {
            const name = now.name.trim() || 'x';
            const stood = open.notebook.load().records.find((record) => record.id === uuid(now.do)) ?? null;
            const edit: Change = change(stood, { ...anArcher(now.do, name), revision: stood?.revision ?? 0 });
            valueOf(open.notebook.apply(edit));
            expected.do(uuid(now.do), name);
          }
          const held = new Map(open.notebook.load().records.map((record) => [record.id, nameOf(record)]));
          expect(held).toEqual(expected.names);
        }
        await open.close();
      }),
      { numRuns: 25, seed: 20260601 },
    );
  });
});
