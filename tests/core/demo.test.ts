import { describe, expect, it } from 'vitest';
import { BenchRecord, type ArrowSet, type Setup, type Snapshot } from '../../core/model/index.ts';
import { demoRecords } from '../../fixtures/demo/index.ts';
import { group, now, of, pairs, records } from './demoClub.ts';

describe('the demo club', () => {
  it('holds records that the notebook takes', () => {
    expect(records.length).toBeGreaterThan(30);
    for (const record of records) expect(BenchRecord.safeParse(record).error, record.id).toBeUndefined();
    expect(new Set(records.map((record) => record.id)).size).toBe(records.length);
    expect(records.every((record) => record.revision === 0 && record.archivedAt === null)).toBe(true);
  });

  it('has archers, bows, arrows, set-ups, groups, trials and snapshots', () => {
    expect([of('archer').length, of('bow').length, of('arrowSet').length, of('setup').length]).toEqual([4, 4, 6, 6]);
    expect([of('group').length, of('snapshot').length]).toEqual([55, 4]);
    expect([of('trial').length, of('scoreSheet').length, of('sightMark').length]).toEqual([10, 1, 10]);
    expect(of('archer').filter((archer) => archer.hand === 'left').length).toBe(1);
  });

  it('is the same each time, and other arrows with another seed', () => {
    expect(demoRecords(now)).toEqual(records);
    expect(group(pairs[0]?.bareId ?? '', demoRecords(now, 'another')).shots).not.toEqual(group(pairs[0]?.bareId ?? '').shots);
  });

  it('keeps names and arrows when it is opened on another day, and moves its dates along', () => {
    const later = demoRecords({ at: '2026-06-25T23:30:00.000Z', offsetMinutes: 120 });
    expect(later.map((record) => record.id)).toEqual(records.map((record) => record.id));
    expect(of('group', later).map((one) => one.shots)).toEqual(of('group').map((one) => one.shots));
    const day = (record: BenchRecord | undefined) => record?.born.at.slice(0, 10);
    expect([day(records[0]), day(later[0])]).toEqual(['2025-12-22', '2025-12-28']);
    expect(
      [...records, ...later].every(
        (record, index) => record.born.at < (index < records.length ? now.at : '2026-06-25T23:30:00.000Z'),
      ),
    ).toBe(true);
  });

  it('points only at records that are there, hand to hand', () => {
    const byId = new Map(records.map((record) => [record.id, record]));
    const kindOf = (id: string) => byId.get(id)?.kind;
    for (const setup of of('setup')) {
      expect([kindOf(setup.archerId), kindOf(setup.bowId), kindOf(setup.arrowSetId)]).toEqual(['archer', 'bow', 'arrowSet']);
      const [archer, bow] = [byId.get(setup.archerId), byId.get(setup.bowId)];
      expect(archer?.kind === 'archer' && bow?.kind === 'bow' && archer.hand === bow.hand).toBe(true);
    }
    for (const one of of('group')) expect([kindOf(one.setupId), kindOf(one.context.arrowSetId)]).toEqual(['setup', 'arrowSet']);
    for (const one of of('snapshot')) expect([kindOf(one.setupId), kindOf(one.bowId)]).toEqual(['setup', 'bow']);
  });

  it('freezes in each snapshot the set-up as it was last shot before it, with the groups of that time', () => {
    const snapshots: Snapshot[] = of('snapshot');
    expect(snapshots.length).toBeGreaterThan(0);
    for (const { setupId, bowId, state, groups, taken, name } of snapshots) {
      expect([state.setup.id, state.bow.id, state.setup.archerId, state.setup.arrowSetId], name).toEqual([
        setupId,
        bowId,
        state.archer.id,
        state.arrowSet.id,
      ]);
      expect(groups, name).toEqual(of('group').filter((one) => one.setupId === setupId && one.context.shotAt.at <= taken.at));
      expect(groups.at(-1)?.context.settings, name).toEqual(state.setup.settings);
      expect(groups.length, name).toBeGreaterThan(0);
    }
  });

  it('has shot its latest groups with the set-up as it stands', () => {
    const setups = new Map(of('setup').map((setup): [string, Setup] => [setup.id, setup]));
    for (const { setupId, fletchedId, bareId } of pairs) {
      for (const id of [fletchedId, bareId]) expect(group(id ?? '').context.settings).toEqual(setups.get(setupId)?.settings);
      expect(group(fletchedId ?? '').context).toEqual(group(bareId ?? '').context);
    }
  });

  it('numbers the shots in order, with numbers on the arrows', () => {
    for (const { shots } of of('group')) {
      expect(shots.map((shot) => shot.id)).toEqual(shots.map((_, index) => index));
      expect(shots.every((shot) => shot.arrow !== null)).toBe(true);
    }
  });

  it('weighs its arrows as their parts add up, within 3 %', () => {
    const weighed = of('arrowSet').filter((set: ArrowSet) => set.weighed !== null);
    expect(weighed.length).toBeGreaterThan(2);
    for (const set of weighed) {
      const parts =
        (set.length ?? 0) * (set.linearDensity ?? 0) +
        (set.pointMass ?? 0) +
        (set.insertMass ?? 0) +
        (set.nockMass ?? 0) +
        (set.fletchingMass ?? 0);
      expect(Math.abs(parts / (set.weighed ?? 0) - 1), set.name).toBeLessThan(0.03);
    }
  });

  it('names nobody but the four invented archers', () => {
    expect(
      of('archer')
        .map((archer) => archer.name)
        .sort(),
    ).toEqual(['Cato Lind', 'Ines Varga', 'Maud Orrin', 'Tobin Ashe']);
    const ours = /^(Cato|Ines|Maud|Tobin)(’s)?$/;
    const words = records.flatMap((record) => (record.kind !== 'archer' && 'name' in record ? record.name : []));
    expect(words.length).toBeGreaterThan(10);
    // Every capital inside a name belongs to one of the four; the first word may be a plain one.
    for (const name of words)
      expect(
        name
          .split(/[\s,]+/)
          .slice(1)
          .filter((word) => /^[A-Z]/.test(word) && !ours.test(word)),
        name,
      ).toEqual([]);
  });
});
