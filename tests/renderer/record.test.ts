import { unmeasured } from '../../core/model/unmeasured.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { diffSnapshots } from '../../core/compare/index.ts';
import {
  defaultPreferences,
  exampleBare,
  exampleBundle,
  exampleFletched,
  Snapshot,
  type BenchRecord,
  type Id,
  type RecordEdit,
  type ShotGroup,
} from '../../core/model/index.ts';
import { exampleTrial } from '../../core/trials/index.ts';
import { settingLanes } from '../../renderer/features/record/lanes.ts';
import { historyOf } from '../../renderer/features/record/timelineData.ts';
import type { TimelineData } from '../../renderer/plots/timeline/data.ts';
import { timelineMarks } from '../../renderer/plots/timeline/marks.ts';
import { alsoChanged, measuredSince, putBackEdits } from '../../renderer/features/record/putBack.ts';
import {
  groupsToKeep,
  MOST_GROUPS_KEPT,
  MOST_SHOTS_KEPT,
  snapshotOf,
  whatIsKept,
} from '../../renderer/features/record/takeSnapshot.ts';
import { edited } from '../../renderer/state/bench.ts';
import { bundleOf, type Records } from '../../renderer/state/selectors.ts';

const { archer, bow, arrowSet, setup } = exampleBundle;
const id = (last: number) => `20000000-0000-4000-8000-${String(last).padStart(12, '0')}`;
const taken = { at: '2026-05-03T09:00:00Z', offsetMinutes: 60 };
const spring = snapshotOf(exampleBundle, [], { id: id(1), name: 'Spring', note: '', taken, programVersion: '0.1.0' });

const start: Records = new Map<Id, BenchRecord>(
  [archer, bow, arrowSet, setup, ...exampleBundle.groups, spring].map((record) => [record.id, record] as const),
);

/** A notebook in miniature: every write counts the record's revision up by one, and a stale write is refused. */
function written(records: Records, edits: readonly RecordEdit[]): Records {
  const next = new Map(records);
  for (const { id: which, before, after } of edits) {
    const stored = next.get(which);
    expect(stored?.revision).toBe(before?.revision);
    if (after !== null) next.set(which, { ...after, revision: (stored?.revision ?? -1) + 1 });
  }
  return next;
}

const change = (records: Records, which: Id, patch: Partial<BenchRecord>): Records => {
  const record = records.get(which);
  if (record === undefined) throw new Error('no such record');
  return written(records, [edited(record, patch as never)]);
};

const said = (record: BenchRecord | undefined) => {
  if (record === undefined) throw new Error('no such record');
  const { revision: _counted, ...rest } = record;
  return rest;
};

it('names the tables that putting a snapshot back takes off the bench, and no setting', () => {
  const one = {
    number: 1,
    mass: 0.0201,
    spines: [],
    straightness: null,
    lookOver: null,
    lookedOver: null,
    setAside: false,
    note: '',
  };
  const bare = {
    ...exampleBundle,
    arrowSet: { ...arrowSet, arrows: [] },
    bow: { ...bow, forceDraw: [] },
    setup: { ...setup, chronograph: [] },
  };
  const measured = {
    ...bare,
    arrowSet: { ...arrowSet, arrows: [one], pointMass: 0.006 },
    bow: { ...bow, forceDraw: [{ draw: 0.6, force: 120, way: 'draw' as const }] },
    setup: { ...setup, chronograph: [{ mass: 0.02, speed: 55 }] },
  };
  const { units } = defaultPreferences;
  const { differ } = diffSnapshots(bare, measured, units);
  expect(differ.length).toBeGreaterThan(3);
  const goes = measuredSince(differ);
  expect(goes).toHaveLength(3);
  expect(goes).toContain('1 numbered arrow');
  expect(measuredSince(diffSnapshots(measured, bare, units).differ)).toEqual([]);
});

