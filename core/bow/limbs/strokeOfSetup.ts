import { ok, type Bundle, type Result } from '../../model/index.ts';
import { defaultPreferences, type UnitChoice } from '../../model/preferences.ts';
import { speedBasis } from '../chronograph/speedBasis.ts';
import { kindFigures } from '../kinds.ts';
import { launchSpeed } from '../speed.ts';
import { AMO_ADDS } from '../stroke.ts';
import { looseFromCurve } from '../timeOnString.ts';
import { about } from './about.ts';
import { bracedOf, type Braced } from './braced.ts';
import { hingeOf, type Hinge } from './hinge.ts';
import { limbBowOf, type BundleBow } from './limbBowOf.ts';
import { looseOf, type StrokeRun } from './runStroke.ts';
import { tellsBrace } from './tellsBrace.ts';
import { tipMassFor } from './tipMassFor.ts';

/** The stroke of a set-up, beside what one number says of it. */
export interface SetupStroke extends StrokeRun {
  /** What was not measured, ready to read. */
  readonly assumed: readonly string[];
  /** By the one-number virtual mass: time to brace height [s], speed [m/s], K [kg]. */
  readonly simple: { readonly time: number; readonly speed: number; readonly virtualMass: number };
}

interface Simple {
  /** K [kg]. */
  readonly virtualMass: number;
  /** η E over the stored energy [-]. */
  readonly share: number;
  readonly from: 'chronograph' | 'kind';
}

interface FittedBow extends BundleBow {
  readonly simple: Simple;
  /** The same whatever the limbs weigh: worked out once for all strokes of a set-up. */
  readonly braced: Braced;
  readonly hinge: Hinge;
}

/** Speeds off a chronograph where they make sense, else the kind's figures. */
function simpleOf(bundle: Bundle, { curve }: BundleBow): Simple {
  const read = speedBasis(bundle);
  if (read.ok && read.value.doubt === null && read.value.virtualMass !== null && read.value.returned !== null) {
    const { virtualMass, returned, then } = read.value;
    return {
      virtualMass: virtualMass.value,
      // Of what was stored when the speeds were read: brace height or draw may have been altered since.
      share: Math.min(1, returned.value / (then?.energy ?? curve.energy).value),
      from: 'chronograph',
    };
  }
  const kind = kindFigures[bundle.bow.bowKind];
  return { virtualMass: kind?.virtualMass.value ?? 0, share: kind?.hysteresis.value ?? 1, from: 'kind' };
}

/**
 * The limbs' mass: where arrows were chronographed, the one with which the model leaves this arrow at the speed that they say.
 *
 * @equation as tipMassFor, v from (m + K) v²/2 = η E
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns the model's bow with its limb mass, what was assumed, K with η E/E, and its statics [record]
 * @validity as limbBowOf; speeds that fit no limb mass leave the kind's, and that is said
 * @source own derivation
 * @example fittedBowOf(exampleBundle, defaultPreferences.units).value.simple.from // "kind"
 */
export function fittedBowOf(bundle: Bundle, units: UnitChoice): Result<FittedBow> {
  const found = limbBowOf(bundle, units);
  if (!found.ok) return found;
  const { bow, curve, assumed } = found.value;
  const braced = bracedOf(bow);
  if (!braced.ok) return braced;
  const hinge = hingeOf(bow, braced.value);
  if (!hinge.ok) return hinge;
  const simple = simpleOf(bundle, found.value);
  const { virtualMass, share } = simple;
  const fitted =
    simple.from === 'chronograph'
      ? tipMassFor(
          bow,
          braced.value,
          hinge.value,
          launchSpeed({ mass: bow.arrowMass, energy: curve.energy.value, virtualMass, hysteresis: share }),
        )
      : null;
  const tipMass = fitted?.ok === true ? fitted.value : bow.tipMass;
  const mass = about(tipMass, 'mass', { ...units, mass: 'g' });
  const said =
    fitted === null
      ? `Each limb is taken to weigh ${mass} at its tip, as is usual for a ${bundle.bow.bowKind} of this weight: no speed was measured that would tell it.`
      : fitted.ok
        ? `Each limb is given ${mass} at its tip, with which the model gives back the speed that the chronographed arrows say.`
        : `The chronographed speeds fit no limbs of this model: each limb is taken to weigh ${mass} at its tip, as is usual for a ${bundle.bow.bowKind}. Look at speeds, force-draw readings and string again.`;
  return ok({ bow: { ...bow, tipMass }, curve, assumed: [...assumed, said], simple, braced: braced.value, hinge: hinge.value });
}

const FLAT_START =
  'What the brace height does to this stroke is not told: it rests on how steeply the draw begins. Read the bow on the scale from just past the brace height on.';
const TOO_TIGHT =
  'The tension late in the stroke comes out too high: a real limb bends along its whole length, and this one is stiff beyond one hinge.';

/**
 * The stroke of a set-up with limb inertia and an elastic string, beside the one-number virtual mass.
 *
 * @equation as runStroke; limbs and string by limbBowOf, the limb mass fitted to chronographed arrows where they make sense; simple by looseFromCurve with K and η
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns the run, what was assumed, and time [s], speed [m/s] and K [kg] of the simple model [record]
 * @validity finger-shot bows; a compound is refused, and so is whatever is missing or cannot be, with a sentence. The simple time ends at brace height, the stroke's past it
 * @source own derivation
 * @example strokeOfSetup(exampleBundle).value.exit.time > strokeOfSetup(exampleBundle).value.simple.time // true
 */
export function strokeOfSetup(bundle: Bundle, units: UnitChoice = defaultPreferences.units): Result<SetupStroke> {
  const found = fittedBowOf(bundle, units);
  if (!found.ok) return found;
  const { bow, curve, assumed, simple, braced, hinge } = found.value;
  const run = looseOf(bow, braced, hinge);
  if (!run.ok) return run;
  const { brace, stroke } = curve;
  const { virtualMass, share } = simple;
  const loose = looseFromCurve((draw) => curve.value(brace + AMO_ADDS + draw), stroke, bow.arrowMass + virtualMass, share);
  const flat = tellsBrace(run.value.braceTension, run.value.samples[0]?.tension ?? Infinity) ? [] : [FLAT_START];
  return ok({ ...run.value, assumed: [...assumed, ...flat, TOO_TIGHT], simple: { ...loose, virtualMass } });
}
