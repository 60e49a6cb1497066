import { type DenseSolution, readDense } from './denseSolution.ts';
import { standardGravity } from '../units/exact.ts';
import { type Hodograph, speedAt, stretch } from './hodograph.ts';
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

function flightIn({ count, value, point }: Steps, at: Flight['at'], until = Infinity): Flight {
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
        if (endOf('y', step) <= y) {
          const down = read(where('y', y, step, step === first ? share : 0));
          return down.x <= until ? down : null;
        }
      return null;
    },
    apex: () => read(top()),
    get end() {
      return at(until) ?? read(last);
    },
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

/** Where a search by distance has come near enough for the rest to be a straight line [m]. */
const NEARLY = 1e-5;

/**
 * Make a flight that was counted by its steepness readable by distance and by height.
 *
 * @equation s(p) cos ψ + w_x t(p) = x by Newton's rule inside the stretch that holds it
 * @param flown - from hodograph, at least one stretch [record]
 * @param until - x, where reading ends; left out: at the end of the last stretch [m]
 * @returns the flight [record]
 * @validity up to where it was flown
 * @source own derivation
 * @example readHodograph(hodograph([50, 0, 0], 0, { x: 0, y: 0, z: 0 }, (x) => x >= 50)).at(25).t.toFixed(9) // "0.500000000"
 */
export function readHodograph(flown: Hodograph, until: number = Infinity): Flight {
  const { steepness, along, height, time, ahead, aside, wind } = flown;
  /** The point of a stretch where the steepness is p, or a hair further along the plane. */
  const pointAt = (step: number, p: number, added = stretch(flown, steepness[step]!, p), hair = 0): FlightPoint => {
    const u = speedAt(flown, p);
    const s = along[step]! + added.along + hair;
    const t = time[step]! + added.time + hair / u;
    return {
      t,
      x: s * ahead + wind.x * t,
      y: height[step]! + added.height + p * hair + wind.y * t,
      z: s * aside + wind.z * t,
      vx: u * ahead + wind.x,
      vy: u * (p - (standardGravity * hair) / (u * u)) + wind.y,
      vz: u * aside + wind.z,
    };
  };
  const downrange = (step: number) => along[step]! * ahead + wind.x * time[step]!;
  const steps: Steps = {
    count: steepness.length - 1,
    value: (component, step, share) => {
      const p = steepness[step]! + share * (steepness[step + 1]! - steepness[step]!);
      if (component === 'vy') return speedAt(flown, p) * p + wind.y;
      const added = stretch(flown, steepness[step]!, p);
      const t = time[step]! + added.time;
      return component === 'x' ? (along[step]! + added.along) * ahead + wind.x * t : height[step]! + added.height + wind.y * t;
    },
    point: (step, share) => pointAt(step, steepness[step]! + share * (steepness[step + 1]! - steepness[step]!)),
  };
  const at = (x: number): FlightPoint | null => {
    if (!(x >= 0 && x <= until)) return null;
    const next = steepness.findIndex((_, i) => i > 0 && downrange(i) >= x);
    if (next < 0) return null;
    const step = next - 1;
    const [from, to] = [steepness[step]!, steepness[next]!];
    const began = speedAt(flown, from);
    const far = (x - downrange(step)) / (ahead + wind.x / began);
    // As a flat flight would be there: 1/u² grows by e^(2 k s √(1 + p²)), and k is slope g/2.
    const grows = flown.slope * standardGravity * Math.sqrt(1 + from * from);
    let p = from - (standardGravity / began ** 2) * (grows === 0 ? far : Math.expm1(grows * far) / grows);
    for (let tries = 0; ; tries++) {
      p = Math.min(from, Math.max(to, p));
      const added = stretch(flown, from, p);
      const u = speedAt(flown, p);
      const off = (along[step]! + added.along) * ahead + wind.x * (time[step]! + added.time) - x;
      const hair = -off / (ahead + wind.x / u);
      if (Math.abs(hair) < NEARLY || tries > 20) return pointAt(step, p, added, hair);
      p -= (standardGravity * hair) / (u * u);
    }
  };
  return flightIn(steps, at, until);
}
