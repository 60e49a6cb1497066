import type { FaceId, ShotGroup } from '../../../core/model/group.ts';
import type { TrialInput, TrialRow } from '../../../core/trials/index.ts';
import { placeOf } from './derive.ts';

/** From here on a face is no longer the indoor one [m]. */
const OUTDOORS = 25;

/** The face on which a row is shot: that of the other group there, else of the trial's last, else the usual one of the distance. */
export function faceFor({ trial, groups }: Pick<TrialInput, 'trial' | 'groups'>, row: TrialRow): FaceId {
  const at = placeOf(trial, row);
  const known = (id: string | null | undefined): ShotGroup | undefined => (id == null ? undefined : groups.get(id));
  const last = trial.groups.flatMap(({ first, second }) => [first, second]).findLast((id) => known(id) !== undefined);
  const beside = known(at?.first) ?? known(at?.second) ?? known(last);
  return beside?.context.face ?? ((row.place?.distance ?? 0) > OUTDOORS || trial.trial === 'walk-back' ? '122' : '40');
}
