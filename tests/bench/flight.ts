import { Solver } from 'odex';
import { aimPlan, exampleMarks, examplePriors, exampleScale, fitMarks, strip } from '../../core/aim/index.ts';
import { launchElevation, trajectory } from '../../core/flight/index.ts';
import { randomFrom } from '../../fixtures/random.ts';
import { randomShots, type WindyShot } from '../published/flightByOdex.ts';
import { row, timed, type Row } from './row.ts';
import { medians } from './timing.ts';

const FAR = 90;
const EQUAL_MM = 0.1;
const SHOTS = randomShots(16, 20260601);

type Place = readonly [y: number, z: number];

/** Rates of t, y, z and the velocity over the distance x: the form in which the library need not search for where 90 m is. */
const ratesOf =
  ({ k, wind }: WindyShot) =>
  (_x: number, [, , , vx = 0, vy = 0, vz = 0]: number[]): number[] => {
    const [ux, uy, uz] = [vx - wind.x, vy - wind.y, vz - wind.z];
    const drag = k * Math.sqrt(ux * ux + uy * uy + uz * uz);
    return [1 / vx, vy / vx, vz / vx, (-drag * ux) / vx, (-drag * uy - 9.80665) / vx, (-drag * uz) / vx];
  };

const startOf = ({ speed, elevation }: WindyShot): number[] => [
  0,
  0,
  0,
  speed * Math.cos(elevation),
  speed * Math.sin(elevation),
  0,
];

/** The tight reference is neither contestant: the classical method of Runge and Kutta in 4,000 equal steps. */
function byFixedSteps(shot: WindyShot): Place {
  const rates = ratesOf(shot);
  const h = FAR / 4000;
  let y = startOf(shot);
  const ahead = (k: number[], share: number) => y.map((value, i) => value + share * h * (k[i] ?? 0));
  for (let step = 0; step < 4000; step++) {
    const k1 = rates(0, y);
    const k2 = rates(0, ahead(k1, 0.5));
    const k3 = rates(0, ahead(k2, 0.5));
    const k4 = rates(0, ahead(k3, 1));
    y = y.map((value, i) => value + (h / 6) * ((k1[i] ?? 0) + 2 * (k2[i] ?? 0) + 2 * (k3[i] ?? 0) + (k4[i] ?? 0)));
  }
  return [y[1] ?? NaN, y[2] ?? NaN];
}

function byLibrary(shot: WindyShot, tolerance: number): Place {
  const solver = new Solver(6);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  solver.initialStepSize = 5;
  const { y } = solver.solve(ratesOf(shot), 0, startOf(shot), FAR);
  return [y[1] ?? NaN, y[2] ?? NaN];
}

/** The library as it comes: a flight over the time, broken off past 90 m, where it is looked for in the last step. */
function byLibraryInTime({ speed, elevation, k, wind }: WindyShot, tolerance: number): Place {
  const rates = (_t: number, [, , , vx = 0, vy = 0, vz = 0]: number[]): number[] => {
    const [ux, uy, uz] = [vx - wind.x, vy - wind.y, vz - wind.z];
    const drag = k * Math.sqrt(ux * ux + uy * uy + uz * uz);
    return [vx, vy, vz, -drag * ux, -drag * uy - 9.80665, -drag * uz];
  };
  const solver = new Solver(6);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  solver.initialStepSize = 0.1;
  solver.denseOutput = true;
  let place: Place = [NaN, NaN];
  const start = [0, 0, 0, speed * Math.cos(elevation), speed * Math.sin(elevation), 0];
  solver.solve(rates, 0, start, 60, (_step, from, to, [x = 0, , , vx = 1], read) => {
    if (x < FAR) return true;
    let t = to - (x - FAR) / vx;
    for (let i = 0; i < 3; i++) t -= (read(0, t) - FAR) / read(3, t);
    place = [read(1, Math.max(from, t)), read(2, Math.max(from, t))];
    return false;
  });
  return place;
}

