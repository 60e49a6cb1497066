import { tillerOf, withTiller } from '../bow/index.ts';
import { HAIR, rangeText, standing } from '../findings/parts.ts';
import { tillerPractice } from '../findings/tiller.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { NextStep } from './reading.ts';
import { stepOf } from './step.ts';

/**
 * The second gate: a tiller outside common practice is set before anything finer.
 *
 * @equation outside the range of tillerPractice on a bow with limb bolts: to the usual figure, half a turn on each bolt in opposite ways
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after it [text]
 * @returns the step; null when it is in range, not measured, set by trial, or cannot be turned on this bow [record]
 * @validity take-down recurves; on any other bow the finding stands by itself, since only a bowyer can alter it
 * @source common practice
 * @example tillerStep(exampleBundle, defaultPreferences.units, '') // null
 */
export function tillerStep(bundle: Bundle, units: UnitChoice, then: string): NextStep | null {
  const practice = tillerPractice(bundle);
  const tiller = tillerOf(bundle.setup.settings);
  if (practice === null || tiller === null || bundle.bow.bowKind !== 'take-down recurve') return null;
  const { low, high, usual, who } = practice;
  if (standing(tiller, low, high, HAIR) === 'inside') return null;
  const text = (si: number) => textQuantity(si, 'setting', units, { signed: true });
  return stepOf(
    'change',
    `Bring the tiller to ${text(usual)}`,
    `It is ${text(tiller)}; common practice for ${who} is ${rangeText(low, high, 'setting', units, true)}. Half a turn on one limb bolt and half a turn the other way on the other, then measure: try and see which way it goes.`,
    {
      then: `Weigh the bow and measure brace height and nocking point again. ${then}`.trim(),
      patch: withTiller(usual),
      caution: 'Never past the maker\u2019s least bolt engagement.',
      rule: 'Tiller comes after brace height and before the nocking point. Equal and opposite turns leave the weight about the same. A balanced bow neither climbs nor dives when it is drawn slowly on a mark.',
    },
  );
}
