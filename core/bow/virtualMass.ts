import { refuse, type Bundle, type Result } from '../model/index.ts';
import type { Band } from '../model/band.ts';

/** The mass that the bow's own moving parts seem to add to the arrow, out of chronographed arrows. */
export interface VirtualMass {
  /** K [kg]. */
  readonly virtualMass: Band;
  /** η E, the energy that arrow and virtual mass leave with, at the draw and brace height of now [J]. */
  readonly returned: Band;
  /** η, out of readings of letting down; null without them: speeds alone cannot tell it [-]. */
  readonly share: Band | null;
  /** How many speeds it rests on. */
  readonly readings: number;
  /** Whether it may be used. */
  readonly credible: boolean;
  /** Why it may not, ready to read. */
  readonly why: string | null;
  /** Whether K is the same for every arrow, but for a part that grows in line with the arrow. */
  readonly constant: 'yes' | 'no' | 'cannot tell';
  /** What speeds alone cannot tell apart, ready to read. */
  readonly cannotSeparate: string;
  /** What it rests on beyond the speeds, ready to read. */
  readonly notes: readonly string[];
}

/**
 * The bow's virtual mass out of arrows over the chronograph.
 *
 * @equation (m + K) v² / 2 = η E
 * @param bundle - the set-up with its records [record]
 * @returns K [kg] and η E [J] with their bands [record]
 * @validity refused without a speed
 * @source klopsteg-1943
 * @example virtualMassOf(exampleBundle).ok // false
 */
export function virtualMassOf(bundle: Bundle): Result<VirtualMass> {
  return refuse('missing', `No arrow of ${bundle.setup.name} was shot over a chronograph yet.`, 'chronograph');
}
