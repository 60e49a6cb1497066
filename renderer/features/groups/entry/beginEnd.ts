import type { ShotGroup } from '../../../../core/model/group.ts';
import { newEnd } from './ends.ts';
import { entryOf, setEntry } from './store.ts';

/** Begins the next end; an end that has no shot yet stays the one in hand. */
export function beginEnd(group: ShotGroup): void {
  const begun = newEnd(group.shots, entryOf(group.id));
  if (begun !== null) setEntry(group.id, { begun, shotInHand: null });
}
