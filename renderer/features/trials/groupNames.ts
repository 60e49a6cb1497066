import type { Id } from '../../../core/model/common.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Trial } from '../../../core/model/trial.ts';
import { textQuantity } from '../../../core/units/index.ts';

/** The groups that were shot to try a setting, each by that setting and its trial: "8 1/4 in, brace-height trial". */
export function triedNames(trials: readonly Trial[], units: UnitChoice): ReadonlyMap<Id, string> {
  const names = new Map<Id, string>();
  for (const { trial, groups } of trials) {
    if (trial !== 'brace height' && trial !== 'nocking point') continue;
    for (const { step, first, second } of groups) {
      if (step === null) continue;
      const setting =
        trial === 'brace height' ? textQuantity(step, 'length', units) : `nocking point ${textQuantity(step, 'setting', units)}`;
      for (const id of [first, second]) if (id !== null) names.set(id, `${setting}, ${trial.replace(' ', '-')} trial`);
    }
  }
  return names;
}
