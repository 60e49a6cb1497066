import { ok, refuse, type Result } from '../../model/problem.ts';
import { bracedOf, type Braced } from './braced.ts';
import { hingeOf, type Hinge } from './hinge.ts';
import type { LimbBow } from './limbBow.ts';
import { motionOf, placeOf, type Energies, type Motion } from './motion.ts';
import { solveStroke, type Solved } from './solveStroke.ts';

/** One moment of the stroke. */
export interface StrokeSample extends Energies {
  /** From the loose [s]. */
  readonly t: number;
  /** Nock from the pivot [m]. */
  readonly u: number;
  /** Of the arrow, towards the target [m/s]. */
  readonly speed: number;
  /** What the string pushes the arrow with [N]. */
  readonly thrust: number;
  /** Of the string [N]. */
  readonly tension: number;
}

/** How the arrow leaves. */
interface Exit {
  readonly time: number;
  readonly u: number;
  readonly speed: number;
  readonly tension: number;
  /** Of the arrow's energy to the work [-]. */
  readonly efficiency: number;
  /** The one mass K that would give this speed: m_a + K = 2W/v² [kg]. */
  readonly virtualMass: number;
}

export interface StrokeRun {
  /** Even in time, from the loose to the moment the arrow leaves. */
  readonly samples: readonly StrokeSample[];
  readonly exit: Exit;
  /** W, stored at full draw [J]. */
  readonly work: number;
  readonly braceTension: number;
  /** How nearly the model's own force-draw curve is the given one, as a share of the force at full draw [-]. */
  readonly staticError: number;
}

const SAMPLES = 121;
/** In metres, radians, m/s and shares of the work alike: it comes to about 1e-7 of the speed. */
const TOLERANCE = 1e-7;
/** A string that lets go farther than this before the brace height, as a share of the stroke, has gone slack. */
const EARLY = 0.05;
/** The energies add up to within this share of the work, or the stroke was not followed well enough; with coarser steps, that of so many tolerances. */
const LEDGER = 0.001;
const LEDGER_TOLERANCES = 1e4;

/**
 * The stroke: from the loose, with the fingers fading, to the moment the string no longer pushes the arrow.
 *
 * @equation Lagrange's equations of arrow, string and limbs (motionOf) from rest at full draw; exit at N = −m_a u″ = 0
 * @param bow - the bow as the model sees it [record]
 * @param tolerance - the error of a step that is let pass, 1e-7 unless said otherwise [-]
 * @returns samples even in time, the exit, W [J], the tension at brace [N] and how nearly the static curve comes back [record]
 * @validity finger-shot bows with two like limbs; good for speed, virtual mass and time, while tensions late in the stroke come out too high, since a rigid arm is too stiff; refused with a sentence where there is no such bow
 * @source own derivation
 * @example Math.abs(runStroke(exampleLimbBow).value.exit.speed - 59.245) < 0.02 // true
 */
export function runStroke(bow: LimbBow, tolerance: number = TOLERANCE): Result<StrokeRun> {
  const braced = bracedOf(bow);
  if (!braced.ok) return braced;
  const hinge = hingeOf(bow, braced.value);
  return hinge.ok ? looseOf(bow, braced.value, hinge.value, tolerance) : hinge;
}

/**
 * The stroke of a bow whose hinge and string are known already.
 *
 * @equation as runStroke
 * @param bow - the bow as the model sees it; its curve is not looked at [record]
 * @param braced - the string on it, and the arm at rest [record]
 * @param hinge - its hinges and how it is held at full draw [record]
 * @param tolerance - the error of a step that is let pass, 1e-7 unless said otherwise [-]
 * @returns as runStroke [record]
 * @validity as runStroke
 * @source own derivation
 * @example looseOf(exampleLimbBow, bracedOf(exampleLimbBow).value, hingeOf(exampleLimbBow, bracedOf(exampleLimbBow).value).value).value.exit.speed > 59 // true
 */
