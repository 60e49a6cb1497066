import type { Picture } from '../../../../core/model/picture.ts';
import { born, edited, type Bench } from '../../../state/bench.ts';
import { newPicture } from '../../../state/births.ts';
import { entryOf } from '../entry/store.ts';
import { shotsOf, type PlacedHole } from './holes.ts';

/** The shots of a photo and the photo itself, as one Change: undone together. */
export function keepPhoto(
  bench: Bench,
  groupId: Picture['groupId'],
  holes: readonly PlacedHole[],
  picture: Pick<Picture, 'jpeg' | 'width' | 'height' | 'homography' | 'residual'>,
): Promise<boolean> {
  return bench.getState().change('Shots from a photo', (records) => {
    const group = records.get(groupId);
    if (group?.kind !== 'group') return [];
    const shots = [...group.shots, ...shotsOf(group.shots, holes, entryOf(groupId))];
    return [edited(group, { shots }), born(newPicture(groupId, picture))];
  });
}
