import { limits } from '../model/limits.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { showQuantity, textQuantity } from '../units/index.ts';
import { pointStep } from './pointStep.ts';
import type { NextStep } from './reading.ts';
import { stepOf } from './step.ts';
import { wayBack } from './wayBack.ts';

/** Turns of the button: half for a large shift, then a quarter. */
const buttonSteps = { large: 0.5, usual: 0.25 } as const;

const COUNTED =
  'Turns are counted in, from fully out; which way firms a button depends on its maker, so feel it before shooting.';
const RULE =
  'Bare shafts outward of the fletched (left for a right-handed archer) read stiff: a softer button; inward read weak: a firmer one. The trade turns a half, then a quarter, then an eighth. Heavier points make the shaft act weaker, lighter ones stiffer.';

/**
 * The first remedy for a stiff or weak reading: the button, or what stands for it without one.
 *
 * @equation rest and button: softer for stiff, firmer for weak, a quarter turn, half when large; shelf: thinner or thicker side plate; hand: point 10–20 gr heavier or lighter
 * @param bundle - the set-up with its records [record]
 * @param lateral - the reading [choice]
 * @param large - whether the shift is large [choice]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after it [text]
 * @returns the step; null when the button cannot be turned that far [record]
 * @validity brace height and nocking point settled; the size of the effect is not foretold
 * @source common practice
 * @example sideStep(exampleBundle, 'weak', false, defaultPreferences.units, '').title // "Firm the button a quarter turn"
 */
export function sideStep(
  bundle: Bundle,
  lateral: 'stiff' | 'weak',
  large: boolean,
  units: UnitChoice,
  then: string,
): NextStep | null {
  const stiff = lateral === 'stiff';
  const effect = `The bare shafts should move ${wayBack(bundle, lateral)}, toward the fletched; how far is not known yet.`;
  if (bundle.bow.arrowPass === 'hand') return pointStep(bundle, lateral, units, then);
  if (bundle.bow.arrowPass === 'shelf')
    return stepOf('change', stiff ? 'Thin the side plate a little' : 'Build the side plate out a little', effect, {
      then,
      caution: 'Note how much, so that it can be put back.',
      mark: 'from memory',
      rule: `Without a button: stiff, thin the side plate; weak, build it out. ${RULE}`,
    });

  const now = bundle.setup.settings.buttonTurns;
  const fits = (turns: number) =>
    now === null || (stiff ? now - turns >= limits.buttonTurns.min : now + turns <= limits.buttonTurns.max);
  const turns = large && fits(buttonSteps.large) ? buttonSteps.large : buttonSteps.usual;
  if (!fits(turns)) return null;
  const next = now === null ? null : now + (stiff ? -turns : turns);
  const place =
    now === null || next === null
      ? 'Its turns are not on record: count them first, from fully out.'
      : `From ${showQuantity(now, 'turns', units).figure} to ${textQuantity(next, 'turns', units)} in.`;
  return stepOf(
    'change',
    `${stiff ? 'Soften' : 'Firm'} the button ${turns === buttonSteps.large ? 'half a' : 'a quarter'} turn`,
    `${place} ${effect}`,
    { then, patch: next === null ? null : { buttonTurns: next }, caution: COUNTED, rule: RULE },
  );
}
