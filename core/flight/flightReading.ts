import { type DenseSolution, readDense } from './denseSolution.ts';
import { crossing } from './root.ts';

/** Where the arrow is: x downrange, y up, z right of where it left [m], its velocity [m/s], and the time since [s]. */
export interface FlightPoint {
  readonly t: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly vx: number;
  readonly vy: number;
  readonly vz: number;
}

export interface Flight {
  /** The arrow at a distance downrange, or null when this flight does not get there. */
  readonly at: (x: number) => FlightPoint | null;
  /** The arrow on its way down through a height, or null when this flight does not come down to it. */
  readonly downTo: (y: number) => FlightPoint | null;
  /** The highest point flown. */
  readonly apex: () => FlightPoint;
  /** The last place that can be read: the end of the step in which the flight got where it was asked to. */
  readonly end: FlightPoint;
}

// The components of the state.
const [X, Y, Z, VX, VY, VZ] = [0, 1, 2, 3, 4, 5];

/** A place in a solution: a step, and how far through it. */
interface Place {
  readonly step: number;
  readonly share: number;
}

/**
 * Make a solved flight readable by distance and by height.
 *
 * @equation x(t) = X, solved inside the step that holds it
 * @param solution - six components: x, y, z [m] and their speeds [m/s], at least one step [record]
 * @returns the flight [record]
 * @validity x must grow along the flight: a headwind that blows the arrow back gives its first passage
 * @source own derivation
 * @example readFlight({ size: 6, steps: 1, times: [0, 1], coefficients: [0, 50, 0, 0, 0, ...Array(10).fill(0), 50, ...Array(14).fill(0)] }).at(25).t // 0.5
 */
export function readFlight(solution: DenseSolution): Flight {
  const last: Place = { step: solution.steps - 1, share: 1 };
  const endOf = (step: number, component: number) => readDense(solution, step, component, 1);
  const read = ({ step, share }: Place): FlightPoint => {
    const value = (component: number) => readDense(solution, step, component, share);
    const [began, ended] = [solution.times[step]!, solution.times[step + 1]!];
    return {
      t: began + share * (ended - began),
      x: value(X),
      y: value(Y),
      z: value(Z),
      vx: value(VX),
      vy: value(VY),
      vz: value(VZ),
    };
  };
  const where = (component: number, wanted: number, step: number, from = 0): Place => ({
    step,
    share: crossing((share) => readDense(solution, step, component, share) - wanted, from, 1, 1e-12),
  });
  const top = (): Place => {
    if (readDense(solution, 0, VY, 0) <= 0) return { step: 0, share: 0 };
    for (let step = 0; step < solution.steps; step++) if (endOf(step, VY) <= 0) return where(VY, 0, step);
    return last;
  };

  return {
    at: (x) => {
      if (!(x >= 0)) return null;
      for (let step = 0; step < solution.steps; step++) if (endOf(step, X) >= x) return read(where(X, x, step));
      return null;
    },
    downTo: (y) => {
      const { step: first, share } = top();
      if (!(y <= readDense(solution, first, Y, share))) return null;
      for (let step = first; step < solution.steps; step++)
        if (endOf(step, Y) <= y) return read(where(Y, y, step, step === first ? share : 0));
      return null;
    },
    apex: () => read(top()),
    end: read(last),
  };
}
