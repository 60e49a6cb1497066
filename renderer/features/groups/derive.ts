import {
  face,
  groupMeasures,
  scoreGroup,
  type Ellipse,
  type Face,
  type GroupMeasures,
  type GroupScore,
} from '../../../core/group/index.ts';
import { halfEllipse } from '../../../core/questions/index.ts';
import type { Id } from '../../../core/model/common.ts';
import { counted, type ShotGroup } from '../../../core/model/group.ts';
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
  /** The oval that holds half of many such shots; null below three. */
  readonly oval: Ellipse | null;
}

/** The figures of one group, from the shots that count; a group that has none yet carries the reason. */
export function oneGroup(group: ShotGroup, shaftRadius: number): OneGroup {
  const shots = counted(group);
  const measured = groupMeasures(shots);
  const target = face(group.context.face);
  return {
    group,
    measures: measured.ok ? measured.value : null,
    problem: measured.ok ? null : measured.problem,
    score: scoreGroup(shots, shaftRadius, target),
    face: target,
    oval: measured.ok ? halfEllipse(measured.value) : null,
  };
}

interface Pair {
  readonly first: ShotGroup | null;
  readonly second: ShotGroup | null;
}

/** Fletched stands first, bare second: disc and diamond keep their meaning however the two were chosen. */
const ordered = (first: ShotGroup | null, second: ShotGroup | null): Pair =>
  first?.fletching === 'bare' && second?.fletching === 'fletched' ? { first: second, second: first } : { first, second };

/** The newest group of the other kind that was shot at the same distance with the same settings, form and arrows; what differs in those is no pair. */
export function partnerOf(groups: readonly ShotGroup[], group: ShotGroup): ShotGroup | null {
  const alike = ({ context }: ShotGroup) =>
    JSON.stringify([context.distance, context.settings, context.form, context.arrowSetId]);
  const same = alike(group);
  const apart = (other: ShotGroup) => Math.abs(Date.parse(other.context.shotAt.at) - Date.parse(group.context.shotAt.at));
  const partners = groups.filter((other) => other.fletching !== group.fletching && alike(other) === same);
  return [...partners].sort((a, b) => apart(a) - apart(b))[0] ?? null;
}

/** The two groups on the page: those chosen; else the newest with its partner. */
export function pairOf(groups: readonly ShotGroup[], page: GroupsPage): Pair {
  const find = (id: Id | null) => groups.find((group) => group.id === id) ?? null;
  const first = find(page.firstId);
  const second = find(page.secondId);
  if (first !== null || second !== null) return ordered(first ?? second, first === null ? null : second);
  const newest = groups.at(-1);
  return newest === undefined ? { first: null, second: null } : ordered(newest, partnerOf(groups, newest));
}

/** What the page becomes when a group is taken from the rack: it takes the place of its own kind. */
export function besideOf(pair: Pair, group: ShotGroup): Partial<GroupsPage> {
  const other = [pair.first, pair.second].find((one) => one !== null && one.id !== group.id && one.fletching !== group.fletching);
  const { first, second } = ordered(group, other ?? null);
  return { firstId: first?.id ?? null, secondId: second?.id ?? null, enteringId: group.id };
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
