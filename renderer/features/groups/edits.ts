import type { Id } from '../../../core/model/common.ts';
import type { Shot, ShotGroup } from '../../../core/model/group.ts';
import { unmeasured } from '../../../core/model/unmeasured.ts';
import { edited, type Bench } from '../../state/bench.ts';

/** Writes one group anew from what it is when the write's turn comes. */
function rewrite(
  bench: Bench,
  groupId: Id,
  label: string,
  patch: (group: ShotGroup) => Partial<ShotGroup> | null,
): Promise<boolean> {
  return bench.getState().change(label, (records) => {
    const group = records.get(groupId);
    if (group?.kind !== 'group') return [];
    const change = patch(group);
    return change === null ? [] : [edited(group, change)];
  });
}

const nextId = (shots: readonly Shot[]): number => shots.reduce((most, shot) => Math.max(most, shot.id), 0) + 1;

/** The number the next arrow would carry: one more than the highest so far. */
export const nextArrow = (shots: readonly Shot[]): number => shots.reduce((most, shot) => Math.max(most, shot.arrow ?? 0), 0) + 1;

const round = (metres: number): number => Math.round(metres * 1e4) / 1e4;

export function addShot(bench: Bench, groupId: Id, at: { x: number; y: number }): Promise<boolean> {
  return rewrite(bench, groupId, 'A shot set', ({ shots }) => ({
    shots: [
      ...shots,
      { ...unmeasured.shot, id: nextId(shots), x: round(at.x), y: round(at.y), arrow: Math.min(999, nextArrow(shots)) },
    ],
  }));
}

/** Rewrites one shot; a shot that is gone is no reason for a Change that changes nothing and empties the redo pile. */
function rewriteShot(bench: Bench, groupId: Id, shotId: number, label: string, patch: (shot: Shot) => Shot): Promise<boolean> {
  return rewrite(bench, groupId, label, ({ shots }) =>
    shots.some(({ id }) => id === shotId) ? { shots: shots.map((shot) => (shot.id === shotId ? patch(shot) : shot)) } : null,
  );
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

export function numberShot(bench: Bench, groupId: Id, shotId: number, arrow: number): Promise<boolean> {
  return rewriteShot(bench, groupId, shotId, `Arrow ${arrow} numbered`, (shot) => ({ ...shot, arrow }));
}

/** Takes a shot off the face; without an id, the last one set. */
export function takeBack(bench: Bench, groupId: Id, shotId: number | null): Promise<boolean> {
  return rewrite(bench, groupId, 'A shot taken back', ({ shots }) => {
    const left = shotId === null ? shots.slice(0, -1) : shots.filter((shot) => shot.id !== shotId);
    return left.length === shots.length ? null : { shots: left };
  });
}

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
