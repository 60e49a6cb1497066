import type { AimPlan, PlannedHold } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { refuse, type Problem, type Result } from '../../../../core/model/problem.ts';

/** What the archer sees over the tip of the arrow, or why it cannot be said. */
export interface WithoutSight {
  readonly pointOn: Result<Band>;
  readonly distance: number;
  readonly hold: Result<PlannedHold>;
  readonly widest: AimPlan['widestGap'];
}

export const shootsWithoutSight = ({ setup }: Pick<Bundle, 'setup'>): boolean =>
  setup.form.aiming !== null && setup.form.aiming !== 'sight';

/** Both move a point of aim far more than they move a flight, so nothing is assumed here. */
export function neededForPointsOfAim({ setup, arrowSet }: Bundle): Problem | null {
  if (setup.form.eyeHeight === null)
    return {
      code: 'missing',
      sentence: 'Points of aim wait for the eye height: from the arrow up to the eye, at anchor.',
      field: 'eyeHeight',
    };
  if (arrowSet.length === null)
    return { code: 'missing', sentence: 'Points of aim wait for the arrow’s length.', field: 'arrowLength' };
  return null;
}

export function withoutSight(bundle: Bundle, plan: AimPlan, distance: number): WithoutSight {
  const missing = neededForPointsOfAim(bundle);
  if (missing === null) return { pointOn: plan.pointOn, distance, hold: plan.pointOfAim, widest: plan.widestGap };
  const no = refuse(missing.code, missing.sentence, missing.field);
  return { pointOn: no, distance, hold: no, widest: no };
}
