import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../../../../core/model/common.ts';
import type { EndsBegun } from './ends.ts';

/** How a group is being entered, for as long as the page stands: nothing of it is in the notebook but what the shots carry. */
interface GroupEntry extends EndsBegun {
  /** The shot in hand. */
  readonly shotInHand: number | null;
  /** The shot that is about to be left out. */
  readonly leaving: number | null;
}

const fresh: GroupEntry = { begun: null, size: null, shotInHand: null, leaving: null };

interface Entries {
  readonly groups: Readonly<Record<Id, GroupEntry>>;
  /** An end's arrows as noted last: what the next group begins with. */
  readonly size: number | null;
}

const entries = createStore<Entries>(() => ({ groups: {}, size: null }));

const entryIn = ({ groups, size }: Entries, groupId: Id): GroupEntry =>
  groups[groupId] ?? (size === null ? fresh : startingWith(size));

/** The same object for the same size, so that whoever looks at it is not drawn anew. */
const started = new Map<number, GroupEntry>();
function startingWith(size: number): GroupEntry {
  const known = started.get(size) ?? { ...fresh, size };
  started.set(size, known);
  return known;
}

export const entryOf = (groupId: Id): GroupEntry => entryIn(entries.getState(), groupId);

export function setEntry(groupId: Id, patch: Partial<GroupEntry>): void {
  entries.setState((all) => ({
    groups: { ...all.groups, [groupId]: { ...entryIn(all, groupId), ...patch } },
    size: patch.size === undefined ? all.size : patch.size,
  }));
}

export const useEntry = (groupId: Id): GroupEntry => useStore(entries, (all) => entryIn(all, groupId));
