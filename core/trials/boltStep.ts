import { heavierWeight } from '../bow/index.ts';
import { stopsOf } from '../findings/all.ts';
import type { Bundle } from '../model/bundle.ts';
import { limits } from '../model/limits.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { NextStep } from './reading.ts';
import { lowered, stepOf } from './step.ts';

/** What a whole turn of both limb bolts may do to the weight at most: from memory. */
const HEAVIER_BY_A_TURN = 1.05;

/**
 * Both limb bolts in or out, the remedy after the button on a bow that has them.
 *
 * @equation stiff: in, refused when the arrow would be too light for a twentieth more weight; weak: out
 * @param bundle - the set-up with its records [record]
 * @param lateral - the reading [choice]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after it [text]
 * @returns the step, or the stop that forbids it [record]
 * @validity take-down recurves; the mass per weight is checked when mass and weight are on record
 * @source common practice
 * @example boltStep(exampleBundle, 'weak', defaultPreferences.units, '').title // "Both limb bolts out by 1/2 to 1 turn"
 */
export function boltStep(bundle: Bundle, lateral: 'stiff' | 'weak', units: UnitChoice, then: string): NextStep {
  const stiff = lateral === 'stiff';
  const stop = stiff ? stopsOf(heavier(bundle), units)[0] : undefined;
  if (stop !== undefined)
    return stepOf(
      'stop',
      'Do not turn the limb bolts in',
      `A turn may add a twentieth to the weight (not checked against a source), and then: ${lowered(stop.title)}. ${stop.detail}`,
      {},
    );
  return stepOf(
    'change',
    `Both limb bolts ${stiff ? 'in' : 'out'} by 1/2 to 1 turn`,
    `${stiff ? 'More' : 'Less'} draw weight makes the shaft act ${stiff ? 'weaker' : 'stiffer'}. Weigh the bow, then measure brace height, tiller and nocking point again.`,
    {
      then,
      caution: stiff
        ? 'Only if the archer can hold it, within the maker\u2019s limits. Check the arrow\u2019s mass for the new weight.'
        : 'Never past the maker\u2019s least bolt engagement.',
    },
  );
}

/** As a whole turn of both bolts may leave it. */
function heavier(bundle: Bundle): Bundle {
  const { archer, bow, setup } = bundle;
  const weight = heavierWeight(bow, archer, setup.settings);
  if (!weight.ok) return bundle;
  const weightOnFingers = Math.min(limits.weightOnFingers.max, weight.value.value * HEAVIER_BY_A_TURN);
  const settings = { ...setup.settings, weightOnFingers, weightDraw: archer.drawLength };
  return { ...bundle, setup: { ...setup, settings } };
}
