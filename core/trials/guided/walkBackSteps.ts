import { limits } from '../../model/limits.ts';
import type { Bundle } from '../../model/bundle.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';
import type { NextStep } from '../reading.ts';
import { stepOf } from '../step.ts';
import { centreShotStep } from './centreShotStep.ts';

/** A quarter of a turn, the larger of the trade's two steps here. */
const TURN = 0.25;

/** What the trade's two ways make of a walk-back, and what comes before either. */
export interface WalkBackSteps {
  /** Sight and cant mimic a slant, so they are looked at first; null for a bend, which they cannot make. */
  readonly check: NextStep | null;
  readonly button: NextStep | null;
  readonly rest: NextStep | null;
}

/**
 * The steps that the trade's two ways take for a line that slants or bends.
 *
 * @equation slant outward: the button way softens the button by 1/8 to 1/4 turn, the rest way brings the centre shot in 0.5 mm; inward the opposite; bend outward: both bring the centre shot in, inward out
 * @param bundle - the set-up with its records [record]
 * @param pattern - what the line does [choice]
 * @param way - to which side it runs or bulges, seen from the riser [choice]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after it [text]
 * @returns the check that comes first, and a step of each way; null where the bow has nothing to turn for it, or both agree [record]
 * @validity disputed: the two ways lead to different changes, and neither is checked against a source
 * @source from memory
 * @example walkBackSteps(exampleBundle, 'slants', 'outward', defaultPreferences.units, '').button.title // "The button way: soften the button an eighth to a quarter turn"
 */
export function walkBackSteps(
  bundle: Bundle,
  pattern: 'slants' | 'bends',
  way: 'outward' | 'inward',
  units: UnitChoice,
  then: string,
): WalkBackSteps {
  const fitted = bundle.bow.arrowPass === 'rest and button';
  const move = way === 'outward' ? 'in' : 'out';
  const slant = pattern === 'slants';
  const centre = fitted
    ? centreShotStep(
        bundle,
        move,
        slant ? 'The rest way takes a slant for the rest.' : 'A bent line is taken for the centre shot.',
        units,
        then,
      )
    : null;
  return {
    check: slant ? sightAndCant : null,
    button: slant ? (fitted ? buttonStep(bundle, way, units, then) : null) : centre,
    rest:
      slant && centre !== null
        ? { ...centre, title: `The rest way: ${centre.title.charAt(0).toLowerCase()}${centre.title.slice(1)}` }
        : null,
  };
}

const sightAndCant = stepOf(
  'measure',
  'Check the sight and the cant first',
  'Any constant angle between the line of sight and the arrow slants the line: the sight above the string and over the arrow, the bow upright at every shot, the face\u2019s line plumb.',
  { then: 'If both are in order, go to the button or the rest.', mark: 'own derivation' },
);

function buttonStep(bundle: Bundle, way: 'outward' | 'inward', units: UnitChoice, then: string): NextStep | null {
  const soften = way === 'outward';
  const now = bundle.setup.settings.buttonTurns;
  const moved = now === null ? null : now + (soften ? -TURN : TURN);
  if (moved !== null && (moved < limits.buttonTurns.min || moved > limits.buttonTurns.max)) return null;
  const place =
    moved === null
      ? 'Its turns are not on record: count them first, from fully out.'
      : `From ${textQuantity(now ?? 0, 'turns', units)} to ${textQuantity(moved, 'turns', units)} in at most.`;
  return stepOf(
    'change',
    `The button way: ${soften ? 'soften' : 'firm'} the button an eighth to a quarter turn`,
    `The button way takes a slant for the button\u2019s spring. ${place} The line should stand more upright; how far is not known yet.`,
    {
      then,
      patch: moved === null ? null : { buttonTurns: moved },
      caution: 'Turns are counted in, from fully out; which way firms a button depends on its maker, so feel it before shooting.',
      mark: 'from memory',
    },
  );
}
