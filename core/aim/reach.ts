import { greatestReach, levelReach } from '../flight/index.ts';
import type { Band } from '../model/band.ts';
import { limits } from '../model/limits.ts';
import { bandOver } from './bands.ts';
import { launchBand } from './launch.ts';
import { highestOffered } from './raised.ts';

/** The height at which a bow is loosed [m]: from memory, and of no weight beside the reach itself. */
const bowAboveGround = 1.5;

/**
 * How far an arrow could fly, loosed at the worst angle.
 *
 * @equation greatestReach from 1.5 m up, at the value to go by and at the corners of speed and drag
 * @param speed - v, launch speed with its band [m/s]
 * @param drag - k, drag parameter with its band [1/m]
 * @returns the reach with its band [m]
 * @validity level ground, still air, a solid arrow; an upper figure, never a permission
 * @source own derivation
 * @example Math.round(reachBand({ value: 57, low: 57, high: 57 }, { value: 0.0022, low: 0.0022, high: 0.0022 }).value) // 220
 */
export function reachBand(speed: Band, drag: Band): Band {
  return bandOver(launchBand(speed, drag, 0, 0), (launch) => greatestReach(launch.speed, launch.k, bowAboveGround));
}

/**
 * The farthest distance that a sight is offered for: what the slowest flight reaches with the bow raised no further than anybody should be led to.
 *
 * @equation x where the flight with v_low and k_high, loosed 0.35 rad up, is back at its height; at most the limit of a distance
 * @param speed - v, launch speed with its band [m/s]
 * @param drag - k, drag parameter with its band [1/m]
 * @returns the distance [m]
 * @validity level ground, still air
 * @source from memory
 * @example farthestOffered({ value: 57, low: 55, high: 59 }, { value: 0.002, low: 0.001, high: 0.003 }) // 120
 */
export function farthestOffered(speed: Band, drag: Band): number {
  return Math.min(limits.shootingDistance.max, levelReach(speed.low, drag.high, highestOffered, 0));
}
