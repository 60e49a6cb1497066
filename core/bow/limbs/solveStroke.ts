import { readDense, type DenseSolution } from '../../flight/denseSolution.ts';
import { integrate } from '../../flight/dormandPrince.ts';
import { crossing } from '../../flight/root.ts';
import type { LimbBow } from './limbBow.ts';
import type { Motion } from './motion.ts';

/** The stroke solved: when the arrow leaves, and the state at any moment until then. */
export interface Solved {
  /** [s] */
  readonly exit: number;
  readonly at: (time: number) => Float64Array;
}

/** One stretch without a corner in the forces. */
interface Part {
  readonly from: number;
  readonly solution: DenseSolution;
}

/** The arrow begins to be pushed when the thrust passes this share of the weight; before that it stands against the fingers. */
const PUSHED = 0.01;
/** Of stretches, 1e-9 N is far below what a step's tolerance leaves. */
const NO_THRUST = 1e-9;

/**
 * Solve the stroke, in two parts since the fingers let go with a corner in their force, to the moment the thrust passes nought.
 *
 * @equation dy/dt of motionOf by the pair of Dormand and Prince; exit where N, once it has passed 1 % of the weight, comes to 0
 * @param bow - the bow as the model sees it; its curve is not looked at [record]
 * @param held - F₀, the force at full draw [N]
 * @param motion - its equations, from `motionOf` [record]
 * @param tolerance - the error of a step that is let pass [-]
 * @returns the time of the exit [s] and the state at any moment; null when the thrust never ends [record]
 * @validity as motionOf
 * @source hairer-1993
 * @example solveStroke(exampleLimbBow, 178, motionOf(exampleLimbBow, bracedOf(exampleLimbBow).value, hingeOf(exampleLimbBow, bracedOf(exampleLimbBow).value).value), 1e-7).exit > 0.016 // true
 */
export function solveStroke(bow: LimbBow, held: number, motion: Motion, tolerance: number): Solved | null {
  const moving = bow.arrowMass + bow.stringMass + 2 * bow.tipMass;
  const longest = bow.fingers + 6 * (bow.draw - bow.brace) * Math.sqrt(moving / motion.work);
  const settings = { absoluteTolerance: tolerance, relativeTolerance: tolerance, firstStep: longest / 2000 };
  let begun = false;
  let over = false;
  const watch = (from: number) => (time: number, state: Float64Array) => {
    const thrust = motion.thrust(from + time, state);
    begun ||= thrust > PUSHED * held;
    over = begun && thrust <= 0;
    return over;
  };
  const first: Part | null =
    bow.fingers > 0
      ? {
          from: 0,
          solution: integrate(motion.system(true), motion.start, { ...settings, lastTime: bow.fingers, enough: watch(0) }),
        }
      : null;
  let last = first;
  if (!over) {
    const start = first === null ? motion.start : stateIn(first.solution, first.solution.steps - 1, 1);
    const ending = { ...settings, lastTime: longest, enough: watch(bow.fingers) };
    last = { from: bow.fingers, solution: integrate(motion.system(false), start, ending) };
  }
  const exit = over && last !== null ? exitIn(last, motion) : null;
  if (exit === null || last === null) return null;
  const ends = last;
  return { exit, at: (time) => stateAt(first !== null && time < ends.from ? first : ends, time) };
}

const timeOf = ({ times }: DenseSolution, step: number): number => times[step] ?? Number.NaN;

function stateIn(solution: DenseSolution, step: number, share: number): Float64Array {
  const state = new Float64Array(solution.size);
  for (let component = 0; component < solution.size; component++) state[component] = readDense(solution, step, component, share);
  return state;
}

/** The thrust passes nought within the last step that was taken. */
function exitIn({ from, solution }: Part, motion: Motion): number | null {
  const step = solution.steps - 1;
  const begins = from + timeOf(solution, step);
  const width = from + timeOf(solution, step + 1) - begins;
  const thrust = (share: number) => motion.thrust(begins + share * width, stateIn(solution, step, share));
  return thrust(0) > 0 && thrust(1) <= 0 ? begins + crossing(thrust, 0, 1, NO_THRUST) * width : null;
}

function stateAt({ from, solution }: Part, time: number): Float64Array {
  let [low, high] = [0, solution.steps - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (timeOf(solution, middle) <= time - from) low = middle;
    else high = middle - 1;
  }
  const begins = timeOf(solution, low);
  const share = (time - from - begins) / (timeOf(solution, low + 1) - begins);
  return stateIn(solution, low, Math.min(1, Math.max(0, share)));
}