export function looseOf(bow: LimbBow, braced: Braced, hinge: Hinge, tolerance: number = TOLERANCE): Result<StrokeRun> {
  const left = exitOf(bow, braced, hinge, tolerance);
  if (!left.ok) return left;
  const { exit, work, motion, solved } = left.value;
  const samples = Array.from({ length: SAMPLES }, (_, i) => {
    const t = (exit.time * i) / (SAMPLES - 1);
    return sampleAt(motion, t, solved.at(t));
  });
  if (!samples.every((sample) => addsUp(sample, work, tolerance))) return refuse(...NOT_FOLLOWED);
  return ok({ samples, exit, work, braceTension: braced.tension, staticError: hinge.staticError });
}

/** A stroke run to its end and not yet written out: what asks for many strokes asks for no more of each. */
interface Left {
  readonly exit: Exit;
  readonly work: number;
  readonly motion: Motion;
  readonly solved: Solved;
}

/**
 * How the arrow leaves a bow whose hinge and string are known already.
 *
 * @equation as runStroke
 * @param bow - the bow as the model sees it; its curve is not looked at [record]
 * @param braced - the string on it, and the arm at rest [record]
 * @param hinge - its hinges and how it is held at full draw [record]
 * @param tolerance - the error of a step that is let pass, 1e-7 unless said otherwise [-]
 * @returns the exit, W [J], and what the moments between can be read from [record]
 * @validity as runStroke
 * @source own derivation
 * @example exitOf(exampleLimbBow, bracedOf(exampleLimbBow).value, hingeOf(exampleLimbBow, bracedOf(exampleLimbBow).value).value).value.exit.speed > 59 // true
 */
export function exitOf(bow: LimbBow, braced: Braced, hinge: Hinge, tolerance: number = TOLERANCE): Result<Left> {
  const motion = motionOf(bow, braced, hinge);
  const { work } = motion;
  if (!(work > 0)) return refuse('no energy', 'A bow that stores energy was expected: this curve gives none.');

  const solved = solveStroke(bow, hinge.atDraw.force, motion, tolerance);
  if (solved === null)
    return refuse('no exit', 'In this model the string never lets go of this arrow. Look at masses and string again.');
  const time = solved.exit;
  const last = sampleAt(motion, time, solved.at(time));
  const { u, speed, tension, arrowEnergy } = last;
  if (!(speed > 0 && Number.isFinite(tension))) return refuse('no exit', 'In this model the arrow does not leave this bow.');
  if (u > bow.brace + EARLY * (bow.draw - bow.brace))
    return refuse(
      'string goes slack',
      'In this model the string goes slack while the arrow is still on it: the arrow is too light for so soft a string.',
    );
  if (!addsUp(last, work, tolerance)) return refuse(...NOT_FOLLOWED);
  const virtualMass = (2 * work) / (speed * speed) - bow.arrowMass;
  return ok({ exit: { time, u, speed, tension, efficiency: arrowEnergy / work, virtualMass }, work, motion, solved });
}

const NOT_FOLLOWED = [
  'not followed',
  'The model could not follow this stroke well enough: its energies do not add up. Look at draw, brace height and masses again.',
] as const;

function addsUp(energies: Energies, work: number, tolerance: number): boolean {
  const { arrowEnergy, limbEnergy, stringEnergy, stored, lost } = energies;
  const open = Math.abs(arrowEnergy + limbEnergy + stringEnergy + stored + lost - work);
  return open <= Math.max(LEDGER, LEDGER_TOLERANCES * tolerance) * work;
}

function sampleAt(motion: Motion, t: number, state: Float64Array): StrokeSample {
  const { u, along } = placeOf(state);
  // Not a minus before it: at rest that would be a minus nought.
  return { t, u, speed: 0 - along, thrust: motion.thrust(t, state), tension: motion.tension(state), ...motion.energies(state) };
}
