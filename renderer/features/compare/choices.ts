import type { ShotBundle } from '../../../core/model/bundle.ts';
import type { Id } from '../../../core/model/common.ts';
import type { Snapshot } from '../../../core/model/snapshot.ts';
import { bundleOf, groupsOf, setupsOf, shotBundleOf, snapshotsOf, type Records } from '../../state/selectors.ts';

/** Two set-ups of one archer are what an archer chooses between: whoever else shoots a like bow comes after. */
const weights = [
  ['archer', 4],
  ['bow', 2],
  ['arrowSet', 1],
] as const;

/** What the set-up on the bench can be compared with. */
export interface Other {
  readonly id: Id;
  readonly name: string;
  readonly kind: 'setup' | 'snapshot';
}

/**
 * Every other set-up: the same archer's first, then those that share the bow, then the arrows, and those that were shot before those that
 * were not; then the snapshots of this bow, newest first.
 */
export function othersOf(records: Records, referenceId: Id): readonly Other[] {
  const reference = bundleOf(records, referenceId);
  if (reference === null) return [];
  const shared = (id: Id) => {
    const bundle = bundleOf(records, id);
    if (bundle === null) return -1;
    return weights.reduce((sum, [key, weight]) => sum + (bundle[key].id === reference[key].id ? weight : 0), 0);
  };
  const shot = (id: Id) => groupsOf(records, id).length > 0;
  const setups = setupsOf(records)
    .filter((setup) => setup.id !== referenceId && shared(setup.id) >= 0)
    .sort((a, b) => shared(b.id) - shared(a.id) || Number(shot(b.id)) - Number(shot(a.id)));
  return [
    ...setups.map(({ id, name }): Other => ({ id, name, kind: 'setup' })),
    ...snapshotsOf(records, reference.bow.id).map(({ id, name }): Other => ({ id, name, kind: 'snapshot' })),
  ];
}

/** The other column's records: a set-up with its groups, or a snapshot with those it kept. */
export function otherBundle(records: Records, other: Other): ShotBundle | null {
  if (other.kind === 'setup') return shotBundleOf(records, other.id);
  const snapshot = records.get(other.id);
  return snapshot?.kind === 'snapshot' ? bundleOfSnapshot(snapshot) : null;
}

const bundleOfSnapshot = ({ name, state, groups }: Snapshot): ShotBundle => ({
  ...state,
  setup: { ...state.setup, name },
  groups: [...groups].sort((a, b) => a.context.shotAt.at.localeCompare(b.context.shotAt.at)),
});