function byBench(shot: WindyShot): Place {
  const point = trajectory({ ...shot, until: { x: FAR } }).at(FAR);
  return [point?.y ?? NaN, point?.z ?? NaN];
}

/** Farthest of all shots from the tight reference [mm]. */
function worstOf(fly: (shot: WindyShot) => Place): number {
  const misses = SHOTS.map((shot, i) => {
    const [y, z] = fly(shot);
    const [trueY, trueZ] = references[i] as Place;
    return 1000 * Math.hypot(y - trueY, z - trueZ);
  });
  return Math.max(...misses);
}

const references = SHOTS.map(byFixedSteps);

/** The loosest of the library's tolerances, in steps of half a decade, that keeps every shot within so many mm. */
function toleranceWithin(mm: number, fly: typeof byLibrary): number {
  for (let power = 1; power <= 14; power += 0.5) if (worstOf((shot) => fly(shot, 10 ** -power)) <= mm) return 10 ** -power;
  throw new RangeError(`The library never comes within ${mm} mm.`);
}

const overShots = (fly: (shot: WindyShot) => Place) => (times: number) => {
  let last = 0;
  for (let i = 0; i < times; i++) last += fly(SHOTS[i % SHOTS.length] as WindyShot)[0];
  return last;
};

export function flightRows(): Row[] {
  const ours = worstOf(byBench);
  const [loose, tight] = [toleranceWithin(EQUAL_MM, byLibrary), toleranceWithin(ours, byLibrary)];
  const [looseTimed, tightTimed] = [toleranceWithin(EQUAL_MM, byLibraryInTime), toleranceWithin(ours, byLibraryInTime)];
  const aim = { speed: 57, k: 0.0022, eyeHeight: 0.11, y: -0.2 };
  const plan = {
    speed: { value: 57, low: 55, high: 59 },
    mass: 0.021,
    diameter: 0.0058,
    airDensity: 1.22,
    eyeHeight: 0.11,
    arrowLength: 0.72,
    distances: [18, 30, 50, 70, 90],
    setFor: 30,
  };
  const fit = fitMarks(exampleMarks, exampleScale, examplePriors);
  if (!fit.ok) throw new RangeError(fit.problem.sentence);
  const { bench, within, level, withinTimed, levelTimed, elevation, planned, fitted, printed } = medians({
    bench: overShots(byBench),
    within: overShots((shot) => byLibrary(shot, loose)),
    level: overShots((shot) => byLibrary(shot, tight)),
    withinTimed: overShots((shot) => byLibraryInTime(shot, looseTimed)),
    levelTimed: overShots((shot) => byLibraryInTime(shot, tightTimed)),
    elevation: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) {
        const found = launchElevation({ ...aim, x: 50 + 5 * (i % 9) });
        if (found.ok) last += found.value;
      }
      return last;
    },
    planned: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) last += aimPlan({ ...plan, setFor: 30 + (i % 9) }).ok ? 1 : 0;
      return last;
    },
    fitted: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) last += fitMarks(exampleMarks, exampleScale, examplePriors).ok ? 1 : 0;
      return last;
    },
    printed: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) last += strip(fit.value, 10, 90, 1, 2000, randomFrom(i)).ok ? 1 : 0;
      return last;
    },
  });
  return [
    timed('flight.90m.within-0.1mm', bench, within),
    row(
      'flight.90m.within-0.1mm.error',
      ours,
      'mm',
      worstOf((shot) => byLibrary(shot, loose)),
    ),
    timed('flight.90m.same-error', bench, level),
    row(
      'flight.90m.same-error.error',
      ours,
      'mm',
      worstOf((shot) => byLibrary(shot, tight)),
    ),
    timed('flight.90m.within-0.1mm.in-time', bench, withinTimed),
    timed('flight.90m.same-error.in-time', bench, levelTimed),
    timed('flight.launch-elevation', elevation, bench),
    timed('aim.plan', planned, bench),
    timed('aim.marks.four-fitted', fitted, bench),
    timed('aim.strip.10-90m.2000-draws', printed, bench),
  ];
}
