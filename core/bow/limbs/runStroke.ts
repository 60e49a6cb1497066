import { readDense, type DenseSolution } from '../../flight/denseSolution.ts';
import { integrate } from '../../flight/dormandPrince.ts';
import { crossing } from '../../flight/root.ts';
import { ok, refuse, type Result } from '../../model/problem.ts';
import { bracedOf, type Braced } from './braced.ts';
import { hingeOf, type Hinge } from './hinge.ts';
import type { LimbBow } from './limbBow.ts';
import { motionOf, type Energies, type Motion } from './motion.ts';

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

export interface StrokeRun {
  /** Even in time, from the loose to the moment the arrow leaves. */
  readonly samples: readonly StrokeSample[];
  readonly exit: {
    readonly time: number;
    readonly u: number;
    readonly speed: number;
    readonly tension: number;
    /** Of the arrow's energy to the work [-]. */
    readonly efficiency: number;
    /** The one mass K that would give this speed: m_a + K = 2W/v² [kg]. */
    readonly virtualMass: number;
  };
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
/** The arrow begins to be pushed when the thrust passes this share of the weight; before that it stands against the fingers. */
const PUSHED = 0.01;

interface Part {
  readonly from: number;
  readonly solution: DenseSolution;
}

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
  const motion = motionOf(bow, braced, hinge);
  if (!(motion.work > 0)) return refuse('no energy', 'A bow that stores energy was expected: this curve gives none.');

  const parts = partsOf(bow, hinge.atDraw.force, motion, tolerance);
  const time = parts === null ? null : exitOf(parts, motion);
  if (parts === null || time === null)
    return refuse('no exit', 'In this model the string never lets go of this arrow. Look at masses and string again.');
  const samples = Array.from({ length: SAMPLES }, (_, i) => sampleAt(parts, motion, (time * i) / (SAMPLES - 1)));
  const { u, speed, tension, arrowEnergy } = samples[SAMPLES - 1]!;
  if (!(speed > 0 && Number.isFinite(tension))) return refuse('no exit', 'In this model the arrow does not leave this bow.');
  if (u > bow.brace + EARLY * (bow.draw - bow.brace))
    return refuse(
      'string goes slack',
      'In this model the string goes slack while the arrow is still on it: the arrow is too light for so soft a string.',
    );
  return ok({
    samples,
    exit: {
      time,
      u,
      speed,
      tension,
      efficiency: arrowEnergy / motion.work,
      virtualMass: (2 * motion.work) / (speed * speed) - bow.arrowMass,
    },
    work: motion.work,
    braceTension: braced.tension,
    staticError: hinge.staticError,
  });
}

/** The fingers let go with a corner in the force, so that the integration ends there and begins again. */
function partsOf(bow: LimbBow, held: number, motion: Motion, tolerance: number): Part[] | null {
  const stroke = bow.draw - bow.brace;
  const pushed = PUSHED * held;
  const moving = bow.arrowMass + bow.stringMass + 2 * bow.tipMass;
  const longest = bow.fingers + 6 * stroke * Math.sqrt(moving / motion.work);
  const settings = { absoluteTolerance: tolerance, relativeTolerance: tolerance, firstStep: longest / 2000 };
  let begun = false;
  let over = false;
  const watch = (from: number) => (time: number, state: Float64Array) => {
    const thrust = motion.thrust(from + time, state);
    begun ||= thrust > pushed;
    over = begun && thrust <= 0;
    return over;
  };
  const parts: Part[] = [];
  let start = motion.start;
  if (bow.fingers > 0) {
    const solution = integrate(motion.system(true), start, { ...settings, lastTime: bow.fingers, enough: watch(0) });
    parts.push({ from: 0, solution });
    start = stateIn(solution, solution.steps - 1, 1);
  }
  if (!over) {
    const solution = integrate(motion.system(false), start, { ...settings, lastTime: longest, enough: watch(bow.fingers) });
    parts.push({ from: bow.fingers, solution });
  }
  return over ? parts : null;
}

function stateIn(solution: DenseSolution, step: number, share: number): Float64Array {
  const state = new Float64Array(solution.size);
  for (let component = 0; component < solution.size; component++) state[component] = readDense(solution, step, component, share);
  return state;
}

/** The thrust passes nought within the last step that was taken. */
function exitOf(parts: readonly Part[], motion: Motion): number | null {
  const { from, solution } = parts[parts.length - 1]!;
  const step = solution.steps - 1;
  const [begins, ends] = [from + solution.times[step]!, from + solution.times[step + 1]!];
  const thrust = (share: number) => motion.thrust(begins + share * (ends - begins), stateIn(solution, step, share));
  if (!(thrust(0) > 0 && thrust(1) <= 0)) return null;
  return begins + crossing(thrust, 0, 1, 1e-9) * (ends - begins);
}

function sampleAt(parts: readonly Part[], motion: Motion, t: number): StrokeSample {
  const { from, solution } = parts.length > 1 && t >= parts[1]!.from ? parts[1]! : parts[0]!;
  const { times } = solution;
  let [low, high] = [0, solution.steps - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (times[middle]! <= t - from) low = middle;
    else high = middle - 1;
  }
  const share = (t - from - times[low]!) / (times[low + 1]! - times[low]!);
  const y = stateIn(solution, low, Math.min(1, Math.max(0, share)));
  return { t, u: y[0]!, speed: 0 - y[2]!, thrust: motion.thrust(t, y), tension: motion.tension(y), ...motion.energies(y) };
}
