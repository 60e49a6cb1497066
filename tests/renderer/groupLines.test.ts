import { describe, expect, it } from 'vitest';
import { defaultPreferences, exampleFletched, type ShotGroup } from '../../core/model/index.ts';
import type { Trial, TrialKind } from '../../core/model/trial.ts';
import { exampleTrial } from '../../core/trials/index.ts';
import { groupLines } from '../../renderer/features/groups/groupLines.ts';

const { units } = defaultPreferences;
const today = { at: '2026-06-20T12:00:00Z', offsetMinutes: 60 };
const group = (last: number, at: string, distance = 18): ShotGroup => ({
  ...exampleFletched,
  id: `20000000-0000-4000-8000-00000000000${last}`,
  context: { ...exampleFletched.context, distance, shotAt: { at, offsetMinutes: 60 } },
});
const place = { distance: 18, step: null, first: null, second: null, speeds: [] };

describe('the groups in a list', () => {
  it('are told apart by the time when two of one kind were shot on one day, and by their order within one minute', () => {
    const groups = [
      group(1, '2026-06-02T09:30:00Z'),
      group(2, '2026-06-02T10:30:00Z'),
      group(3, '2026-06-02T10:30:20Z'),
      group(4, '2026-06-03T10:30:00Z'),
    ];
    const lines = groupLines(groups, [], units, today);
    const whens = groups.map(({ id }) => lines.get(id)?.when);
    expect(new Set(whens).size).toBe(4);
    expect(whens[0]).toMatch(/ 10:30$/);
    expect(whens[1]).toMatch(/ 11:30, 1 of 2$/);
    expect(whens[3]).not.toMatch(/:/);
  });

  it('carry the name of their trial, the setting that was tried, and which of two they are', () => {
    const [one, two, alone] = [
      group(1, '2026-06-02T09:30:00Z', 20),
      group(2, '2026-06-02T09:40:00Z'),
      group(3, '2026-06-02T09:50:00Z'),
    ];
    const trial = (kind: TrialKind, name: string, others: number, patch: Partial<Trial['groups'][number]>): Trial => {
      const known = exampleTrial(kind).trial;
      return { ...known, name, plan: { ...known.plan, others }, groups: [{ ...place, ...patch }] };
    };
    const texts = (...trials: readonly Trial[]) => {
      const lines = groupLines([one, two, alone], trials, units, today);
      return [one, two, alone].map(({ id }) => lines.get(id)?.text);
    };
    expect(
      texts(trial('walk-back', 'Walk-back', 0, { first: one.id }), trial('a against b', 'A against B', 3, { second: two.id })),
    ).toEqual(['Walk-back, 20 m', 'A against B: B, 18 m', 'Fletched, 18 m']);
    expect(
      texts(
        trial('brace height', 'Brace height', 0, { first: one.id, step: 0.2159 }),
        trial('bare shaft', 'Bare shaft', 2, { first: two.id, second: alone.id }),
      ),
    ).toEqual(['Brace height: 8 1/2 in, 20 m', 'Bare shaft: fletched, 18 m', 'Bare shaft: bare, 18 m']);
  });
});
