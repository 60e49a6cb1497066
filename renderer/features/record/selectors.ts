import type { Bundle, ShotBundle } from '../../../core/model/bundle.ts';
import type { Id } from '../../../core/model/common.ts';
import type { Snapshot } from '../../../core/model/snapshot.ts';
import { shotBundleOf, snapshotsOf, type Records } from '../../state/selectors.ts';
import type { RecordChoice } from './store.ts';

/** The snapshots of a bow that were put away, newest first. */
export function putAwayOf(records: Records, bowId: Id): readonly Snapshot[] {
  const away: Snapshot[] = [];
  for (const record of records.values()) {
    if (record.kind === 'snapshot' && record.bowId === bowId && record.archivedAt !== null) away.push(record);
  }
  return away.sort((a, b) => b.taken.at.localeCompare(a.taken.at));
}

/** The two states that are compared: a snapshot, and another one or the same set-up as it stands. */
export interface Compared {
  readonly from: Snapshot;
  readonly to: Snapshot | null;
  readonly then: ShotBundle;
  readonly now: ShotBundle;
  /** The set-up that it is a snapshot of, when that is another one of this bow than the one on the bench. */
  readonly elsewhere: string | null;
}

/** What is compared after a choice that may have gone stale: the newest snapshot of this set-up, else of this bow, stands in for one that is gone. */
export function comparedOf(records: Records, { bow, setup }: Bundle, choice: RecordChoice): Compared | null {
  const snapshots = snapshotsOf(records, bow.id);
  const find = (id: Id | null) => snapshots.find((snapshot) => snapshot.id === id) ?? null;
  const from = find(choice.from) ?? snapshots.find((snapshot) => snapshot.setupId === setup.id) ?? snapshots[0] ?? null;
  if (from === null) return null;
  const to = choice.to === from.id ? null : find(choice.to);
  const now = to === null ? shotBundleOf(records, from.setupId) : frozen(to);
  if (now === null) return null;
  const elsewhere = from.setupId === setup.id ? null : (shotBundleOf(records, from.setupId)?.setup.name ?? from.state.setup.name);
  return { from, to, then: frozen(from), now, elsewhere };
}

const frozen = ({ state, groups }: Snapshot): ShotBundle => ({ ...state, groups });
