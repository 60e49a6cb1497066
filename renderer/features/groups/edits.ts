import type { Id } from '../../../core/model/common.ts';
import type { Shot, ShotGroup } from '../../../core/model/group.ts';
import { unmeasured } from '../../../core/model/unmeasured.ts';
import { edited, type Bench } from '../../state/bench.ts';
import { endOfNext, nextArrow, shotName } from './entry/ends.ts';
import { entryOf } from './entry/store.ts';

/** Writes one group anew from what it is when the write's turn comes. */
function rewrite(bench: Bench, groupId: Id, label: string, patch: (group: ShotGroup) => Partial<ShotGroup>): Promise<boolean> {
  return bench.getState().change(label, (records) => {
    const group = records.get(groupId);
    return group?.kind === 'group' ? [edited(group, patch(group))] : [];
  });
}

const nextId = (shots: readonly Shot[]): number => shots.reduce((most, shot) => Math.max(most, shot.id), 0) + 1;

const round = (metres: number): number => Math.round(metres * 1e4) / 1e4 + 0;

/** One shot more, in the end in hand, with the arrow's number where one is given or counted on. */
export function addShot(bench: Bench, groupId: Id, at: { x: number; y: number; arrow?: number | null }): Promise<boolean> {
  return bench.getState().changeShots('A shot set', groupId, ({ shots }) => {
    const end = endOfNext(shots, entryOf(groupId));
    const arrow = at.arrow ?? nextArrow(shots, end);
    const shot = { ...unmeasured.shot, id: nextId(shots), x: round(at.x), y: round(at.y), arrow, end };
    return { put: [shot] };
  });
}

/** Rewrites one shot; a shot that is gone is no reason for a Change that changes nothing and empties the redo pile. */
function rewriteShot(bench: Bench, groupId: Id, shotId: number, label: string, patch: (shot: Shot) => Shot): Promise<boolean> {
  return bench.getState().changeShots(label, groupId, ({ shots }) => {
    const shot = shots.find(({ id }) => id === shotId);
    return shot === undefined ? null : { put: [patch(shot)] };
  });
}

export function moveShot(
  bench: Bench,
  groupId: Id,
  shotId: number,
  to: (shot: Shot) => { x: number; y: number },
): Promise<boolean> {
  return rewriteShot(bench, groupId, shotId, 'A shot moved', (shot) => {
    const { x, y } = to(shot);
    return { ...shot, x: round(x), y: round(y) };
  });
}

/** Gives a shot its arrow's number, or takes it off. */
export function numberShot(bench: Bench, groupId: Id, shotId: number, arrow: number | null): Promise<boolean> {
  const label = arrow === null ? 'A number taken off' : `Arrow ${arrow} numbered`;
  return rewriteShot(bench, groupId, shotId, label, (shot) => ({ ...shot, arrow }));
}

/** Leaves a shot out of the figures for a reason, or counts it again. It stays on record and on the face either way. */
export function leaveOut(bench: Bench, group: ShotGroup, shot: Shot, reason: string | null): Promise<boolean> {
  const label = `${reason === null ? 'Counted again' : 'Left out'}: ${shotName(shot, group.shots)}`;
  return rewriteShot(bench, group.id, shot.id, label, (now) => ({ ...now, leftOut: reason }));
}

/** Takes a shot off the face; without an id, the last one set. */
export function removeShot(bench: Bench, groupId: Id, shotId: number | null): Promise<boolean> {
  return bench.getState().changeShots('A shot removed', groupId, ({ shots }) => {
    const shot = shotId === null ? shots.at(-1) : shots.find(({ id }) => id === shotId);
    return shot === undefined ? null : { out: [shot.id] };
  });
}

/** Puts a whole table of shots in: those that the table began with are gone unless they are in it still. */
export function keepShots(
  bench: Bench,
  groupId: Id,
  label: string,
  shots: readonly (Omit<Shot, 'id'> & { readonly id: number | null })[],
  instead: readonly number[],
): Promise<boolean> {
  return bench.getState().changeShots(label, groupId, (group) => {
    const known = new Map(group.shots.map((shot) => [shot.id, shot]));
    let next = nextId(group.shots);
    const all = shots.map((shot): Shot => ({ ...shot, id: shot.id !== null && known.has(shot.id) ? shot.id : next++ }));
    const stay = new Set(all.map(({ id }) => id));
    const out = instead.filter((id) => known.has(id) && !stay.has(id));
    const put = all.filter((shot) => !isSame(shot, known.get(shot.id)));
    return put.length + out.length === 0 ? null : { put, out };
  });
}

const isSame = (a: Shot, b: Shot | undefined): boolean =>
  b !== undefined && a.x === b.x && a.y === b.y && a.arrow === b.arrow && a.end === b.end && a.leftOut === b.leftOut;

export function setContext(bench: Bench, groupId: Id, label: string, patch: Partial<ShotGroup['context']>): Promise<boolean> {
  return rewrite(bench, groupId, label, ({ context }) => ({ context: { ...context, ...patch } }));
}

export function setGroup(bench: Bench, groupId: Id, label: string, patch: Partial<ShotGroup>): Promise<boolean> {
  return rewrite(bench, groupId, label, () => patch);
}

/** The shot set last in a group as the store now has it. */
export function newestIn(bench: Bench, groupId: Id): number | null {
  const group = bench.getState().records.get(groupId);
  return group?.kind === 'group' ? (group.shots.at(-1)?.id ?? null) : null;
}