describe('putting a snapshot back', () => {
  it('gives, after any chain of changes, exactly the fields of the snapshot with new revisions, and leaves the groups alone', () => {
    const step = fc.oneof(
      fc
        .double({ min: 0.1, max: 0.3, noNaN: true })
        .map(
          (braceHeight) => (records: Records) =>
            change(records, setup.id, { settings: { ...setup.settings, braceHeight } } as never),
        ),
      fc
        .constantFrom('left' as const, 'right' as const)
        .map((hand) => (records: Records) => change(records, archer.id, { hand } as never)),
      fc
        .constantFrom('left' as const, 'right' as const)
        .map((hand) => (records: Records) => change(records, bow.id, { hand } as never)),
      fc
        .double({ min: 0.001, max: 0.02, noNaN: true })
        .map((pointMass) => (records: Records) => change(records, arrowSet.id, { pointMass } as never)),
      fc.constantFrom(null, taken).map((archivedAt) => (records: Records) => change(records, bow.id, { archivedAt } as never)),
      fc
        .string({ minLength: 1, maxLength: 20 })
        .map((name) => (records: Records) => change(records, setup.id, { name } as never)),
    );
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 12 }), (steps) => {
        const changed = steps.reduce((records, one) => one(records), start);
        const edits = putBackEdits(changed, spring);
        const after = written(changed, edits);
        for (const then of [archer, bow, arrowSet, setup]) expect(said(after.get(then.id))).toEqual(said(then));
        for (const edit of edits) expect(after.get(edit.id)?.revision).toBe((changed.get(edit.id)?.revision ?? 0) + 1);
        for (const group of exampleBundle.groups) expect(after.get(group.id)).toBe(start.get(group.id));
        expect(edits.map((edit) => edit.id)).not.toContain(spring.id);
        expect(putBackEdits(after, spring)).toEqual([]);
        expect(diffSnapshots(spring.state, bundleOf(after, setup.id) as never, defaultPreferences.units).differ).toEqual([]);
      }),
      { numRuns: 60, seed: 12 },
    );
  });

  it('is no edit at all where nothing has changed', () => {
    expect(putBackEdits(start, spring)).toEqual([]);
  });

  it('takes an archived bow out of the archive', () => {
    const away = change(start, bow.id, { archivedAt: taken } as never);
    const edits = putBackEdits(away, spring);
    expect(edits.map((edit) => edit.id)).toEqual([bow.id]);
    expect(edits[0]?.after?.archivedAt).toBeNull();
  });

  it('keeps the look-over as it is now, since what was seen then says nothing about today', () => {
    const broken = change(start, arrowSet.id, { lookedOver: null, pointMass: 0.005 } as never);
    const after = written(broken, putBackEdits(broken, spring)).get(arrowSet.id);
    expect(after?.kind === 'arrowSet' && after.lookedOver).toBeNull();
    expect(after?.kind === 'arrowSet' && after.pointMass).toBe(arrowSet.pointMass);
  });

  it('gives birth again to a record that is gone', () => {
    const gone = new Map(start);
    gone.delete(arrowSet.id);
    const after = written(gone, putBackEdits(gone, spring));
    expect(said(after.get(arrowSet.id))).toEqual(said(arrowSet));
  });

  it('names the other set-ups that rest on what it changes', () => {
    const second = { ...setup, id: id(2), name: 'Second', arrowSetId: id(3) };
    const third = { ...setup, id: id(4), name: 'Third', archerId: id(5), bowId: id(6), arrowSetId: id(7) };
    const shared = new Map(change(start, bow.id, { length: 1.7 } as never)).set(second.id, second).set(third.id, third);
    expect(alsoChanged(shared, spring, putBackEdits(shared, spring)).map((one) => one.name)).toEqual(['Second']);
  });
});

describe('taking a snapshot', () => {
  it('makes a record that the notebook accepts', () => {
    expect(Snapshot.safeParse(spring).success).toBe(true);
    expect(spring.groups.map((group) => group.id)).toEqual(exampleBundle.groups.map((group) => group.id));
  });

  const many = (count: number, shots: number): readonly ShotGroup[] =>
    Array.from({ length: count }, (_, index) => ({
      ...exampleFletched,
      id: id(100 + index),
      shots: Array.from({ length: shots }, (_unused, shot) => ({ ...unmeasured.shot, id: shot, x: 0, y: 0 })),
    }));

  it('keeps the newest groups within both limits and says how many it leaves out', () => {
    const hundred = many(100, 6);
    expect(groupsToKeep(hundred).map((group) => group.id)).toEqual(hundred.slice(-MOST_GROUPS_KEPT).map((group) => group.id));
    expect(whatIsKept(hundred)).toContain('the newest 40 of its 100 groups');
    const large = many(5, 1_500);
    expect(groupsToKeep(large)).toHaveLength(3);
    expect(groupsToKeep(large).flatMap((group) => group.shots).length).toBeLessThanOrEqual(MOST_SHOTS_KEPT);
    expect(groupsToKeep(many(1, MOST_SHOTS_KEPT + 1))).toEqual([]);
    expect(whatIsKept(many(1, MOST_SHOTS_KEPT + 1))).toContain('none of its one group');
    expect(whatIsKept([])).toContain('No group');
  });
});

