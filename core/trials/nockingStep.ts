import { nockingPractice, squareText } from '../findings/nockingPoint.ts';
import { goTo, HAIR, rangeText, standing } from '../findings/parts.ts';
import { limits } from '../model/limits.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { showQuantity, textQuantity } from '../units/index.ts';
import type { NextStep } from './reading.ts';
import { stepOf } from './step.ts';

/** The trade moves a nocking point by 1/16 or 1/32 in [m]. */
const nockingSteps = { whole: 0.0016, half: 0.0008 } as const;

/** What shows the height, and how it answers a move of the nocking point. */
export interface Shower {
  /** In the middle of a sentence, for instance "the bare shafts". */
  readonly what: string;
  readonly reads: 'read' | 'reads';
  /** What it should do when the nocking point goes down, and when it goes up. */
  readonly lowered: string;
  readonly raised: string;
  readonly follows: string;
}

const bareShafts: Shower = {
  what: 'the bare shafts',
  reads: 'read',
  lowered: 'The bare shafts should come up toward the fletched',
  raised: 'The bare shafts should come down toward the fletched',
  follows: 'the bare shafts do not follow',
};

const RULE =
  'Bare shafts below the fletched mean a high nocking point, above them a low one or a shaft bouncing off the rest. The trade moves it 0.8 to 1.6 mm at a time. Height is settled before side, since an arrow that kicks off the rest also strikes to the side.';

/**
 * Moves the nocking point against what the bare shafts show.
 *
 * @equation low bare shafts: lower by 1.6 mm; high: raise by 1.6 mm; by 0.8 mm when the height is less than the fletched group's mean radius; already past common practice on that side: measure it again
 * @param bundle - the set-up with its records [record]
 * @param vertical - what the height reads [choice]
 * @param small - whether the height is small [choice]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after it [text]
 * @param shower - what shows the height; the bare shafts when left out [record]
 * @returns the step; its patch is null when the nocking point is not on record [record]
 * @validity brace height in range; the size of the effect is not foretold
 * @source common practice
 * @example nockingStep(exampleBundle, 'nocking point high', false, defaultPreferences.units, '').title // "Lower the nocking point 1.6 mm"
 */
export function nockingStep(
  bundle: Bundle,
  vertical: 'nocking point high' | 'nocking point low',
  small: boolean,
  units: UnitChoice,
  then: string,
  shower: Shower = bareShafts,
): NextStep {
  const high = vertical === 'nocking point high';
  const size = small ? nockingSteps.half : nockingSteps.whole;
  const now = bundle.setup.settings.nockingPoint;
  const next = now === null ? null : now + (high ? -size : size);
  const possible = next !== null && next >= limits.nockingPoint.min && next <= limits.nockingPoint.max;
  const text = (si: number) => textQuantity(si, 'setting', units);
  const place =
    now === null || next === null
      ? 'It is not on record: mark where it is before you move it.'
      : `From ${now > 0 && next > 0 ? showQuantity(now, 'setting', units).figure : squareText(now, units)} to ${squareText(next, units)}.`;
  const practice = nockingPractice(bundle);
  const beyond = (height: number | null): boolean =>
    practice !== null && height !== null && standing(height, practice.low, practice.high, HAIR) === (high ? 'low' : 'high');
  const usual =
    practice === null
      ? ''
      : practice.high === null
        ? `${text(practice.low)} or more`
        : rangeText(practice.low, practice.high, 'setting', units, false);
  const otherwise = high
    ? 'Check the nock fit too: it hangs on the string, and a light tap frees it.'
    : 'A shaft bouncing off the rest reads the same: a clearance test tells.';
  // Already past where anybody starts on that side: then the reading or the record is doubted before it is driven farther.
  if (now !== null && beyond(now))
    return stepOf(
      'measure',
      'Measure the nocking point again',
      `It is on record as ${squareText(now, units)}, already ${high ? 'below' : 'above'} the ${usual} at which common practice starts, and ${shower.what} ${shower.reads} ${high ? 'high' : 'low'} still. ${otherwise}`,
      { then, rule: RULE, go: goTo('Go to the nocking point', 'bow', 'settings.nockingPoint') },
    );
  const cautions = [
    otherwise,
    beyond(next)
      ? `This is ${high ? 'below' : 'above'} the ${usual} at which common practice starts: if ${shower.follows}, put it back.`
      : '',
  ].filter((sentence) => sentence !== '');
  return stepOf(
    'change',
    `${high ? 'Lower' : 'Raise'} the nocking point ${text(size)}`,
    `${place} ${high ? shower.lowered : shower.raised}; how far is not known yet. Height comes before side.`,
    {
      then,
      patch: possible ? { nockingPoint: next } : null,
      caution: cautions.join(' '),
      rule: RULE,
    },
  );
}
