import { describe, expect, it } from 'vitest';
import { launchSlope, marksPicture } from '../../core/aim/index.ts';
import { exampleNow } from '../../core/model/example.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import type { BenchRecord, Settings } from '../../core/model/index.ts';
import { textQuantity } from '../../core/units/index.ts';
import { marksView, spanDistances } from '../../renderer/features/aim/marks/derive.ts';
import {
  addMark,
  correctMark,
  leaveOutMark,
  marksHold,
  putMarkAway,
  shotInAgain,
} from '../../renderer/features/aim/marks/edits.ts';
import { bundle, mark, read, set, units, viewOf, yards } from './marksShot.ts';
import { typedAgain } from '../../renderer/features/aim/marks/store.ts';
import { lineData } from '../../renderer/features/aim/marks/plots.ts';
import { changeText, fixedOf, marksHead, nextText, tableNote, verdictText } from '../../renderer/features/aim/marks/words.ts';
import type { Bench } from '../../renderer/state/bench.ts';
import { bundleOf, sightMarksOf } from '../../renderer/state/selectors.ts';

describe('The table of marks', () => {
  it('is blank before the first mark, and asks for two', () => {
    const view = viewOf([]);
    expect(view.rows).toEqual([]);
    expect(view.next).toBeNull();
    expect(marksHead(view, units).title).toBe('Two marks, shot in, will fix the sight');
    expect(tableNote(view)).toContain('two distances that lie far apart');
  });

  it('has the usual distances and the known ones, each with a reading and what it is on the face', () => {
    const { rows } = viewOf([mark(18), mark(55)]);
    expect(rows.map(({ distance }) => distance)).toEqual([10, 18, 20, 30, 40, 50, 55, 60, 70]);
    expect(rows.filter((row) => row.mark !== null).map(({ distance }) => distance)).toEqual([18, 55]);
    for (const { reading, onFace, distance } of rows) {
      const half = ((reading?.high ?? NaN) - (reading?.low ?? NaN)) / 2000;
      // The rule of the sight, b = Δq R/r, with r near the measured one.
      expect(onFace).toBeGreaterThan((half * distance) / 0.87);
      expect(onFace).toBeLessThan((half * distance) / 0.83);
    }
  });

  it('has yards by preference, and distances from one to another by choice', () => {
    const inYards = viewOf([mark(18), mark(50)], bundle, yards).rows.map(({ distance }) =>
      textQuantity(distance, 'distance', yards),
    );
    expect(inYards).toEqual(['10 yd', '19.7 yd', '20 yd', '30 yd', '40 yd', '50 yd', '54.7 yd', '60 yd', '70 yd', '80 yd']);
    const span = { from: 10, to: 30, step: 5 };
    expect(
      marksView(bundle, marksPicture(bundle, [mark(18), mark(50)], null), null, units, span).rows.map(({ distance }) => distance),
    ).toEqual([10, 15, 18, 20, 25, 30, 50]);
    expect(spanDistances({ from: 1, to: 120, step: 0.1 })).toHaveLength(120);
  });

  // A learner with a slow bow is not sent to 70 m: 40 m/s at 8 degrees carry 45 m without air.
  it('does not send a slow bow far, unless its mark is there', () => {
    const slow = set({ arrowSpeed: 40, sightUnit: 0.001, sightGrows: 'down' });
    const far = (distances: readonly number[]) =>
      Math.max(
        ...viewOf(
          distances.map((distance) => mark(distance, 20 + distance, slow)),
          slow,
        ).rows.map((row) => row.distance),
      );
    expect(far([10, 25])).toBe(40);
    expect(far([10, 55])).toBe(55);
  });

  // 38 m/s at 20 degrees carry 95 m without air, from v² sin 2θ/g, and less with it: nobody is led to raise a bow further.
  it('names no next distance for which a slow bow would be raised too far, though the table be asked for it', () => {
    const slow = set({ arrowSpeed: 38, sightUnit: 0.001, sightGrows: 'down', sightRadius: 0.85 });
    const place = (distance: number) => 10 + 850 * launchSlope(38, 0.0022, 0.11, distance);
    const marks = [10, 18].map((distance) => mark(distance, place(distance), slow));
    const view = marksView(slow, marksPicture(slow, marks, null), null, units, { from: 10, to: 120, step: 10 });
    const farthest = Math.max(...view.rows.filter(({ reading }) => reading !== null).map(({ distance }) => distance));
    expect(farthest).toBeGreaterThan(95);
    expect(view.next?.distance).toBeLessThan(95);
    expect(view.next?.worstAt).toBeLessThan(95);
  });

  it('keeps two marks of one distance apart, and marks that fit no flight without a reading', () => {
    const { rows } = viewOf([mark(18), mark(18, read(18) + 0.2), mark(50)]);
    expect(rows.filter(({ distance }) => distance === 18)).toHaveLength(2);
    const refused = viewOf([mark(30, 120 - read(30)), mark(50, 120 - read(50))]);
    expect(refused.rows.map(({ distance, reading }) => [distance, reading])).toEqual([
      [30, null],
      [50, null],
    ]);
    expect(marksHead(refused, units).title).toBe('The marks stand in the wrong order');
    expect(refused.otherScale).toMatchObject({ grows: 'up' });
  });
});

