import { type DenseSolution, readDense } from './denseSolution.ts';
import { standardGravity } from '../units/exact.ts';
import { type Hodograph, speedAt, stretch, type Stretch } from './hodograph.ts';
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
  readonly end: () => FlightPoint;
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

const start: Place = { step: 0, share: 0 };

/** Where in one step a component has a value, from some share of it on. */
const where = ({ value }: Steps, component: Component, wanted: number, step: number, from = 0): Place => ({
  step,
  share: crossing((share) => value(component, step, share) - wanted, from, 1, 1e-12),
});

function topOf(steps: Steps): Place {
  if (steps.value('vy', 0, 0) <= 0) return start;
  for (let step = 0; step < steps.count; step++) if (steps.value('vy', step, 1) <= 0) return where(steps, 'vy', 0, step);
  return { step: steps.count - 1, share: 1 };
}

function downThrough(steps: Steps, y: number, until: number): FlightPoint | null {
  const { step: first, share } = topOf(steps);
  if (!(y <= steps.value('y', first, share))) return null;
  for (let step = first; step < steps.count; step++)
    if (steps.value('y', step, 1) <= y) {
      const down = where(steps, 'y', y, step, step === first ? share : 0);
      const point = steps.point(down.step, down.share);
      return point.x <= until ? point : null;
    }
  return null;
}

/** What is asked of every flight; a flight is made far oftener than it is asked for its top, so that nothing is got ready. */
function flightIn(steps: Steps, at: Flight['at'], until = Infinity): Flight {
  return {
    at,
    downTo: (y) => downThrough(steps, y, until),
    apex: () => {
      const { step, share } = topOf(steps);
      return steps.point(step, share);
    },
    end: () => at(until) ?? steps.point(steps.count - 1, 1),
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

/** The point of a stretch where the steepness is p, or a hair further along the plane. */
function pointIn(flown: Hodograph, step: number, p: number, added: Stretch, hair: number): FlightPoint {
  const { ahead, aside, wind } = flown;
  const u = speedAt(flown, p);
  const s = flown.along[step]! + added.along + hair;
  const t = flown.time[step]! + added.time + hair / u;
  return {
    t,
    x: s * ahead + wind.x * t,
    y: flown.height[step]! + added.height + p * hair + wind.y * t,
    z: s * aside + wind.z * t,
    vx: u * ahead + wind.x,
    vy: u * (p - (standardGravity * hair) / (u * u)) + wind.y,
    vz: u * aside + wind.z,
  };
}

/** How far downrange a stretch begins. */
const downrange = ({ along, time, ahead, wind }: Hodograph, step: number): number => along[step]! * ahead + wind.x * time[step]!;

function pointAt(flown: Hodograph, x: number): FlightPoint | null {
  const { steepness, ahead, wind } = flown;
  let next = 1;
  while (next < steepness.length && !(downrange(flown, next) >= x)) next++;
  if (next === steepness.length) return null;
  const step = next - 1;
  const from = steepness[step]!;
  const to = steepness[next]!;
  const began = speedAt(flown, from);
  const far = (x - downrange(flown, step)) / (ahead + wind.x / began);
  // As a flat flight would be there: 1/u² grows by e^(2 k s √(1 + p²)), and k is slope g/2.
  const grows = flown.slope * standardGravity * Math.sqrt(1 + from * from);
  let p = from - (standardGravity / (began * began)) * (grows === 0 ? far : Math.expm1(grows * far) / grows);
  for (let tries = 0; ; tries++) {
    p = Math.min(from, Math.max(to, p));
    const added = stretch(flown, from, p);
    const u = speedAt(flown, p);
    const off = (flown.along[step]! + added.along) * ahead + wind.x * (flown.time[step]! + added.time) - x;
    const hair = -off / (ahead + wind.x / u);
    if (Math.abs(hair) < NEARLY || tries > 20) return pointIn(flown, step, p, added, hair);
    p -= (standardGravity * hair) / (u * u);
  }
}

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
  const { steepness, along, height, time, ahead, wind } = flown;
  const steepAt = (step: number, share: number) => steepness[step]! + share * (steepness[step + 1]! - steepness[step]!);
  const steps: Steps = {
    count: steepness.length - 1,
    value: (component, step, share) => {
      const p = steepAt(step, share);
      if (component === 'vy') return speedAt(flown, p) * p + wind.y;
      const added = stretch(flown, steepness[step]!, p);
      const t = time[step]! + added.time;
      return component === 'x' ? (along[step]! + added.along) * ahead + wind.x * t : height[step]! + added.height + wind.y * t;
    },
    point: (step, share) => {
      const p = steepAt(step, share);
      return pointIn(flown, step, p, stretch(flown, steepness[step]!, p), 0);
    },
  };
  return flightIn(steps, (x) => (x >= 0 && x <= until ? pointAt(flown, x) : null), until);
}
