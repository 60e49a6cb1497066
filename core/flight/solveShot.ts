import { ok, refuse, type Result } from '../model/problem.ts';
import { fairSlope, fairWind } from './fair.ts';
import type { FlightPoint } from './flightReading.ts';
import { launchElevation } from './launchElevation.ts';
import { trajectory } from './trajectory.ts';
import type { Wind } from './wind.ts';

/** A place to hit in the open: how far and how steep, and the wind on the way. */
export interface OpenShot {
  /** Launch speed [m/s]. */
  readonly speed: number;
  /** Drag parameter [1/m]. */
  readonly k: number;
  /** From the eye, or from where the arrow leaves, along the slope to the place [m]. */
  readonly distance: number;
  /** Upwards when positive [rad]; level when left out. */
  readonly slope?: number;
  /** Still air when left out. */
  readonly wind?: Wind;
  /** From the arrow's axis up to the eye [m]; nought when left out. */
  readonly eyeHeight?: number;
}

/** How the arrow must leave to strike the place. */
export interface SolvedShot {
  /** Launch angle above the horizontal [rad]. */
  readonly elevation: number;
  /** To the right of the upright plane through the place [rad]; to its left when negative. */
  readonly windage: number;
  /** Elevation over the slope: between the line of sight and the arrow's axis [rad]. */
  readonly above: number;
  /** From the loose to the place [s]. */
  readonly time: number;
  /** Speed left there, over the ground [m/s]. */
  readonly speed: number;
}

const stillAir: Wind = { x: 0, y: 0, z: 0 };
const nearEnough = 1e-7;
/** Each turn leaves a few hundredths of the miss before it. */
const mostTurns = 30;

/**
 * Elevation and windage for a place at a distance and a slope, with wind: the whole shot in three dimensions.
 *
 * @equation the flight passes (S cos φ, S sin φ, 0); with the launch turned by ψ the wind is turned back by ψ, θ strikes the height, and ψ takes up what is left beside
 * @param shot - speed, drag parameter, distance, slope, wind and eye height [record]
 * @returns θ, ψ, θ − φ, time of flight and speed at the place; or a refusal: `slope`, `wind`, `not-a-shot`, `out-of-reach` [record]
 * @validity a steady wind of at most 20 m/s, slopes up to 60° either way, an arrow that flies along its path; the lower of the two flights, within 0.0001 mm of the place
 * @source own derivation
 * @example solveShot({ speed: 60, k: 0, distance: 40, wind: { x: 3, y: 0, z: 5 } }).value.windage // 0
 */
export function solveShot(shot: OpenShot): Result<SolvedShot> {
  const { speed, k, distance, slope = 0, wind = stillAir, eyeHeight = 0 } = shot;
  const steep = fairSlope(slope);
  if (!steep.ok) return steep;
  const blows = fairWind(wind);
  if (!blows.ok) return blows;
  const [x, y] = [distance * Math.cos(slope), distance * Math.sin(slope)];

  let windage = 0;
  for (let turns = 0; turns < mostTurns; turns++) {
    const turned = seenFrom(windage, wind);
    const abeam = x * Math.cos(windage);
    const found = launchElevation({ speed, k, x: abeam, y, eyeHeight, wind: turned });
    if (!found.ok) return found;
    const elevation = found.value;
    const ahead = abeam - eyeHeight * Math.sin(elevation);
    const there = trajectory({ speed, elevation, k, wind: turned, until: { x: ahead } }).at(ahead);
    if (there === null) return against;
    const beside = there.z + x * Math.sin(windage);
    if (Math.abs(beside) <= nearEnough)
      return ok({ elevation, windage, above: elevation - slope, time: there.t, speed: overGround(there) });
    windage -= Math.atan(beside / x);
  }
  return against;
}

const against = refuse(
  'out-of-reach',
  'Against this wind the arrow does not get so far: a nearer distance was expected.',
  'shootingDistance',
);

/** The wind as an archer sees it who faces that much further to the right. */
function seenFrom(turn: number, { x, y, z }: Wind): Wind {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return { x: x * c + z * s, y, z: z * c - x * s };
}

const overGround = ({ vx, vy, vz }: FlightPoint): number => Math.hypot(vx, vy, vz);