describe('the history of a set-up', () => {
  const at = (group: ShotGroup, last: number, day: string, patch: Partial<ShotGroup['context']>): ShotGroup => ({
    ...group,
    id: id(last),
    context: { ...group.context, shotAt: { at: `${day}T10:00:00Z`, offsetMinutes: 60 }, ...patch },
  });
  const braced = (braceHeight: number | null) => ({ settings: { ...setup.settings, braceHeight } });
  const history = [
    at(exampleFletched, 11, '2026-05-01', { distance: 18 }),
    at(exampleBare, 12, '2026-05-01', { distance: 18 }),
    at(exampleFletched, 13, '2026-06-01', { distance: 30 }),
    at(exampleFletched, 14, '2026-07-01', { distance: 18.1, ...braced(0.21) }),
    at({ ...exampleFletched, shots: exampleFletched.shots.slice(0, 1) }, 15, '2026-07-02', { distance: 18, ...braced(null) }),
  ];

  it('steps a lane where a new value was first met, and skips what nobody noted', () => {
    const lanes = settingLanes(exampleBundle, history, [spring], []);
    const brace = lanes.find((lane) => lane.key === 'braceHeight');
    // spring was taken on 3 May with the brace height of 1 May, so it makes no step.
    expect(brace?.steps.map((step) => step.value)).toEqual([setup.settings.braceHeight, 0.21]);
    expect(new Date(brace?.steps[1]?.at ?? 0).toISOString()).toBe('2026-07-01T11:00:00.000Z');
    expect(brace?.now).toBe(setup.settings.braceHeight);
    expect(lanes.find((lane) => lane.key === 'pointMass')?.steps).toHaveLength(1);
  });

  it('takes what a trial set only to try it for no change of the bow, and keeps what else its groups tell', () => {
    const trial = exampleTrial('brace height').trial;
    const tried = (step: number | null) => ({
      ...trial,
      groups: [{ distance: 18, step, first: id(14), second: null, speeds: [] }],
    });
    const turned = history.map((group) =>
      group.id === id(14)
        ? { ...group, context: { ...group.context, settings: { ...group.context.settings, buttonTurns: 3.25 } } }
        : group,
    );
    const values = (key: string, step: number | null) =>
      settingLanes(exampleBundle, turned, [], [tried(step)])
        .find((lane) => lane.key === key)
        ?.steps.map(({ value }) => value);
    expect(values('braceHeight', 0.21)).toEqual([setup.settings.braceHeight]);
    expect(values('braceHeight', null)).toEqual([setup.settings.braceHeight, 0.21]);
    expect(values('buttonTurns', 0.21)).toContain(3.25);
  });

  it('marks what a trial tried beside the line at the value of each group, and names such a group by its setting and its trial', () => {
    const trial = exampleTrial('brace height').trial;
    const steps = [
      [14, 0.2159],
      [16, 0.219075],
    ] as const;
    const shot = steps.map(([last, step]) => at(exampleFletched, last, '2026-07-01', { distance: 18, ...braced(step) }));
    const places = steps.map(([last, step]) => ({ distance: 18, step, first: id(last), second: null, speeds: [] }));
    const trials = [{ ...trial, groups: places }];
    const groups = [at(exampleFletched, 11, '2026-05-01', { distance: 18 }), ...shot];
    const brace = settingLanes(exampleBundle, groups, [], trials).find(({ key }) => key === 'braceHeight');
    expect(brace?.tried.map(({ value }) => value)).toEqual([0.2159, 0.219075]);
    expect(brace?.steps.map(({ value }) => value)).toEqual([setup.settings.braceHeight]);
    const { data, sentence, note } = historyOf(exampleBundle, groups, [], null, defaultPreferences.units, trials, []);
    expect(data?.sizes.points.map(({ tried }) => tried)).toEqual([
      undefined,
      '8 1/2 in, brace-height trial',
      '8 5/8 in, brace-height trial',
    ]);
    expect(data?.lanes[0]?.tried?.map(({ text }) => text)).toEqual(['8 1/2', '8 5/8']);
    expect(sentence).toContain('Shot to try a setting: 8 1/2 in, brace-height trial');
    expect(note).toContain('A diamond was shot to try a setting: 8 1/2 in, brace-height trial; 8 5/8 in, brace-height trial.');
  });

  it('has for now the newest group of three arrows or more that tried nothing, and no figure where there is none', () => {
    const point = (day: number, shots: number, text: string) => ({
      at: Date.UTC(2026, 4, day),
      shots,
      value: 30,
      low: 20,
      high: 50,
      text,
    });
    const last = (...points: TimelineData['sizes']['points'][number][]) =>
      timelineMarks({ sizes: { name: 'Mean radius', small: 'mm at 18 m', points }, lanes: [], flags: [] }, 800).panel?.last?.text;
    const tried = { ...point(4, 12, '24'), tried: '8 1/4 in, brace-height trial' };
    expect(last(point(1, 6, '31'), point(2, 2, '9'), tried)).toBe('31');
    expect(last(point(1, 2, '8'), tried)).toBeUndefined();
  });

  it('gives tiller a lane only once it has moved', () => {
    const keys = (groups: readonly ShotGroup[]) => settingLanes(exampleBundle, groups, [], []).map((lane) => lane.key);
    expect(keys(history)).not.toContain('tiller');
    expect(
      keys([at(exampleFletched, 21, '2026-04-01', { settings: { ...setup.settings, tiller: 0.006 } }), ...history]),
    ).toContain('tiller');
  });

  it('keeps the other set-ups of the bow out of its lanes', () => {
    const other = { ...spring, id: id(9), setupId: id(8), state: { ...spring.state, setup: { ...setup, ...braced(0.2) } } };
    expect(settingLanes(exampleBundle, [], [other], []).flatMap((lane) => lane.steps)).toEqual([]);
  });
});
