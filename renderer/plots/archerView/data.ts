import type { Face } from '../../../core/group/index.ts';
import type { Hand } from '../../../core/model/archer.ts';
import type { Band } from '../../../core/model/band.ts';

/** The arrow at full draw, its nock squarely below the eye. */
export interface SeenArrow {
  readonly kind: 'tip';
  /** From the nock to the tip [m]. */
  readonly forward: number;
  /** From the arrow's axis up to the eye [m]. */
  readonly eyeHeight: number;
  /** Of the shaft [m]. */
  readonly diameter: number;
}

/** The pin of a sight, on the bow. */
export interface SeenPin {
  readonly kind: 'pin';
}

/** A target on level ground as the archer's eye sees it, and what is held against it. SI. */
export interface ArcherViewData {
  /** From the archer to the target [m]. */
  readonly distance: number;
  readonly face: Face;
  /** The archer's: the bow stands on the other side of the arrow for the other hand. */
  readonly hand: Hand;
  /** How high the eye and the centre of the face stand over the ground [m]. */
  readonly eyeAboveGround: number;
  readonly centreAboveGround: number;
  readonly by: SeenArrow | SeenPin;
  /** Where it is held against the centre, in the plane of the target: above it and to the right when positive [m]. */
  readonly up: Band;
  readonly across: number;
  /** From the archer to the marker on the ground that the tip covers [m]; null when it clears the ground at the target. */
  readonly marker: Band | null;
}
