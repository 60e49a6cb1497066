import { face, groupMeasures, scoreGroup, type Face, type GroupMeasures, type GroupScore } from '../../../core/group/index.ts';
import type { Id } from '../../../core/model/common.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { Problem } from '../../../core/model/problem.ts';
import type { Records } from '../../state/selectors.ts';
import type { GroupsPage } from './store.ts';

/** A shaft nobody has measured is drawn and scored as this [m]: a usual outdoor shaft. */
export const usualShaft = 0.0055;

export interface OneGroup {
  readonly group: ShotGroup;
  readonly measures: GroupMeasures | null;
  readonly problem: Problem | null;
  readonly score: GroupScore;
  readonly face: Face;
}

/** The figures of one group; a group that has none yet carries the reason. */
export function oneGroup(group: ShotGroup, shaftRadius: number): OneGroup {
  const measured = groupMeasures(group.shots);
  const target = face(group.context.face);
  return {
    group,
    measures: measured.ok ? measured.value : null,
    problem: measured.ok ? null : measured.problem,
    score: scoreGroup(group.shots, shaftRadius, target),
    face: target,
  };
}

/** The two groups on the page: those chosen; else the newest bare group with the fletched one shot nearest to it in time at its distance; else the newest. */
export function pairOf(groups: readonly ShotGroup[], page: GroupsPage): { first: ShotGroup | null; second: ShotGroup | null } {
  const find = (id: Id | null) => groups.find((group) => group.id === id) ?? null;
  const first = find(page.firstId);
  const second = find(page.secondId);
  if (first !== null || second !== null) return { first: first ?? second, second: first === null ? null : second };
  const bare = groups.findLast((group) => group.fletching === 'bare');
  if (bare === undefined) return { first: groups.at(-1) ?? null, second: null };
  const apart = (group: ShotGroup) => Math.abs(Date.parse(group.context.shotAt.at) - Date.parse(bare.context.shotAt.at));
  const fletched = groups
    .filter((group) => group.fletching === 'fletched' && group.context.distance === bare.context.distance)
    .sort((a, b) => apart(a) - apart(b))[0];
  return fletched === undefined ? { first: bare, second: null } : { first: fletched, second: bare };
}

/** The groups of a set-up that were put away, newest first. */
export function groupsAway(records: Records, setupId: Id): readonly ShotGroup[] {
  const away: ShotGroup[] = [];
  for (const record of records.values()) {
    if (record.kind === 'group' && record.setupId === setupId && record.archivedAt !== null) away.push(record);
  }
  return away.sort((a, b) => b.context.shotAt.at.localeCompare(a.context.shotAt.at));
}

export const nameOfGroup = (group: ShotGroup): string => group.fletching;
