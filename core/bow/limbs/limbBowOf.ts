import { arrowMass } from '../../arrow/index.ts';
import { ok, refuse, type Bundle, type Result } from '../../model/index.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';
import { forceDrawOf, type ForceDraw } from '../forceDraw.ts';
import { AMO_ADDS } from '../stroke.ts';
import { about } from './about.ts';
import { kindLimbs } from './kindLimbs.ts';
import type { LimbBow } from './limbBow.ts';
import { modelStringOf } from './modelString.ts';
import { stringLengthOf } from './stringLength.ts';

/** A set-up as the model of the stroke sees it. */
export interface BundleBow {
  readonly bow: LimbBow;
  readonly curve: ForceDraw;
  /** What was not measured, ready to read; the limbs' tip mass is not among them. */
  readonly assumed: readonly string[];
}

/** m_t is of a bow of this weight [N]; a limb of the same make gets thicker as the third root of its stiffness. */
const OF_WEIGHT = 178;
/** Of critical damping, as in the reference runs; and their hinge and fingers. */
const STRING_DAMPING = 0.06;
const HINGE_DAMPING = 0.1;
const FINGERS = 0.003;

/**
 * The bow of a set-up for the model of the stroke, with sentences for what nobody measured.
 *
 * @equation half string L/2 = y_h + ell cos θ_B, y_h a share of it by kind; m_t by kind × (F/178 N)^(1/3); c_s = 2 × .06 √(k m_t), c_h = .1 N m s, τ = 3 ms
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns the model's bow, the force-draw curve it rests on, and what was assumed [record]
 * @validity finger-shot bows; the refusal names what is missing
 * @source own derivation
 * @example limbBowOf(exampleBundle, defaultPreferences.units).value.bow.brace // 0.2159
 */
export function limbBowOf(bundle: Bundle, units: UnitChoice): Result<BundleBow> {
  const { bow, arrowSet, setup } = bundle;
  const kind = kindLimbs[bow.bowKind];
  if (kind === null)
    return refuse(
      'compound',
      'The stroke of a compound is not computed: its string runs over cams. Measure its speed with a chronograph.',
    );
  const found = forceDrawOf(bundle, units);
  if (!found.ok) return found;
  const arrow = arrowMass(arrowSet);
  if (!arrow.ok) return arrow;
  const length = stringLengthOf(bow, setup.settings);
  if (length === null) return refuse('missing', 'For the stroke, enter a bow length or a string length.', 'bowLength');

  const curve = found.value;
  const { brace } = curve;
  const weight = curve.weight.value;
  const half = length / 2;
  const hingeY = kind.hingeShare * half;
  const limb = Math.hypot(half - hingeY, brace - kind.hingeX);
  const string = modelStringOf(bow, setup.settings, weight, length, units);
  const tipMass = kind.tipMass * Math.cbrt(weight / OF_WEIGHT);
  const assumed = [
    ...(curve.from === 'readings'
      ? []
      : [`The force-draw curve was not read on a scale: it is the one that a ${bow.bowKind} of this weight lets expect.`]),
    ...(setup.settings.braceHeight === null
      ? [
          `The brace height is taken to be ${textQuantity(brace, 'length', units)}, ${bow.forceDrawBrace === null ? 'the middle of its range' : 'as it was when the bow was read on the scale'}.`,
        ]
      : []),
    ...string.assumed,
    `The limbs are taken to bend at one place, ${about(hingeY, 'length', units)} above the pivot, with ${about(limb, 'length', units)} of stiff limb beyond it.`,
    `The fingers are taken to let go in ${textQuantity(FINGERS, 'time', units)}, and string and limbs to lose what is usual.`,
  ];
  return ok({
    bow: {
      arrowMass: arrow.value.mass,
      force: (u) => curve.value(u + AMO_ADDS),
      brace,
      draw: curve.full - AMO_ADDS,
      hingeX: kind.hingeX,
      hingeY,
      limb,
      tipMass,
      stringStiffness: string.stiffness,
      stringMass: string.mass,
      stringDamping: 2 * STRING_DAMPING * Math.sqrt((string.stiffness / half) * tipMass),
      hingeDamping: HINGE_DAMPING,
      fingers: FINGERS,
    },
    curve,
    assumed,
  });
}
