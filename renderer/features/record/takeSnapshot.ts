import type { ShotBundle } from '../../../core/model/bundle.ts';
import type { Id, Stamp } from '../../../core/model/common.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { ShownFigure, Snapshot } from '../../../core/model/snapshot.ts';

/** What one snapshot carries at most, so that it stays a page of the notebook and not a second one. */
export const MOST_GROUPS_KEPT = 40;
export const MOST_SHOTS_KEPT = 5_000;

/** The newest groups that fit, oldest first. A group that would not fit whole is left out, never cut. */
export function groupsToKeep(groups: readonly ShotGroup[]): readonly ShotGroup[] {
  const kept: ShotGroup[] = [];
  let shots = 0;
  for (const group of [...groups].reverse()) {
    if (kept.length === MOST_GROUPS_KEPT || shots + group.shots.length > MOST_SHOTS_KEPT) break;
    kept.unshift(group);
    shots += group.shots.length;
  }
  return kept;
}

/** What goes into the snapshot, in one sentence, said before it is taken. */
export function whatIsKept(groups: readonly ShotGroup[]): string {
  const always = 'The bow, the arrows, the archer, the form and every setting as they stand';
  if (groups.length === 0) return `${always}. No group has been shot with this set-up yet.`;
  const kept = groupsToKeep(groups).length;
  const counted = (count: number) => (count === 1 ? 'its one group' : `its ${count} groups`);
  if (kept === groups.length) return `${always}, and ${counted(kept)}.`;
  const limit = `a snapshot holds ${MOST_GROUPS_KEPT} groups and ${MOST_SHOTS_KEPT.toLocaleString('en-GB')} shots at most`;
  return `${always}, and ${kept === 0 ? 'none' : `the newest ${kept}`} of ${counted(groups.length)}: ${limit}. The others stay in the notebook.`;
}

/** The set-up frozen with everything it rests on. */
export function snapshotOf(
  bundle: ShotBundle,
  figures: readonly ShownFigure[],
  birth: {
    readonly id: Id;
    readonly name: string;
    readonly note: string;
    readonly taken: Stamp;
    readonly programVersion: string;
  },
): Snapshot {
  const { archer, bow, arrowSet, setup, groups } = bundle;
  const { taken, ...rest } = birth;
  return {
    ...rest,
    kind: 'snapshot',
    revision: 0,
    born: taken,
    archivedAt: null,
    taken,
    setupId: setup.id,
    bowId: bow.id,
    state: { archer, bow, arrowSet, setup },
    groups: [...groupsToKeep(groups)],
    figures: [...figures],
  };
}
