import type { DiffRow } from '../../../core/compare/index.ts';
import type { BenchRecord, RecordEdit } from '../../../core/model/records.ts';
import type { Setup } from '../../../core/model/setup.ts';
import type { Snapshot } from '../../../core/model/snapshot.ts';
import { setupsOf, type Records } from '../../state/selectors.ts';

/**
 * The edits that make the records say again what a snapshot says: a new state, so every record keeps its identity and counts its
 * revision on. Groups are never touched. A look-over stays as it is now: what was seen then says nothing about today.
 */
export function putBackEdits(records: Records, snapshot: Snapshot): readonly RecordEdit[] {
  const { archer, bow, arrowSet, setup } = snapshot.state;
  return [archer, bow, arrowSet, setup].flatMap((then): readonly RecordEdit[] => {
    const now = records.get(then.id);
    if (now === undefined || now.kind !== then.kind)
      return [{ id: then.id, before: null, after: { ...then, revision: 0, archivedAt: null } }];
    const after = { ...then, revision: now.revision, born: now.born, archivedAt: null, ...lookOver(now) } as BenchRecord;
    return sameRecord(now, after) ? [] : [{ id: now.id, before: now, after }];
  });
}

const lookOver = (record: BenchRecord) => ('lookedOver' in record ? { lookedOver: record.lookedOver } : {});

/** Other set-ups that rest on a record which putting back would change: they change with it, which has to be said before. */
export function alsoChanged(records: Records, snapshot: Snapshot, edits: readonly RecordEdit[]): readonly Setup[] {
  const touched = new Set(edits.map((edit) => edit.id));
  return setupsOf(records).filter(
    (setup) => setup.id !== snapshot.setupId && [setup.archerId, setup.bowId, setup.arrowSetId].some((id) => touched.has(id)),
  );
}

/** Tables of measurements that the snapshot does not know yet: putting it back takes them off the bench, which has to be said before. */
export const measuredSince = (rows: readonly DiffRow[]): readonly string[] =>
  rows.filter(({ key, then }) => tables.has(key) && then.startsWith('no ')).map(({ now }) => now);
const tables: ReadonlySet<string> = new Set(['arrowSet.arrows', 'bow.forceDraw', 'setup.chronograph']);

/** Whether two records say the same, whatever the order in which their fields were written. */
function sameRecord(a: unknown, b: unknown): boolean {
  if (!isObject(a) || !isObject(b)) return Object.is(a, b);
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => key in b && sameRecord(a[key], b[key]));
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null;
