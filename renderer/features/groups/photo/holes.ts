import type { Point } from '../../../../core/group/index.ts';
import type { Shot } from '../../../../core/model/group.ts';
import type { PicturePoint } from '../../../../core/model/picture.ts';
import { unmeasured } from '../../../../core/model/unmeasured.ts';
import { toFace, type FaceFit } from '../../../../core/photo/index.ts';
import { endOfNext, nextArrow, type EndsBegun } from '../entry/ends.ts';

/** A hole as it was marked: its place is the picture's, so that it stays on the hole whatever becomes of the rings. */
export interface Hole {
  readonly id: number;
  readonly picture: PicturePoint;
  /** The arrow's number where somebody gave it one, "none" where somebody took it off; null where it counts on from the hole before. */
  readonly arrow: number | 'none' | null;
}

/** What a hole comes to on the face. */
export interface PlacedHole {
  readonly place: Point;
  readonly arrow: Hole['arrow'];
}

export const placed = (holes: readonly Hole[], fit: FaceFit): readonly PlacedHole[] =>
  holes.map(({ picture, arrow }) => ({ place: toFace(fit.homography, picture), arrow }));

/** A tenth of a millimetre, as a click on the face is kept. */
const round = (metres: number): number => Math.round(metres * 1e4) / 1e4 + 0;

/** The shots that holes make of themselves in a group: the end in hand, or the next when it is full, and numbers where somebody numbers them. */
export function shotsOf(shots: readonly Shot[], holes: readonly PlacedHole[], ends: EndsBegun): readonly Shot[] {
  const all = [...shots];
  let id = shots.reduce((most, shot) => Math.max(most, shot.id), 0);
  for (const { place, arrow } of holes) {
    const end = endOfNext(all, ends);
    all.push({
      ...unmeasured.shot,
      id: ++id,
      x: round(place.x),
      y: round(place.y),
      arrow: arrow === 'none' ? null : (arrow ?? nextArrow(all, end)),
      end,
    });
  }
  return all.slice(shots.length);
}
