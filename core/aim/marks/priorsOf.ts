import type { Band } from '../../model/band.ts';
import type { Bundle } from '../../model/bundle.ts';
import { ok, type Result } from '../../model/problem.ts';
import { flightBasis } from '../flightBasis.ts';
import type { MarkPriors } from './types.ts';

/** How far a measured eye height or sight radius may be out, and one that nobody measured, 95 % [m]: from memory. */
const measuredBy = 0.01;
const assumedEyeBy = 0.035;
const assumedRadiusBy = 0.15;

/** How far ahead of the nock the eye stands at full draw, how far ahead of the bow a sight, and a draw that nobody measured [m]: from memory. */
const eyeAheadOfNock = 0.1;
const sightAheadOfBow = 0.15;
const usualDraw = 0.71;

/** One standard deviation up and down of those who have not shot a group yet [rad]: from memory, 3 and 6 mm for each metre. */
const usualSpreadPerMetre = { settled: 0.003, learner: 0.006 } as const;

const round = (value: number, by: number): Band => ({ value, low: value - by, high: value + by });

/** What only the archer can tell; null where nobody has. */
export interface SightTold {
  /** From the eye to the pin along the arrow at full draw [m]. */
  readonly sightRadius: number | null;
  /** Standard deviation of the archer's arrows up and down, from groups [rad]. */
  readonly spreadPerMetre: number | null;
}

/**
 * What bow, arrow and archer let be held of the figures behind sight marks, before any was shot in.
 *
 * @equation v and k of flightBasis; e ± 10 mm measured, ± 35 mm by the anchor; r ± 10 mm measured, else draw − 0.1 m + 0.15 m ± 0.15 m; spread as told, else 3 mrad settled and 6 mrad a learner
 * @param bundle - the set-up with its records [record]
 * @param told - sight radius [m] and spread [rad], where they are known [record]
 * @returns bands of 95 %, or a refusal that names the figure that is missing [record]
 * @validity eye, sight and spread that nobody measured are from memory, and wide
 * @source from memory; own derivation
 * @example priorsOf(exampleBundle, { sightRadius: 0.85, spreadPerMetre: 0.002 }).value.sightRadius.low // 0.84
 */
export function priorsOf(bundle: Bundle, told: SightTold): Result<MarkPriors> {
  const basis = flightBasis(bundle);
  if (!basis.ok) return basis;
  const { speed, drag, eyeHeight } = basis.value;
  const { drawLength, experience } = bundle.archer;
  return ok({
    speed: { value: speed.value, low: speed.low, high: speed.high },
    eyeHeight: round(eyeHeight.value, eyeHeight.measured ? measuredBy : assumedEyeBy),
    k: drag,
    sightRadius:
      told.sightRadius === null
        ? round((drawLength ?? usualDraw) - eyeAheadOfNock + sightAheadOfBow, assumedRadiusBy)
        : round(told.sightRadius, measuredBy),
    spreadPerMetre: told.spreadPerMetre ?? usualSpreadPerMetre[experience ?? 'learner'],
  });
}
