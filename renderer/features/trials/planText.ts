import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Trial } from '../../../core/model/trial.ts';
import { showQuantity, textQuantity } from '../../../core/units/index.ts';
import { together } from '../../../core/model/sentence.ts';

/** "10 m and 18 m, 4 ends of 3 and 2". */
export function planText({ trial, plan }: Pick<Trial, 'trial' | 'plan'>, units: UnitChoice): string {
  const at = together(
    plan.distances.map((distance, i) =>
      i === plan.distances.length - 1
        ? textQuantity(distance, 'distance', units)
        : showQuantity(distance, 'distance', units).figure,
    ),
  );
  const of = plan.others > 0 ? `${plan.arrows} and ${plan.others}` : String(plan.arrows);
  const ends = plan.ends === 1 ? `${of} at each` : `${plan.ends} ends of ${of}`;
  if (trial === 'clearance') return 'powder on the fletching end';
  const steps = plan.steps.length > 0 ? `${plan.steps.length} ${trial === 'nocking point' ? 'nocking points' : 'heights'}, ` : '';
  return `${at}, ${steps}${ends}`;
}
