import { stopsOf } from '../findings/all.ts';
import type { Bundle } from '../model/bundle.ts';
import { limits } from '../model/limits.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { grain } from '../units/exact.ts';
import { rangeText } from '../findings/parts.ts';
import type { NextStep } from './reading.ts';
import { lowered, stepOf } from './step.ts';
import { wayBack } from './wayBack.ts';

/** The usual step of a point, in grains. */
const pointGr = { least: 10, most: 20 } as const;

/**
 * A heavier or lighter point, the remedy when nothing at the bow is left to turn.
 *
 * @equation stiff: 10 to 20 gr heavier; weak: 10 to 20 gr lighter, refused when the arrow would be too light for the bow
 * @param bundle - the set-up with its records [record]
 * @param lateral - the reading [choice]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after it [text]
 * @returns the step, or the stop that forbids it [record]
 * @validity the mass per weight is checked with the lightest point proposed, when mass and weight are on record
 * @source common practice
 * @example pointStep(exampleBundle, 'stiff', defaultPreferences.units, '').title // "Fit points 10 to 20 gr heavier"
 */
export function pointStep(bundle: Bundle, lateral: 'stiff' | 'weak', units: UnitChoice, then: string): NextStep {
  const stiff = lateral === 'stiff';
  const by = rangeText(pointGr.least * grain, pointGr.most * grain, 'mass', units, false);
  if (!stiff) {
    const stop = stopsOf(lighter(bundle), units)[0];
    if (stop !== undefined)
      return stepOf(
        'stop',
        'No lighter point on these arrows',
        `${by} less, and then: ${lowered(stop.title)}. ${stop.detail}`,
        {},
      );
  }
  return stepOf(
    'change',
    `Fit points ${by} ${stiff ? 'heavier' : 'lighter'}`,
    `The bare shafts should move ${wayBack(bundle, lateral)}, toward the fletched, by centimetres rather than millimetres at 18 m (not checked against a source).`,
    {
      then,
      caution: stiff
        ? 'A heavier point also drops more at distance.'
        : 'The arrow becomes lighter: weigh it, and keep above the bow maker\u2019s least.',
      rule: 'A heavier point makes the shaft act weaker, a lighter one stiffer; 10 to 20 gr is the usual step.',
    },
  );
}

/** Never below what the records take: a figure that is refused would stop nothing. */
function lighter(bundle: Bundle): Bundle {
  const { arrowSet } = bundle;
  const less = (key: 'pointMass' | 'weighed', least: number) => {
    const mass = arrowSet[key];
    return mass === null ? null : Math.max(least, mass - pointGr.most * grain);
  };
  return {
    ...bundle,
    arrowSet: {
      ...arrowSet,
      pointMass: less('pointMass', limits.pointMass.min),
      weighed: less('weighed', limits.arrowMass.min),
    },
  };
}