describe('The words of the marks', () => {
  it('say how far the sight is fixed, how well, and what to shoot next', () => {
    const view = viewOf([mark(18), mark(30), mark(50)]);
    const fixed = fixedOf(view);
    expect(fixed).not.toBeNull();
    expect(marksHead(view, units).title).toMatch(/^Three marks fix the sight to \d\.?\d? mm (out to|from 1\d m to) [567]0 m$/);
    expect(marksHead(view, units).note).toMatch(/^At 70 m.* it is ± \d+\.?\d? mm, or \d+ cm on the face/);
    expect(nextText(view, units)).toMatch(/^Shoot 70 m next: the worst, ± .* mm there, comes down to ± .* mm\.$/);
  });

  it('say that one mark leaves the rest to the figures', () => {
    const view = viewOf([mark(30)], set({ sightUnit: 0.001, sightGrows: 'down' }));
    expect(marksHead(view, units).title).toMatch(/^One mark (leaves the sight unsure|fixes the sight)/);
    expect(view.picture.fit?.ok === true && view.picture.fit.value.notes.map(({ code }) => code)).toEqual(['one-mark']);
  });

  it('name the mark that does not fit, and ask for nothing else first', () => {
    const view = viewOf([mark(18), mark(30), mark(40, read(40) + 12), mark(50), mark(60)]);
    expect(marksHead(view, units).title).toBe('The mark for 40 m does not fit the other four');
    expect(view.next).toBeNull();
    expect(view.rows.filter(({ mark: one }) => one !== null).map(verdictText)).toEqual([
      'fits',
      'fits',
      'does not fit',
      'fits',
      'fits',
    ]);
    const out = viewOf(view.picture.proven.map((one) => (one.distance === 40 ? { ...one, leftOut: 'misread' } : one)));
    expect(out.rows.map(verdictText).filter((text) => text !== '')).toEqual(['fits', 'fits', 'left out', 'fits', 'fits']);
    expect(marksHead(out, units).title).toMatch(/^Four marks fix/);
  });

  it('name none of two that do not go together', () => {
    expect(marksHead(viewOf([mark(18), mark(50, read(50) + 12)]), units).title).toBe('The two marks do not go together');
  });

  it('say that no mark is proven any more, and what changed', () => {
    const now = set({ arrowSpeed: 55, sightUnit: 0.001, sightGrows: 'down', sightRadius: 0.85, strands: 18 });
    const then = set({
      arrowSpeed: 57,
      sightUnit: 0.001,
      sightGrows: 'down',
      sightRadius: 0.85,
      strands: 16,
      stringFitted: '2026-03-01',
    });
    const view = viewOf([mark(18, read(18), then), mark(50, read(50), then)], now);
    expect(marksHead(view, units).title).toBe('Both marks are no longer proven');
    expect(view.picture.unproven[0]?.changes.map((change) => changeText(change, units, exampleNow))).toEqual([
      'Measured speed: 187 ft/s then, 180 ft/s now',
      'Strands: 16 then, 18 now',
    ]);
    expect(view.rows.every(({ mark: one, reading }) => one === null && reading !== null)).toBe(true);
    expect(lineData(view, units)).toBeNull();
  });

  it('say what of the scale is assumed', () => {
    const told = (settings: Partial<Settings>) => tableNote(viewOf([mark(18, read(18), set(settings))], set(settings)));
    expect(told({ arrowSpeed: 55 })).toContain('taken as 1 mm until somebody gives it. Its numbers are taken to grow downward.');
    expect(told({ arrowSpeed: 55, sightUnit: 0.001, sightGrows: 'down' })).not.toContain('taken as 1 mm');
  });
});

describe('The known marks off the fitted line', () => {
  it('are off by what they read more than the fit, in the unit of settings', () => {
    const data = lineData(viewOf([mark(18), mark(30), mark(50, read(50) + 1), { ...mark(60), leftOut: 'windy' }]), units);
    expect(data?.known.map(({ counts }) => counts)).toEqual([true, true, true, false]);
    const [, , at50] = data?.known ?? [];
    // What was added is shared between the mark and the line that follows it.
    expect(at50?.off).toBeGreaterThan(0.1);
    expect(at50?.off).toBeLessThan(1.5);
    expect(data?.line).toHaveLength(61);
  });
});

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
    expect(labels).toEqual(['Mark for 18 m: 37.5', 'Mark for 50 m: 85']);
    expect(marks().map(({ distance, reading, shots, leftOut }) => [distance, reading, shots, leftOut])).toEqual([
      [18, 37.5, null, null],
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
