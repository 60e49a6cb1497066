import type { Id } from '../../core/model/common.ts';
import type { Bundle, ShotBundle } from '../../core/model/bundle.ts';
import type { BenchRecord, RecordKind } from '../../core/model/records.ts';
import type { ShotGroup } from '../../core/model/group.ts';
import type { SightMark } from '../../core/model/sightMark.ts';
import type { Setup } from '../../core/model/setup.ts';
import type { Trial } from '../../core/model/trial.ts';
import type { Snapshot } from '../../core/model/snapshot.ts';

export type Records = ReadonlyMap<Id, BenchRecord>;

type OfKind<K extends RecordKind> = Extract<BenchRecord, { kind: K }>;

/** Remembers the last answer for one map of records: the map is never changed in place, so its identity is its content. */
function perRecords<A extends readonly unknown[], T>(
  compute: (records: Records, ...args: A) => T,
): (records: Records, ...args: A) => T {
  const cache = new WeakMap<Records, Map<string, T>>();
  return (records, ...args) => {
    const known = cache.get(records) ?? new Map<string, T>();
    cache.set(records, known);
    const key = JSON.stringify(args);
    if (!known.has(key)) known.set(key, compute(records, ...args));
    return known.get(key) as T;
  };
}

const byName = (a: { name: string }, b: { name: string }) => a.name.localeCompare(b.name, 'en');

/** All records of one kind that are not archived. */
export const recordsOf = perRecords(<K extends RecordKind>(records: Records, kind: K): readonly OfKind<K>[] => {
  const found: OfKind<K>[] = [];
  for (const record of records.values()) {
    if (record.kind === kind && record.archivedAt === null) found.push(record as OfKind<K>);
  }
  return found;
}) as <K extends RecordKind>(records: Records, kind: K) => readonly OfKind<K>[];

export const setupsOf = perRecords((records: Records): readonly Setup[] => [...recordsOf(records, 'setup')].sort(byName));

/** A set-up with its archer, bow and arrows; null when it points to a record that is gone. */
export const bundleOf = perRecords((records: Records, setupId: Id | null): Bundle | null => {
  const setup = setupId === null ? undefined : records.get(setupId);
  if (setup?.kind !== 'setup') return null;
  const archer = records.get(setup.archerId);
  const bow = records.get(setup.bowId);
  const arrowSet = records.get(setup.arrowSetId);
  if (archer?.kind !== 'archer' || bow?.kind !== 'bow' || arrowSet?.kind !== 'arrowSet') return null;
  return { archer, bow, arrowSet, setup };
});

/** The groups of one set-up, oldest first. */
export const groupsOf = perRecords((records: Records, setupId: Id | null): readonly ShotGroup[] =>
  recordsOf(records, 'group')
    .filter((group) => group.setupId === setupId)
    .sort((a, b) => a.context.shotAt.at.localeCompare(b.context.shotAt.at)),
);

/** The groups of all set-ups of one archer with one bow, oldest first: whoever asks for an archer's usual spread asks them. */
export const groupsOfBow = perRecords((records: Records, archerId: Id, bowId: Id): readonly ShotGroup[] => {
  const theirs = new Set(
    recordsOf(records, 'setup')
      .filter((setup) => setup.archerId === archerId && setup.bowId === bowId)
      .map(({ id }) => id),
  );
  return recordsOf(records, 'group')
    .filter((group) => theirs.has(group.setupId))
    .sort((a, b) => a.context.shotAt.at.localeCompare(b.context.shotAt.at));
});

export const shotBundleOf = perRecords((records: Records, setupId: Id | null): ShotBundle | null => {
  const bundle = bundleOf(records, setupId);
  return bundle === null ? null : { ...bundle, groups: groupsOf(records, setupId) };
});

/** The sight marks of one set-up, nearest first; of one distance the latest first. */
export const sightMarksOf = perRecords((records: Records, setupId: Id | null): readonly SightMark[] =>
  recordsOf(records, 'sightMark')
    .filter((mark) => mark.setupId === setupId)
    .sort((a, b) => a.distance - b.distance || b.context.shotAt.at.localeCompare(a.context.shotAt.at)),
);

/** The snapshots of one bow, newest first. */
export const snapshotsOf = perRecords((records: Records, bowId: Id | null): readonly Snapshot[] =>
  recordsOf(records, 'snapshot')
    .filter((snapshot) => snapshot.bowId === bowId)
    .sort((a, b) => b.taken.at.localeCompare(a.taken.at)),
);

/** The trials of one set-up, newest first, those that were put away too. */
const everyTrialOf = perRecords((records: Records, setupId: Id | null): readonly Trial[] => {
  const found: Trial[] = [];
  for (const record of records.values()) if (record.kind === 'trial' && record.setupId === setupId) found.push(record);
  return found.sort((a, b) => b.born.at.localeCompare(a.born.at));
});

/** Every group that was shot for a walk-back, of any set-up and on the shelf or not. */
export const walkBackGroups = perRecords((records: Records): ReadonlySet<Id> => {
  const found = new Set<Id>();
  for (const record of records.values()) {
    if (record.kind !== 'trial' || record.trial !== 'walk-back') continue;
    for (const { first, second } of record.groups) for (const id of [first, second]) if (id !== null) found.add(id);
  }
  return found;
});

/** The trials of one set-up, newest first: on the shelf, or put away. */
export const trialsOf = perRecords((records: Records, setupId: Id | null, away: boolean): readonly Trial[] =>
  everyTrialOf(records, setupId).filter((trial) => (trial.archivedAt !== null) === away),
);
