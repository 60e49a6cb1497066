import type { BowKind } from '../../model/index.ts';

/** How the limbs of a kind of bow are laid out in the model, where nothing was measured. */
export interface KindLimbs {
  /** Height of the hinge above the pivot, as a share of half the string [-]. */
  readonly hingeShare: number;
  /** How far the hinge lies from the pivot towards the archer [m]. */
  readonly hingeX: number;
  /** m_t of a bow of 40 lb [kg]. */
  readonly tipMass: number;
}

// The recurve's hinge is that of the runs the model was checked by: .385 m up in .793 m of half string, 30 mm back. Its mass is the heavy end
// of the 25 to 45 g that bring a rigid arm's efficiency near the usual .67 to .79. A straight limb bends from nearer the grip and is thicker
// at its end: the yew bow that Hickman measured asks for 66 g. Nobody has weighed a limb for this.
const recurve: KindLimbs = { hingeShare: 0.485, hingeX: 0.03, tipMass: 0.045 };
const straight: KindLimbs = { hingeShare: 0.375, hingeX: 0, tipMass: 0.06 };

/** A compound has none: its limbs hardly move, and its string runs over cams. */
export const kindLimbs: Readonly<Record<BowKind, KindLimbs | null>> = {
  'take-down recurve': recurve,
  'one-piece recurve': recurve,
  longbow: straight,
  flatbow: straight,
  'self bow': straight,
  compound: null,
};
