import type { AimPlan } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { Problem, Result } from '../../../../core/model/problem.ts';

/** Where tip and arrow agree, or why it cannot be said. */
export interface WithoutSight {
  readonly pointOn: Result<Band>;
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

export function withoutSight(bundle: Bundle, plan: AimPlan): WithoutSight {
  const missing = neededForPointsOfAim(bundle);
  return { pointOn: missing === null ? plan.pointOn : { ok: false, problem: missing } };
}
