import { arrowMass } from '../../arrow/index.ts';
import type { Bundle } from '../../model/index.ts';
import { grain } from '../../units/exact.ts';

interface ThenNow {
  readonly then: number;
  readonly now: number;
}

/** What of a measured speed's arrow and brace height is otherwise now; each null where it is not, or was not noted. */
export interface SinceTimed {
  /** Whole arrow [kg]. */
  readonly mass: ThenNow | null;
  /** [m] */
  readonly brace: ThenNow | null;
}

/** What a grain scale, and a square on the string, read again: from memory [kg], [m]. */
const SAME = { mass: grain, brace: 0.0015 } as const;
/** A figure typed in another unit may be a rounding away from it, as a share. */
const ROUNDING = 1 + 1e-6;

/**
 * What of arrow and brace height is otherwise than when the set-up's speed was measured.
 *
 * @equation masses more than 1 gr apart, brace heights more than 1.5 mm apart
 * @param bundle - the set-up with its records [record]
 * @returns the mass then and now [kg] and the brace height then and now [m]; null where nothing is otherwise [record]
 * @validity a figure that was not noted then, or is not known now, is not known to be otherwise; null without a measured speed
 * @source from memory
 * @example sinceTimed(exampleBundle) // null
 */
export function sinceTimed({ arrowSet, setup }: Bundle): SinceTimed | null {
  const { arrowSpeed, speedMass, speedBrace, braceHeight } = setup.settings;
  if (arrowSpeed === null) return null;
  const arrow = arrowMass(arrowSet);
  const apart = (then: number | null, now: number | null, same: number): ThenNow | null =>
    then !== null && now !== null && Math.abs(then - now) > same * ROUNDING ? { then, now } : null;
  const mass = apart(speedMass, arrow.ok ? arrow.value.mass : null, SAME.mass);
  const brace = apart(speedBrace, braceHeight, SAME.brace);
  return mass === null && brace === null ? null : { mass, brace };
}
