import { describe, expect, it } from 'vitest';
import { markContext, markStanding } from '../../core/aim/index.ts';
import { exampleBundle, exampleNow } from '../../core/model/example.ts';
import type { BenchRecord, Bundle, RecordEdit, SightMark } from '../../core/model/index.ts';
import { grain, inch } from '../../core/units/exact.ts';
import type { Bench } from '../../renderer/state/bench.ts';
import { bundleOf, type Records } from '../../renderer/state/selectors.ts';
import { editsOf } from '../../renderer/state/useEdits.ts';

const { archer, bow, arrowSet, setup } = exampleBundle;
/** Weighed whole, its point not yet noted; no eye height, no weight, no draw. */
const bare: Bundle = {
  bow,
  archer: { ...archer, drawLength: null },
  arrowSet: { ...arrowSet, weighed: 320 * grain, pointMass: null, nockMass: null },
  setup: {
    ...setup,
    settings: { ...setup.settings, weightOnFingers: null, weightDraw: null, tiller: null },
    form: { ...setup.form, eyeHeight: null },
  },
};
const markOf = (last: number, of = bare): SightMark => ({
  ...{ id: `30000000-0000-4000-8000-${String(last).padStart(12, '0')}`, revision: 0, born: exampleNow, archivedAt: null },
  ...{ kind: 'sightMark', setupId: setup.id, distance: 20 + last, reading: 40 + last, shots: null, leftOut: null, note: '' },
  context: markContext(of, exampleNow),
});

/** A bench in memory that keeps what a Change writes, and how many edits each had. */
function benchWith(records: readonly BenchRecord[]) {
  const changes: (readonly RecordEdit[])[] = [];
  const state = {
    setupId: setup.id,
    records: new Map(records.map((record) => [record.id, record])) as Records,
    change: (_label: string, edits: (now: Records) => readonly RecordEdit[]) => {
      const list = edits(state.records);
      const next = new Map(state.records);
      for (const { id, after } of list) if (after !== null) next.set(id, after);
      state.records = next;
      changes.push(list);
      return Promise.resolve(true);
    },
  };
  const bench = { getState: () => state } as unknown as Bench;
  const marks = () => [...state.records.values()].filter((record): record is SightMark => record.kind === 'sightMark');
  const standing = () =>
    marks().map((mark) => {
      const now = bundleOf(state.records, setup.id);
      if (now === null) throw new Error('no set-up');
      return markStanding(mark, now).changes.map(({ name }) => name);
    });
  return { edit: editsOf(bench), changes, marks, standing };
}
const recordsOf = (bundle: Bundle): BenchRecord[] => [bundle.archer, bundle.bow, bundle.arrowSet, bundle.setup];

describe('A figure that is typed for the first time', () => {
  it('was so all along for the marks that held: another one later is a change', async () => {
    const { edit, changes, marks, standing } = benchWith([...recordsOf(bare), markOf(1), markOf(2)]);
    await edit.arrowSet('Point', { pointMass: 100 * grain });
    expect(changes[0]).toHaveLength(3);
    expect(marks().map(({ context }) => context.arrow.pointMass)).toEqual([100 * grain, 100 * grain]);
    expect(standing()).toEqual([[], []]);
    await edit.arrowSet('Point', { pointMass: 120 * grain });
    expect(changes[1]).toHaveLength(1);
    expect(standing()).toEqual([['Point'], ['Point']]);
  });

  it('is kept whichever record it stands in', async () => {
    const { edit, standing } = benchWith([...recordsOf(bare), markOf(1)]);
    await edit.settings('Weight', { weightOnFingers: 150, weightDraw: 27 * inch });
    await edit.form('Eye', { eyeHeight: 0.1 });
    await edit.drawLength(27 * inch);
    expect(standing()).toEqual([[]]);
    await edit.settings('Weight', { weightOnFingers: 140 });
    await edit.form('Eye', { eyeHeight: 0.13 });
    await edit.drawLength(28 * inch);
    expect(standing()).toEqual([['Weight on the fingers', 'Eye above the arrow', 'Draw length']]);
  });

  it('weighs no heavier for a part that is noted, and a whole weighed once is held against what is built now', async () => {
    const { edit, standing } = benchWith([...recordsOf(bare), markOf(1)]);
    await edit.arrowSet('Point', { pointMass: 100 * grain });
    await edit.arrowSet('Nock', { nockMass: 9 * grain });
    expect(standing()).toEqual([[]]);
    // 28 in of 7 gr/in, and 100 + 12 + 9 + 9 gr of parts: 326 gr.
    await edit.arrowSet('Weighed', { weighed: null });
    expect(standing()).toEqual([['Arrow mass']]);
  });

  it('is no news to a mark that held no more, nor to one that has the tiller otherwise', async () => {
    const moved = { ...bare, setup: { ...bare.setup, settings: { ...bare.setup.settings, nockingPoint: 0.009 } } };
    const tillered = { ...bare, setup: { ...bare.setup, settings: { ...bare.setup.settings, tiller: 0.003 } } };
    const { edit, marks, standing } = benchWith([...recordsOf(tillered), markOf(1, moved), markOf(2, tillered)]);
    await edit.arrowSet('Point', { pointMass: 100 * grain });
    expect(marks().map(({ context }) => context.arrow.pointMass)).toEqual([null, 100 * grain]);
    await edit.settings('Upper', { tillerUpper: 0.185 });
    await edit.settings('Lower', { tillerLower: 0.18 });
    expect(standing()[1]).toEqual(['Tiller']);
  });

  it('does not make an older string of one that was fitted since', async () => {
    const { edit, standing } = benchWith([...recordsOf(bare), markOf(1)]);
    await edit.settings('String', { stringFitted: '2026-12-01' });
    expect(standing()).toEqual([['String fitted on']]);
  });

  it('takes no more than a Change does', async () => {
    const many = Array.from({ length: 230 }, (_, i) => markOf(i));
    const { edit, changes } = benchWith([...recordsOf(bare), ...many]);
    await edit.arrowSet('Point', { pointMass: 100 * grain });
    expect(changes[0]).toHaveLength(200);
  });
});
