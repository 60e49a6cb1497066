import type { DenseSolution } from './denseSolution.ts';
import { dormandPrinceStep, type OdeSystem } from './dormandPrinceStep.ts';

export interface OdeSettings {
  readonly absoluteTolerance: number;
  readonly relativeTolerance: number;
  /** The first step tried; a wrong guess costs a few steps, never accuracy. */
  readonly firstStep: number;
  /** Where to end at the latest. */
  readonly lastTime: number;
  /** Asked after each step taken: true ends the integration there. */
  readonly enough?: (time: number, state: Float64Array) => boolean;
}

// Step control with a memory of the last error (Hairer, Nørsett & Wanner, section II.4, and Gustafsson's exponent for this pair).
const memory = 0.04;
const safety = 0.9;
const shortest = 0.2;
const longest = 10;
const mostTries = 100_000;

/**
 * Solve a system of ordinary differential equations with adaptive steps, readable between the steps.
 *
 * @equation dy/dt = f(t, y), y(0) given, by the explicit pair of order 5(4) of Dormand and Prince
 * @param system - the number of components and the right-hand side f [record]
 * @param start - y at t = 0, one number a component [list]
 * @param settings - tolerances of one step, first step, last time and when to stop [record]
 * @returns the steps taken with their interpolants [record]
 * @validity non-stiff systems; throws RangeError when the step shrinks to nothing (a right-hand side that is not a number or not smooth)
 * @source hairer-1993
 * @example integrate({ size: 1, rate: (t, y, out) => { out[0] = 3 * t * t; } }, [2], { absoluteTolerance: 1, relativeTolerance: 1, firstStep: 2, lastTime: 2 }).times // [0, 2]
 */
export function integrate(system: OdeSystem, start: ArrayLike<number>, settings: OdeSettings): DenseSolution {
  const { absoluteTolerance, relativeTolerance, lastTime, enough } = settings;
  const stepper = dormandPrinceStep(system, start, absoluteTolerance, relativeTolerance);
  const times = [0];
  const coefficients: number[] = [];
  let t = 0;
  let h = Math.min(settings.firstStep, lastTime);
  let lastError = 1e-4;
  let mostGrowth = longest;

  for (let tries = 0; t < lastTime; tries++) {
    if (tries > mostTries || !(t + h > t)) throw new RangeError('The right-hand side is not smooth enough to be integrated.');
    // A last step of almost nothing would be all rounding: stretch this one by a hair instead.
    if (t + 1.01 * h >= lastTime) h = lastTime - t;

    const error = stepper.attempt(t, h);
    if (!(error <= 1)) {
      h *= error > 1 ? Math.max(shortest, safety * error ** -0.2) : shortest;
      mostGrowth = 1;
      continue;
    }
    stepper.accept(h, coefficients);
    t += h;
    times.push(t);
    if (enough?.(t, stepper.state())) break;

    const growth = safety * Math.max(error, 1e-10) ** -(0.2 - 0.75 * memory) * lastError ** memory;
    h *= Math.min(mostGrowth, Math.max(shortest, growth));
    lastError = Math.max(error, 1e-4);
    mostGrowth = longest;
  }
  return { size: system.size, steps: times.length - 1, times, coefficients };
}
