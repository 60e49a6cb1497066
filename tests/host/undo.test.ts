import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BenchRecord, type Change } from '../../core/model/index.ts';
import type { Notebook } from '../../electron/notebook/notebook.ts';
import {
  anArcher,
  aGroup,
  change,
  opened,
  openedToClose,
  problemOf,
  redone,
  stateWords,
  tempNotebook,
  undone,
  uuid,
  valueOf,
  wordsOf,
} from './support.ts';

const nameOf = (record: BenchRecord | undefined) => (record?.kind === 'archer' ? record.name : undefined);
const names = (notebook: Notebook) => notebook.load().records.map(nameOf);

describe('Undo and redo', () => {
  it('say what they would do, in the words of the Change', async () => {
    const notebook = await opened();
    expect(notebook.load().state).toEqual({ undo: null, redo: null });
    valueOf(notebook.apply(change(null, anArcher(1), 'Enter Archer 1')));
    expect(wordsOf(notebook.load().state)).toEqual({ undo: 'Enter Archer 1', redo: null });
    expect(stateWords(undone(notebook))).toEqual({ undo: null, redo: 'Enter Archer 1' });
    expect(stateWords(redone(notebook))).toEqual({ undo: 'Enter Archer 1', redo: null });
  });

  it('with nothing left answer in a sentence', async () => {
    const notebook = await opened();
    expect(problemOf(undone(notebook))).toEqual({ code: 'nothing-to-undo', sentence: 'There is nothing to undo.' });
    expect(problemOf(redone(notebook))).toEqual({ code: 'nothing-to-redo', sentence: 'There is nothing to redo.' });
  });

  it('name the entry of the Change, the same when it is undone and done again', async () => {
    const notebook = await opened();
    const first = valueOf(notebook.apply(change(null, anArcher(1), 'First'))).state.undo;
    const second = valueOf(notebook.apply(change(null, anArcher(2), 'Second'))).state.undo;
    expect(second?.entry).toBeGreaterThan(first?.entry ?? Infinity);
    expect(valueOf(undone(notebook)).state).toEqual({ undo: first, redo: second });
    expect(valueOf(redone(notebook)).state).toEqual({ undo: second, redo: null });
  });

  it('of what the caller has not seen is refused, with the words of what is now the last', async () => {
    const notebook = await opened();
    const seen = valueOf(notebook.apply(change(null, anArcher(1), 'Enter'))).state.undo?.entry ?? -1;
    valueOf(notebook.apply(change(null, anArcher(2), 'By another window')));
    expect(problemOf(notebook.undo(seen))).toEqual({
      code: 'undo-moved',
      sentence: 'Another window’s change “By another window” is now the last; nothing was undone. Look at it first.',
    });
    expect(names(notebook)).toEqual(['Archer 1', 'Archer 2']);

    const top = notebook.state.undo?.entry ?? -1;
    valueOf(notebook.undo(top));
    expect(problemOf(notebook.undo(top)).sentence).toMatch(
      /undone the last change already, and “Enter” is now the last; nothing/,
    );
    valueOf(notebook.undo(seen));
    expect(problemOf(notebook.redo(top))).toMatchObject({
      code: 'undo-moved',
      sentence: expect.stringMatching(/“Enter” has become the next to do again; nothing was done\. Look at it/) as string,
    });
    expect(names(notebook)).toEqual([]);
    valueOf(notebook.redo(seen));
    expect(names(notebook)).toEqual(['Archer 1']);
  });

  it('are themselves in the journal and survive a restart', async () => {
    const file = tempNotebook();
    const first = await openedToClose(file);
    valueOf(first.notebook.apply(change(null, anArcher(1), 'Enter')));
    valueOf(first.notebook.apply(change(anArcher(1), anArcher(1, 'Renamed'), 'Rename')));
    valueOf(undone(first.notebook));
    await first.close();

    const second = await openedToClose(file);
    expect(wordsOf(second.notebook.state)).toEqual({ undo: 'Enter', redo: 'Rename' });
    expect(names(second.notebook)).toEqual(['Archer 1']);
    valueOf(redone(second.notebook));
    await second.close();

    const third = await opened(file);
    expect(names(third)).toEqual(['Renamed']);
    expect(wordsOf(third.state)).toEqual({ undo: 'Rename', redo: null });
  });

  it('a new Change after an undo leaves nothing to redo', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1), 'First')));
    valueOf(undone(notebook));
    expect(stateWords(notebook.apply(change(null, anArcher(2), 'Second')))).toEqual({ undo: 'Second', redo: null });
  });

  it('count the revision on, so that a window that missed them is refused', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, anArcher(1))));
    valueOf(notebook.apply(change(anArcher(1), anArcher(1, 'Renamed'))));
    expect(valueOf(undone(notebook)).records[0]?.record?.revision).toBe(2);
    expect(valueOf(undone(notebook)).records[0]?.record).toBeNull();
    expect(valueOf(redone(notebook)).records[0]?.record).toEqual({ ...anArcher(1), revision: 4 });
    expect(problemOf(notebook.apply(change(anArcher(1), anArcher(1, 'From an old window')))).code).toBe('stale');
  });

  it('of one shot in a group of 2,000 writes the shot into the journal, not the group', async () => {
    const file = tempNotebook();
    const first = await openedToClose(file);
    valueOf(first.notebook.apply(change(null, aGroup(1, 2000))));
    const before = { ...aGroup(1, 2000) };
    const after = { ...before, shots: before.shots.map((shot, i) => (i === 1234 ? { ...shot, x: 0.01 } : shot)) };
    valueOf(first.notebook.apply(change(before, after, 'Move shot 1235')));
    expect(valueOf(undone(first.notebook)).records[0]?.record).toEqual({ ...before, revision: 2 });
    expect(valueOf(redone(first.notebook)).records[0]?.record).toEqual({ ...after, revision: 3 });
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
            (now === 'undo' ? undone : redone)(open.notebook);
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
