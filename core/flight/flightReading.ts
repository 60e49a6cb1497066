import { type DenseSolution, readDense } from './denseSolution.ts';
import {
  type FlightSeries,
  readSeries,
  SERIES,
  T as TIME,
  VX as ALONG,
  VY as UP,
  VZ as RIGHT,
  Y as HEIGHT,
  Z as SIDE,
} from './flightSeries.ts';
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

/** What is looked for along a flight. */
type Component = 'x' | 'y' | 'vy';

/** A flight in steps, however they were made: one component, or the whole point, at a share of a step. */
interface Steps {
  readonly count: number;
  readonly value: (component: Component, step: number, share: number) => number;
  readonly point: (step: number, share: number) => FlightPoint;
}

/** A place in a flight: a step, and how far through it. */
interface Place {
  readonly step: number;
  readonly share: number;
}

function flightIn({ count, value, point }: Steps, at: (x: number) => FlightPoint | null): Flight {
  const last: Place = { step: count - 1, share: 1 };
  const endOf = (component: Component, step: number) => value(component, step, 1);
  const read = ({ step, share }: Place) => point(step, share);
  const where = (component: Component, wanted: number, step: number, from = 0): Place => ({
    step,
    share: crossing((share) => value(component, step, share) - wanted, from, 1, 1e-12),
  });
  const top = (): Place => {
    if (value('vy', 0, 0) <= 0) return { step: 0, share: 0 };
    for (let step = 0; step < count; step++) if (endOf('vy', step) <= 0) return where('vy', 0, step);
    return last;
  };
  return {
    at,
    downTo: (y) => {
      const { step: first, share } = top();
      if (!(y <= value('y', first, share))) return null;
      for (let step = first; step < count; step++)
        if (endOf('y', step) <= y) return read(where('y', y, step, step === first ? share : 0));
      return null;
    },
    apex: () => read(top()),
    end: read(last),
  };
}

/**
 * Make a flight that was solved over the time readable by distance and by height.
 *
 * @equation x(t) = X, solved inside the step that holds it
 * @param solution - six components: x, y, z [m] and their speeds [m/s], at least one step [record]
 * @returns the flight [record]
 * @validity x must grow along the flight: a headwind that blows the arrow back gives its first passage
 * @source own derivation
 * @example readFlight({ size: 6, steps: 1, times: [0, 1], coefficients: [0, 50, 0, 0, 0, ...Array(10).fill(0), 50, ...Array(14).fill(0)] }).at(25).t // 0.5
 */
export function readFlight(solution: DenseSolution): Flight {
  const places = { x: 0, y: 1, vy: 4 } as const;
  const steps: Steps = {
    count: solution.steps,
    value: (component, step, share) => readDense(solution, step, places[component], share),
    point: (step, share) => {
      const [began, ended] = [solution.times[step]!, solution.times[step + 1]!];
      const [x, y, z, vx, vy, vz] = [0, 1, 2, 3, 4, 5].map((component) => readDense(solution, step, component, share));
      return { t: began + share * (ended - began), x: x!, y: y!, z: z!, vx: vx!, vy: vy!, vz: vz! };
    },
  };
  return flightIn(steps, (x) => {
    if (!(x >= 0)) return null;
    for (let step = 0; step < steps.count; step++) {
      if (!(steps.value('x', step, 1) >= x)) continue;
      return steps.point(
        step,
        crossing((share) => steps.value('x', step, share) - x, 0, 1, 1e-12),
      );
    }
    return null;
  });
}

/**
 * Make a flight that was solved over the distance readable by distance and by height.
 *
 * @equation each component as its series in x − x₀, from the step that holds x
 * @param flown - from flightSeries, at least one step [record]
 * @returns the flight [record]
 * @validity up to where it was flown
 * @source own derivation
 * @example readFlown(flightSeries([50, 0, 0], 0, { x: 0, y: 0, z: 0 }, 50)).at(25).t // 0.5
 */
export function readFlown({ starts, series, end }: FlightSeries): Flight {
  const froms = { y: HEIGHT, vy: UP } as const;
  const longOf = (step: number) => (starts[step + 1] ?? end) - starts[step]!;
  const pointAhead = (step: number, ahead: number): FlightPoint => {
    const at = step * SERIES;
    return {
      t: readSeries(series, at + TIME, ahead),
      x: starts[step]! + ahead,
      y: readSeries(series, at + HEIGHT, ahead),
      z: readSeries(series, at + SIDE, ahead),
      vx: readSeries(series, at + ALONG, ahead),
      vy: readSeries(series, at + UP, ahead),
      vz: readSeries(series, at + RIGHT, ahead),
    };
  };
  const steps: Steps = {
    count: starts.length,
    value: (component, step, share) => {
      const ahead = share * longOf(step);
      return component === 'x' ? starts[step]! + ahead : readSeries(series, step * SERIES + froms[component], ahead);
    },
    point: (step, share) => pointAhead(step, share * longOf(step)),
  };
  return flightIn(steps, (x) => {
    if (!(x >= 0 && x <= end)) return null;
    let step = starts.length - 1;
    while (step > 0 && starts[step]! > x) step--;
    return pointAhead(step, x - starts[step]!);
  });
}
