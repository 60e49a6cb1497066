import { describe, expect, it } from 'vitest';
import type { Channel, Host, HostEvent, Input, Written } from '../../core/host.ts';
import { exampleFletched } from '../../core/model/example.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import { ok, type Problem, refuse } from '../../core/model/problem.ts';
import type { BenchRecord, Change } from '../../core/model/records.ts';
import { withShots } from '../../core/model/shotsEdit.ts';
import { born, createBench, edited } from '../../renderer/state/bench.ts';
import { newArcher } from '../../renderer/state/births.ts';

/** A host in memory that keeps the rule of revisions, answers late, and notes what it was asked. */
function memoryHost(problems: readonly Problem[] = []) {
  const records = new Map<string, BenchRecord>();
  const changes: Change[] = [];
  const listeners = new Set<(event: HostEvent) => void>();
  const tell = (event: HostEvent) => listeners.forEach((listener) => listener(event));
  const apply = (change: Change) => {
    for (const { id, before } of change.edits) {
      if ((records.get(id)?.revision ?? null) !== (before?.revision ?? null))
        return refuse('stale', 'Another window changed this first.');
    }
    changes.push(change);
    const written: Written['records'] = change.edits.map(({ id, before, after }) => {
      const record = after === null ? null : { ...after, revision: (before?.revision ?? -1) + 1 };
      if (record === null) records.delete(id);
      else records.set(id, record);
      return { id, record };
    });
    return ok({ records: written, state: { undo: { label: change.label, entry: changes.length }, redo: null } });
  };
  /** Takes changes off the end of the list, which here is all that undoing is. */
  const undo = (expected: number) => {
    if (expected !== changes.length) return refuse('undo-moved', 'Another window changed this first.');
    changes.pop();
    const last = changes.at(-1);
    return ok({
      records: [],
      state: { undo: last === undefined ? null : { label: last.label, entry: changes.length }, redo: null },
    });
  };
  const host: Host = {
    async call<C extends Channel>(channel: C, input: Input<C>) {
      await new Promise((resolve) => setTimeout(resolve, 2));
      const answers: Record<Channel, () => unknown> = {
        'bench.info': () => ok({ shell: 'loopback', version: '0', notebook: { file: 'memory', problem: null } }),
        'notebook.load': () => ok({ records: [...records.values()], state: { undo: null, redo: null }, problems }),
        'notebook.apply': () => apply((input as Input<'notebook.apply'>).change),
        'notebook.shots': () => {
          const { label, edit } = input as Input<'notebook.shots'>;
          const group = records.get(edit.groupId);
          if (group?.kind !== 'group') return refuse('stale', 'No such group.');
          const before = { id: group.id, kind: group.kind, revision: edit.revision };
          const after = { ...group, shots: withShots(group.shots, edit) };
          const written = apply({ label, edits: [{ id: group.id, before, after }] });
          return written.ok ? ok({ revision: edit.revision + 1, state: written.value.state }) : written;
        },
        'notebook.undo': () => undo((input as Input<'notebook.undo'>).expected),
        'notebook.redo': () => refuse('nothing', 'Nothing to redo.'),
        'preferences.get': () => ok(defaultPreferences),
        'preferences.set': () => ok(input),
        'files.save': () => refuse('nowhere', 'This host writes no files.'),
        'files.pdf': () => refuse('nowhere', 'This host prints nothing.'),
      };
      return answers[channel]() as never;
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  return { host, changes, records, tell };
}

describe('the store that mirrors the notebook', () => {
  it('makes quick edits of one record wait their turn, so that none is stale', async () => {
    const { host, changes, records } = memoryHost();
    const bench = createBench(host);
    await bench.getState().open('own');
    const archer = newArcher('First archer', 'right');
    const rename = (name: string) =>
      bench.getState().change(`Name ${name}`, (all) => {
        const record = all.get(archer.id);
        return record?.kind === 'archer' ? [edited(record, { name })] : [];
      });
    const results = await Promise.all([
      bench.getState().change('Begin', () => [born(archer)]),
      rename('Ann'),
      rename('Bea'),
      rename('Cy'),
    ]);
    expect(results).toEqual([true, true, true, true]);
    expect(changes.map((change) => change.label)).toEqual(['Begin', 'Name Ann', 'Name Bea', 'Name Cy']);
    expect(records.get(archer.id)).toMatchObject({ name: 'Cy', revision: 3 });
    expect(bench.getState().pending).toBe(0);
  });

  it('takes two quick steps back as two, and one that is asked for while a change is written as that change', async () => {
    const { host, changes } = memoryHost();
    const bench = createBench(host);
    await bench.getState().open('own');
    const begin = (name: string) => bench.getState().change(name, () => [born(newArcher(name, 'right'))]);
    for (const name of ['A', 'B', 'C']) await begin(name);
    await Promise.all([bench.getState().undo(), bench.getState().undo()]);
    expect(changes.map(({ label }) => label)).toEqual(['A']);
    expect(bench.getState().said).toMatchObject({ kind: 'kept', sentence: 'Undone: B' });
    await Promise.all([begin('D'), bench.getState().undo(), bench.getState().undo(), bench.getState().undo()]);
    expect(changes).toEqual([]);
    expect(bench.getState().said).toMatchObject({ kind: 'kept', sentence: 'Undone: A' });
  });

  it('says a refusal in its sentence and keeps what it had', async () => {
    const { host } = memoryHost();
    const bench = createBench(host);
    await bench.getState().open('own');
    const archer = newArcher('First archer', 'right');
    await bench.getState().change('Begin', () => [born(archer)]);
    const stale = await bench.getState().change('Begin again', () => [born(archer)]);
    expect(stale).toBe(false);
    expect(bench.getState().said).toMatchObject({ kind: 'refused', sentence: 'Another window changed this first.' });
    expect(bench.getState().records.get(archer.id)).toMatchObject({ name: 'First archer', revision: 0 });
  });

  it('goes on after a refusal', async () => {
    const { host, records } = memoryHost();
    const bench = createBench(host);
    await bench.getState().open('own');
    const archer = newArcher('First archer', 'right');
    await bench.getState().change('Begin', () => [born(archer)]);
    await bench.getState().change('Begin again', () => [born(archer)]);
    const after = await bench.getState().change('Left hand', (all) => {
      const record = all.get(archer.id);
      return record?.kind === 'archer' ? [edited(record, { hand: 'left' })] : [];
    });
    expect(after).toBe(true);
    expect(records.get(archer.id)).toMatchObject({ hand: 'left' });
  });

  it('names the records that cannot be read, and opens with the rest', async () => {
    const problem = { code: 'unreadable', sentence: 'One bow cannot be read; it is left as it is.' };
    const { host } = memoryHost([problem]);
    const bench = createBench(host);
    await bench.getState().open('own');
    expect(bench.getState()).toMatchObject({ phase: 'open', unreadable: [problem] });
  });

  it('counts a write from the moment it is asked for, those that wait too', async () => {
    const { host } = memoryHost();
    const bench = createBench(host);
    await bench.getState().open('own');
    const writes = [newArcher('A', 'right'), newArcher('B', 'left')].map((archer) =>
      bench.getState().change('Begin', () => [born(archer)]),
    );
    expect(bench.getState().pending).toBe(2);
    await Promise.all(writes);
    expect(bench.getState().pending).toBe(0);
  });

  it('takes in what another window wrote, and only for the book it shows', async () => {
    const { host, tell } = memoryHost();
    const bench = createBench(host);
    await bench.getState().open('own');
    const archer = newArcher('From elsewhere', 'left');
    const news: Written = {
      records: [{ id: archer.id, record: archer }],
      state: { undo: { label: 'Begin', entry: 1 }, redo: null },
    };
    tell({ event: 'notebook.changed', book: 'demo', written: news });
    expect(bench.getState().records.size).toBe(0);
    tell({ event: 'notebook.changed', book: 'own', written: news });
    expect(bench.getState().records.get(archer.id)).toEqual(archer);
    expect(bench.getState().undoState.undo?.label).toBe('Begin');
    const newer: Written = { records: [{ id: archer.id, record: { ...archer, name: 'Newer', revision: 2 } }], state: news.state };
    tell({ event: 'notebook.changed', book: 'own', written: newer });
    tell({
      event: 'notebook.changed',
      book: 'own',
      written: { ...news, records: [{ id: archer.id, record: { ...archer, revision: 1 } }] },
    });
    expect(bench.getState().records.get(archer.id)).toMatchObject({ name: 'Newer', revision: 2 });
  });

  it('sends of a group only the shots an edit is about, one after another, and an edit that changes nothing not at all', async () => {
    const { host, changes, records } = memoryHost();
    const group = { ...exampleFletched, shots: exampleFletched.shots.slice(0, 3) };
    records.set(group.id, group);
    const bench = createBench(host);
    await bench.getState().open('own');
    const [first, , third] = group.shots;
    if (first === undefined || third === undefined) throw new Error('three shots were expected');
    const set = (id: number) => bench.getState().changeShots(`Shot ${id}`, group.id, () => ({ put: [{ ...first, id }] }));
    await Promise.all([set(101), set(102), bench.getState().changeShots('Nothing', group.id, () => null)]);
    await bench.getState().changeShots('One out', group.id, () => ({ out: [third.id] }));
    expect(changes.map(({ label }) => label)).toEqual(['Shot 101', 'Shot 102', 'One out']);
    const here = bench.getState().records.get(group.id);
    expect(here).toEqual(records.get(group.id));
    expect(here).toMatchObject({ revision: 3, shots: [{ id: first.id }, {}, { id: 101 }, { id: 102 }] });
  });

  it('follows another window’s edit of shots, and looks again where it cannot', async () => {
    const { host, records, tell } = memoryHost();
    const group = { ...exampleFletched, revision: 4, shots: exampleFletched.shots.slice(0, 1) };
    records.set(group.id, group);
    const bench = createBench(host);
    await bench.getState().open('own');
    const [shot] = group.shots;
    if (shot === undefined) throw new Error('a shot was expected');
    const state = { undo: { label: 'A shot moved', entry: 9 }, redo: null };
    const edit = { groupId: group.id, revision: 4, out: [], put: [{ ...shot, x: 0.123 }] };
    tell({ event: 'shots.changed', book: 'own', edit, revision: 5, state });
    expect(bench.getState().records.get(group.id)).toMatchObject({ revision: 5, shots: [{ x: 0.123 }] });
    expect(bench.getState().undoState.undo?.label).toBe('A shot moved');
    records.set(group.id, { ...group, revision: 8, shots: [] });
    tell({ event: 'shots.changed', book: 'own', edit: { ...edit, revision: 7 }, revision: 8, state });
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(bench.getState().records.get(group.id)).toMatchObject({ revision: 8, shots: [] });
  });
});
