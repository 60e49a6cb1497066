import { crossing, fairSlope, fairWind, launchElevation, trajectory, type Wind } from '../flight/index.ts';
import type { Point } from '../group/index.ts';
import type { Band } from '../model/band.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { atCorners, bandOver, type Corners } from './bands.ts';
import type { Launch } from './launch.ts';

/** A shot held on the middle with the sight set for something else: nothing of what follows was allowed for. */
export interface Conditions {
  /** What the sight is set for: a distance over level ground in still air [m]. */
  readonly setFor: number;
  /** Where the target stands, from the archer along the ground [m]. */
  readonly distance: number;
  /** The slope of the ground, upwards when positive [rad]. */
  readonly slope: number;
  readonly wind: Wind;
}

/** Where the middle of the group comes to lie on a face that stands square to the line of sight, as the archer sees it. */
export interface Landing {
  /** From the middle of the face [m], with every launch of the band. */
  readonly place: Corners<Point>;
  readonly across: Band;
  readonly up: Band;
  /** From the loose to the face [s]. */
  readonly time: Band;
}

/** The flight is followed so far past the target: on a slope an arrow that strikes low meets the plane of the face behind it. */
const past = (x: number): number => 1.3 * x + 5;
const STEP = 1.03;

/**
 * Where the middle of a group comes to lie when the distance is another than believed, the ground slopes or a wind blows, and nobody allows for it.
 *
 * @equation δ = θ(R_b) + atan(d/R_b), of the distance believed; line of sight λ through (R cos φ, R sin φ − d); the arrow leaves at λ + δ with the wind, and is read where it meets the plane through the middle square to λ
 * @param launches - speed, drag parameter, eye height and target drop, with what is not known of them [record]
 * @param conditions - what the sight is set for, the true distance, slope and wind [record]
 * @returns place of the middle of the group, with its band [m], and time of flight [s]; or a refusal: `slope`, `wind`, `not-a-shot`, `out-of-reach` [record]
 * @validity the sight was shot in with this bow on level ground in still air, so that every launch of the band strikes the middle there; a steady wind, an arrow that flies along its path
 * @source own derivation
 * @example Math.abs(landing({ value: { speed: 55, k: 0.001, eyeHeight: 0.1 }, corners: [] }, { setFor: 30, distance: 30, slope: 0, wind: { x: 0, y: 0, z: 0 } }).value.up.value) < 1e-6 // true
 */
export function landing(launches: Corners<Launch>, conditions: Conditions): Result<Landing> {
  const steep = fairSlope(conditions.slope);
  if (!steep.ok) return steep;
  const blows = fairWind(conditions.wind);
  if (!blows.ok) return blows;
  if (!(conditions.distance > 0 && conditions.distance < Infinity))
    return refuse('not-a-shot', 'A distance above 0 was expected.', 'shootingDistance');
  const struck = atCorners(launches, (launch) => strikes(launch, conditions));
  if (!struck.ok) return struck;
  return ok({
    place: struck.value,
    across: bandOver(struck.value, ({ x }) => x),
    up: bandOver(struck.value, ({ y }) => y),
    time: bandOver(struck.value, ({ time }) => time),
  });
}

interface Strike extends Point {
  readonly time: number;
}

function strikes(launch: Launch, { setFor, distance, slope, wind }: Conditions): Result<Strike> {
  const { speed, k, eyeHeight, targetDrop = 0 } = launch;
  const set = launchElevation({ speed, k, eyeHeight, x: setFor, y: -targetDrop });
  if (!set.ok) return set;
  const [x, y] = [distance * Math.cos(slope), distance * Math.sin(slope) - targetDrop];
  const sight = Math.atan2(y, x);
  const [c, s] = [Math.cos(sight), Math.sin(sight)];
  const elevation = set.value + Math.atan2(targetDrop, setFor) + sight;
  const start = { x: eyeHeight * Math.sin(elevation), y: -eyeHeight * Math.cos(elevation) };

  const flight = trajectory({ speed, elevation, k, wind, until: { x: past(x) } });
  const from = (ahead: number) => {
    const there = flight.at(ahead);
    return there && { dx: start.x + there.x - x, dy: start.y + there.y - y, z: there.z, t: there.t };
  };
  const beyond = (ahead: number) => {
    const there = from(ahead);
    return there ? there.dx * c + there.dy * s : -Infinity;
  };
  // Step by step: shot steeply up, an arrow that has passed the plane may fall back through it.
  let far = x;
  while (!(beyond(far) > 0) && far < flight.end().x) far *= STEP;
  const there = beyond(far) > 0 ? from(crossing(beyond, 0, far, 1e-9)) : null;
  // Adding 0 turns -0 into 0.
  return there
    ? ok({ x: there.z + 0, y: there.dy * c - there.dx * s + 0, time: there.t })
    : refuse('out-of-reach', 'So the arrow does not get to the face: a nearer distance was expected.', 'shootingDistance');
}
