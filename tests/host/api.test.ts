import fs from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, onTestFinished } from 'vitest';
import { benchChannels, channels, contract } from '../../core/host.ts';
import { defaultPreferences, Problem } from '../../core/model/index.ts';
import type { Api } from '../../electron/api.ts';
import { createBench } from '../../electron/bench.ts';
import { aGroup, anArcher, aSnapshot, change, tempNotebook, uuid } from './support.ts';

function benchOn(file = tempNotebook()): Api {
  const bench = createBench({ file, shell: 'loopback', version: '9.9.9' });
  onTestFinished(() => bench.close());
  return bench.call;
}
const own = { book: 'own' };
const sentenceOf = (reply: unknown) => Problem.parse((reply as { problem: unknown }).problem).sentence;

describe('The host', () => {
  it('answers every call of the contract in the form the contract promises', async () => {
    const call = benchOn();
    const inputs: Record<(typeof benchChannels)[number], unknown> = {
      'bench.info': null,
      'notebook.load': own,
      'notebook.apply': { ...own, change: change(null, aGroup(1, 3)) },
      'notebook.shots': { ...own, label: 'No shots', edit: { groupId: uuid(1), revision: 0, out: [], put: [] } },
      'notebook.undo': { ...own, expected: 1 },
      'notebook.redo': { ...own, expected: 1 },
      'preferences.get': null,
      'preferences.set': { ...defaultPreferences, theme: 'dark' },
    };
    for (const channel of benchChannels) {
      const { reply } = await call(channel, inputs[channel]);
      expect(reply, channel).toMatchObject({ ok: true });
      contract[channel].output.parse((reply as { value: unknown }).value);
    }
    expect((await call('preferences.get', null)).reply).toEqual({ ok: true, value: { ...defaultPreferences, theme: 'dark' } });
  });

  it('tells the other windows of writes that were made, and of nothing else', async () => {
    const call = benchOn();
    expect((await call('notebook.load', own)).event).toBeNull();
    expect((await call('notebook.undo', { ...own, expected: 1 })).event).toBeNull();
    const { reply, event } = await call('notebook.apply', { ...own, change: change(null, anArcher(1)) });
    expect(event).toEqual({ event: 'notebook.changed', book: 'own', written: (reply as { value: unknown }).value });
    await call('notebook.apply', { ...own, change: change(null, aGroup(2, 3)) });
    const edit = { groupId: uuid(2), revision: 0, out: [1], put: [] };
    const shots = await call('notebook.shots', { ...own, label: 'A shot out', edit });
    expect(shots.event).toMatchObject({
      event: 'shots.changed',
      book: 'own',
      edit,
      revision: 1,
      state: { undo: { label: 'A shot out' } },
    });
    expect((await call('notebook.shots', { ...own, label: 'Again', edit })).event).toBeNull();
  });

  it('says which notebook it holds, and what is wrong with it', async () => {
    const file = tempNotebook();
    fs.writeFileSync(file, 'a shopping list');
    const call = benchOn(file);
    const info = (await call('bench.info', null)).reply as {
      value: { notebook: { file: string; problem: { sentence: string } } };
    };
    expect(info.value).toMatchObject({ shell: 'loopback', version: '9.9.9', notebook: { file } });
    expect(info.value.notebook.problem.sentence).toMatch(/is not a Fistmele notebook/);
    for (const [channel, input] of [
      ['notebook.load', own],
      ['notebook.undo', { ...own, expected: 1 }],
      ['preferences.get', null],
    ] as const) {
      expect(sentenceOf((await call(channel, input)).reply), channel).toMatch(/is not a Fistmele notebook/);
    }
    expect(fs.readFileSync(file, 'utf8')).toBe('a shopping list');
  });

  it("passes a measure's own sentence on, with the field", async () => {
    const absurd = { ...anArcher(1), drawLength: 27.5 };
    const { reply } = await benchOn()('notebook.apply', { ...own, change: change(null, absurd) });
    expect(reply).toEqual({
      ok: false,
      problem: {
        code: 'bad-input',
        sentence: 'A draw length is above what can be. Nothing was written.',
        field: 'change.edits.0.after.drawLength',
      },
    });
  });

  it('refuses a figure that is no number', async () => {
    for (const drawLength of [Number.NaN, Number.POSITIVE_INFINITY, '27.5 in', -0.7]) {
      const { reply } = await benchOn()('notebook.apply', {
        ...own,
        change: change(null, { ...anArcher(1), drawLength } as never),
      });
      expect(sentenceOf(reply), String(drawLength)).toMatch(/draw length.*Nothing was written\./);
    }
  });
});

/** A good input with one thing in it made wrong: a value replaced, or a key gone, or a key too many. */
const goodInputs = [
  ['notebook.apply', { ...own, change: change(null, aSnapshot(1)) }],
  ['notebook.apply', { ...own, change: change(anArcher(1), anArcher(1, 'Renamed')) }],
  ['notebook.load', own],
  ['preferences.set', defaultPreferences],
] as const;

function pathsOf(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [path];
  return [
    path,
    ...Object.entries(value).flatMap(([key, inner]) => pathsOf(inner, [...path, Array.isArray(value) ? Number(key) : key])),
  ];
}
function spoilt(value: unknown, path: readonly (string | number)[], wrong: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return wrong;
  const copy: Record<string | number, unknown> = Array.isArray(value) ? ([...value] as never) : { ...(value as object) };
  if (rest.length === 0 && wrong === undefined) delete copy[key];
  else copy[key] = spoilt(copy[key], rest, wrong);
  return copy;
}

const nonsense = fc.oneof(
  fc.anything({
    withBigInt: true,
    withDate: true,
    withMap: true,
    withNullPrototype: true,
    withObjectString: true,
    withSparseArray: true,
  }),
  fc.constantFrom(Number.NaN, Number.NEGATIVE_INFINITY, 1e308, '__proto__', '', "'; DROP TABLE record; --", uuid(1)),
);
const badCall = fc.oneof(
  fc.tuple(fc.oneof(nonsense, fc.constantFrom(...channels, 'toString', '__proto__', 'notebook.load ')), nonsense),
  fc.constantFrom(...goodInputs).chain(([channel, input]) =>
    fc.tuple(
      fc.constant(channel),
      fc.tuple(fc.constantFrom(...pathsOf(input)), nonsense).map(([path, wrong]) => spoilt(input, path, wrong)),
    ),
  ),
);

describe('Six hundred calls of nonsense', () => {
  it('are each answered, never with an exception, and every refusal has a sentence', async () => {
    const call = benchOn();
    const seen = { refused: 0, accepted: 0 };
    await fc.assert(
      fc.asyncProperty(badCall, async ([channel, input]) => {
        const { reply } = await call(channel, input);
        if (reply.ok) {
          seen.accepted++; // a spoilt name, say, is still a name
        } else {
          seen.refused++;
          expect(sentenceOf(reply)).toMatch(/^[A-Z"].{10,}\.( \([0-9a-f-]+\))?$/s);
          expect(reply.problem.code).not.toBe('failed');
        }
      }),
      { numRuns: 600, seed: 1206 },
    );
    expect(seen.refused).toBeGreaterThan(400);
    expect((await call('notebook.load', own)).reply.ok).toBe(true);
  });
});
