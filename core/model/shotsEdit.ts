import { z } from './zod.ts';
import { Id } from './common.ts';
import { Shot, type ShotGroup } from './group.ts';

/**
 * What one edit does to the shots of a group: these are taken out, and those put in, in place of the shot of the same id or at the end. A
 * group may hold 100,000 shots, and one click must not carry them all to the notebook and back.
 */
export const ShotsEdit = z.strictObject({
  groupId: Id,
  /** The revision of the group that the edit was made on. */
  revision: z.int().nonnegative(),
  out: z.array(Shot.shape.id),
  put: z.array(Shot),
});
export type ShotsEdit = z.infer<typeof ShotsEdit>;

/** The shots after the edit; those that it leaves alone are the same ones as before, in their order. */
export function withShots(shots: readonly Shot[], { out, put }: Pick<ShotsEdit, 'out' | 'put'>): ShotGroup['shots'] {
  const gone = new Set(out);
  const stay = gone.size === 0 ? shots : shots.filter(({ id }) => !gone.has(id));
  if (put.length === 0) return [...stay];
  const news = new Map(put.map((shot) => [shot.id, shot]));
  const kept = stay.map((shot) => {
    const other = news.get(shot.id);
    if (other !== undefined) news.delete(shot.id);
    return other ?? shot;
  });
  return [...kept, ...news.values()];
}
