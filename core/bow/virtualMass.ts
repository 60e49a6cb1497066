import { ok, refuse, type Bundle, type Result } from '../model/index.ts';
import type { Band } from '../model/band.ts';
import { defaultPreferences, type UnitChoice } from '../model/preferences.ts';
import { speedBasis, type SpeedBasis } from './chronograph/speedBasis.ts';
import { cannotSeparate, speedNotes, whyNot } from './chronograph/words.ts';

/** The mass that the bow's own moving parts seem to add to the arrow, out of chronographed arrows. */
export interface VirtualMass {
  /** K [kg]; null where the speeds do not fall with the mass by more than they may err: then there is none, and it is not credible. */
  readonly virtualMass: Band | null;
  /** η E, the energy that arrow and virtual mass leave with, at the brace height and draw that the speeds were read at [J]; null likewise. */
  readonly returned: Band | null;
  /** The same draw's stored energy, where it is known [J]. */
  readonly stored: Band | null;
  /** η, out of readings of letting down; null without them: speeds alone cannot tell it [-]. */
  readonly share: Band | null;
  /** How many speeds it rests on. */
  readonly readings: number;
  /** Whether the arrows differ enough in mass to tell K from the energy, or η had to be taken from elsewhere. */
  readonly from: 'several masses' | 'one mass';
  /** Whether it may be used. */
  readonly credible: boolean;
  /** Why it may not, ready to read. */
  readonly why: string | null;
  /** Whether K is the same for every arrow, but for a part that grows in line with the arrow: that cannot be told from a loss. */
  readonly constant: 'yes' | 'no' | 'cannot tell';
  /** What speeds alone cannot tell apart, ready to read. */
  readonly cannotSeparate: string;
  /** What it rests on beyond the speeds, ready to read. */
  readonly notes: readonly string[];
}

/** A virtual mass that differs by less than this between the lightest and the heaviest arrow is one figure [kg]: from memory. */
const ONE_FIGURE = 0.001;

/**
 * The bow's virtual mass out of arrows over the chronograph, with what it rests on and whether it may be believed.
 *
 * @equation (m + K) v²/2 = W: K and W = η E from several masses by speedLine; from one mass K = 2 η E/v² − m with η out of letting down, else the kind's
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns K [kg], W [J] and η [-] with their bands, null where level speeds leave none, and the sentences [record]
 * @validity credible when K lies between 2 and 30 g, W is not above the stored energy and the speeds scatter by 3 % at most; what is not credible is told and not used. Refused without a speed, and for one mass without the stored energy or η
 * @source klopsteg-1943
 * @example virtualMassOf({ ...exampleBundle, setup: { ...exampleBundle.setup, chronograph: [{ mass: 0.0425, speed: 64.6 }, { mass: 0.0567, speed: 62.2 }] } }).value.credible // false
 */
export function virtualMassOf(bundle: Bundle, units: UnitChoice = defaultPreferences.units): Result<VirtualMass> {
  const basis = speedBasis(bundle);
  if (!basis.ok) return basis;
  const { virtualMass, returned, then, line, read, share, shareFrom, doubt } = basis.value;
  if (virtualMass === null || returned === null)
    return refuse(
      'one mass',
      'One arrow mass gives a virtual mass only with the stored energy. Enter force-draw readings, or shoot arrows of two masses or more.',
      'chronograph',
    );
  const level = line !== null && !line.bounded;
  return ok({
    virtualMass: level ? null : virtualMass,
    returned: level ? null : returned,
    stored: then?.energy ?? null,
    share: shareFrom === 'let-down' ? share : null,
    readings: read.rows.length,
    from: line === null ? 'one mass' : 'several masses',
    credible: doubt === null,
    why: whyNot(basis.value, units),
    constant: constantOf(basis.value),
    cannotSeparate: cannotSeparate(basis.value, units),
    notes: speedNotes(basis.value, bundle, units),
  });
}

function constantOf({ line }: SpeedBasis): VirtualMass['constant'] {
  if (line === null || line.bend === null) return 'cannot tell';
  if (line.bend.sure) return 'no';
  return line.bend.most <= ONE_FIGURE ? 'yes' : 'cannot tell';
}
