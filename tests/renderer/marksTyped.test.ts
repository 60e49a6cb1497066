import { describe, expect, it } from 'vitest';
import { defaultPreferences } from '../../core/model/preferences.ts';
import type { BenchRecord } from '../../core/model/index.ts';
import {
  addMark,
  correctMark,
  leaveOutMark,
  marksHold,
  putMarkAway,
  shotInAgain,
} from '../../renderer/features/aim/marks/edits.ts';
import { typedAgain } from '../../renderer/features/aim/marks/store.ts';
import { bundle, mark, read, set } from './marksShot.ts';
import type { Bench } from '../../renderer/state/bench.ts';
import { bundleOf, sightMarksOf } from '../../renderer/state/selectors.ts';

/** A bench in memory that keeps what a Change writes. */
function benchWith(records: readonly BenchRecord[]) {
  const kept = new Map(records.map((record) => [record.id, record]));
  const labels: string[] = [];
  const state = {
    records: kept as ReadonlyMap<string, BenchRecord>,
    preferences: defaultPreferences,
    change: (
      label: string,
      edits: (now: ReadonlyMap<string, BenchRecord>) => readonly { id: string; after: BenchRecord | null }[],
    ) => {
      const next = new Map(state.records);
      for (const { id, after } of edits(state.records)) if (after !== null) next.set(id, after);
      state.records = next;
      labels.push(label);
      return Promise.resolve(true);
    },
  };
  return {
    bench: { getState: () => state } as unknown as Bench,
    labels,
    marks: () => sightMarksOf(state.records, bundle.setup.id),
    change: (record: BenchRecord) => (state.records = new Map(state.records).set(record.id, record)),
    now: () => bundleOf(state.records, bundle.setup.id),
  };
}

describe('A mark that is typed', () => {
  const { archer, bow, arrowSet, setup } = bundle;
  const records = [archer, bow, arrowSet, setup];

  it('is one Change, with what it was shot with', async () => {
    const { bench, labels, marks } = benchWith(records);
    await addMark(bench, setup.id, 18, 37.5);
    await addMark(bench, setup.id, 50, 85);
    await addMark(bench, setup.id, 18.288, 38, '20 yd');
    await addMark(bench, setup.id, 40, 70, '40');
    expect(labels).toEqual(['Mark for 18 m: 37.5', 'Mark for 50 m: 85', 'Mark for 20 yd: 38', 'Mark for 40 m: 70']);
    expect(marks().map(({ distance, reading, shots, leftOut }) => [distance, reading, shots, leftOut])).toEqual([
      [18, 37.5, null, null],
      [18.288, 38, null, null],
      [40, 70, null, null],
      [50, 85, null, null],
    ]);
    expect(marks()[0]?.context.settings).toEqual(setup.settings);
  });

  it('read anew holds for the set-up as it is then; put right, it holds as before', async () => {
    const { bench, marks, change, now } = benchWith([...records, { ...mark(30), leftOut: 'windy' }]);
    const first = () => {
      const [one] = marks();
      if (one === undefined) throw new Error('no mark');
      return one;
    };
    change({ ...setup, settings: { ...setup.settings, strands: 18 } });
    await correctMark(bench, first(), 'Arrows', { shots: 9 });
    expect(first()).toMatchObject({ shots: 9, leftOut: 'windy', context: { settings: { strands: null } } });
    await shotInAgain(bench, first(), 51);
    expect(first()).toMatchObject({ reading: 51, leftOut: null, context: { settings: { strands: 18 } } });
    expect(now()?.setup.settings.strands).toBe(18);
  });

  // The error of a mark goes with the root of the arrows that settled it: those of another string settled nothing of this reading.
  it('keeps its count of arrows when a figure was mistyped, and has none yet when it is shot in anew', async () => {
    const one = { ...mark(30), shots: 36 };
    const { bench, marks, change } = benchWith([...records, one]);
    await shotInAgain(bench, one, 51);
    expect(marks()[0]).toMatchObject({ reading: 51, shots: 36 });
    change({ ...setup, settings: { ...setup.settings, sightRadius: 0.9 } });
    await shotInAgain(bench, one, 54);
    expect(marks()[0]).toMatchObject({ reading: 54, shots: null });
  });

  it('stands again where it was typed when it is refused, and takes nothing from one that is being typed', () => {
    const typed = typedAgain({ distance: '18', reading: '37.5' });
    expect(typed({ distance: '', reading: '', span: null })).toEqual({ distance: '18', reading: '37.5' });
    expect(typed({ distance: '30', reading: '', span: null })).toEqual({});
  });

  it('is left out with its reason, counted again, put away and taken out', async () => {
    const one = mark(30);
    const { bench, labels, marks } = benchWith([...records, one]);
    await leaveOutMark(bench, one, 'windy');
    expect(marks()[0]?.leftOut).toBe('windy');
    await leaveOutMark(bench, one, null);
    expect(marks()[0]?.leftOut).toBeNull();
    await putMarkAway(bench, one, true);
    expect(marks()).toEqual([]);
    await putMarkAway(bench, one, false);
    expect(marks()).toHaveLength(1);
    expect(labels).toEqual([
      'Left out: mark for 30 m',
      'Counted again: mark for 30 m',
      'Mark for 30 m put away',
      'Mark for 30 m taken out again',
    ]);
  });

  it('holds on when only the notebook was put right', async () => {
    const then = set({ ...setup.settings, twists: 20 });
    const one = mark(30, read(30), then);
    const { bench, marks } = benchWith([archer, bow, arrowSet, { ...setup, settings: { ...setup.settings, twists: 30 } }, one]);
    await marksHold(bench, [one]);
    expect(marks()[0]?.context.settings.twists).toBe(30);
    expect(marks()[0]?.context.shotAt).toEqual(one.context.shotAt);
  });
});
