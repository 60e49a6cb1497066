import { describe, expect, it } from 'vitest';
import {
  exampleBare,
  exampleBundle,
  exampleFletched,
  exampleNow,
  type BenchRecord,
  type Id,
  type ShotGroup,
} from '../../core/model/index.ts';
import { groupsAway } from '../../renderer/features/groups/derive.ts';
import { edited } from '../../renderer/state/bench.ts';
import { groupsOf, type Records } from '../../renderer/state/selectors.ts';

const { setup } = exampleBundle;
const recordsOf = (records: readonly BenchRecord[]): Records =>
  new Map<Id, BenchRecord>(records.map((record) => [record.id, record] as const));
const away: ShotGroup = { ...exampleBare, archivedAt: exampleNow };

describe('a group that is put away', () => {
  it('leaves the groups of its set-up and stands in the list of those put away', () => {
    const records = recordsOf([exampleFletched, away]);
    expect(groupsOf(records, setup.id).map(({ id }) => id)).toEqual([exampleFletched.id]);
    expect(groupsAway(records, setup.id).map(({ id }) => id)).toEqual([exampleBare.id]);
  });

  it('comes back with its shots when it is taken out again', () => {
    const { after } = edited(away, { archivedAt: null });
    const records = recordsOf([exampleFletched, after as BenchRecord]);
    expect(groupsAway(records, setup.id)).toEqual([]);
    expect(groupsOf(records, setup.id).find(({ id }) => id === exampleBare.id)?.shots).toEqual(exampleBare.shots);
  });

  it('is listed newest first, and only for its own set-up', () => {
    const later = {
      ...away,
      id: '20000000-0000-4000-8000-000000000001',
      context: { ...away.context, shotAt: { at: '2026-06-02T10:30:00Z', offsetMinutes: 60 } },
    };
    const elsewhere = { ...away, id: '20000000-0000-4000-8000-000000000002', setupId: '20000000-0000-4000-8000-000000000003' };
    expect(groupsAway(recordsOf([away, later, elsewhere]), setup.id).map(({ id }) => id)).toEqual([later.id, away.id]);
  });
});
