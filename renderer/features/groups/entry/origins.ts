import type { Face } from '../../../../core/group/index.ts';
import type { Shot } from '../../../../core/model/group.ts';
import type { ShotsAsked } from '../../../../core/tables/index.ts';
import { shotName } from './ends.ts';

/** Where a table's figures are measured from. */
interface Origin {
  readonly value: string;
  readonly text: string;
  readonly at: ShotsAsked['origin'];
  /** Which way the second figure usually grows from there. */
  readonly yGrows: ShotsAsked['yGrows'];
}

/** A list longer than this is searched, not read [count]. */
const MOST_SHOTS = 40;

/** The centre, the two corners on the left of the face, and the holes that are on it already. */
export function originsOn(face: Face, shots: readonly Shot[]): readonly Origin[] {
  const half = face.rings[0]?.radius ?? 0;
  return [
    { value: 'centre', text: 'the centre of the face', at: { x: 0, y: 0 }, yGrows: 'up' },
    { value: 'lower', text: 'the lower left corner of the face', at: { x: -half, y: -half }, yGrows: 'up' },
    { value: 'upper', text: 'the upper left corner of the face', at: { x: -half, y: half }, yGrows: 'down' },
    ...shots.slice(-MOST_SHOTS).map((shot): Origin => ({
      value: `shot ${shot.id}`,
      text: `the hole of ${shotName(shot, shots)}`,
      at: { x: shot.x, y: shot.y },
      yGrows: 'up',
    })),
  ];
}
