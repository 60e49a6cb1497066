import { limits } from '../../model/limits.ts';
import type { Bundle } from '../../model/bundle.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';
import type { NextStep } from '../reading.ts';
import { stepOf } from '../step.ts';

/** Moved by this at a time [m]. */
const STEP = 0.0005;

/**
 * The centre shot a little in or out.
 *
 * @equation 0.5 mm, in or out from the riser
 * @param bundle - the set-up with its records [record]
 * @param way - in toward the riser or out from it [choice]
 * @param why - what speaks for it, as a sentence [text]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after it [text]
 * @returns the step; its patch is null when no centre shot is on record [record]
 * @validity bows with a rest that moves; the size of the effect is not foretold
 * @source common practice
 * @example centreShotStep(exampleBundle, 'in', 'The line bends.', defaultPreferences.units, '').patch // {"centreShot": 0.0015}
 */
export function centreShotStep(bundle: Bundle, way: 'in' | 'out', why: string, units: UnitChoice, then: string): NextStep {
  const now = bundle.setup.settings.centreShot;
  const moved = now === null ? null : now + (way === 'in' ? -STEP : STEP);
  const possible = moved !== null && moved >= limits.centreShot.min && moved <= limits.centreShot.max;
  const text = (si: number) => textQuantity(si, 'setting', units);
  const place =
    now === null || moved === null
      ? 'It is not on record: note where it stands before you move it.'
      : `From ${text(now)} to ${text(moved)}, read at the ${bundle.setup.settings.centreShotDatum}.`;
  return stepOf('change', `Bring the centre shot ${way} ${text(STEP)}`, `${why} ${place}`, {
    then,
    patch: possible ? { centreShot: moved } : null,
    caution: 'Look at the clearance after it: the arrow passes the bow in another place.',
  });
}
