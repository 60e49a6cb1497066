import { type Result, ok, refuse } from '../model/problem.ts';
import { foot, standardGravity, yard } from '../units/exact.ts';
import { peak } from './peak.ts';
import { crossing } from './root.ts';
import { trajectory } from './trajectory.ts';
import type { Wind } from './wind.ts';

/** A place to hit: x downrange, y up [m], seen from where the arrow leaves or, when the arrow leaves below an eye, from that eye. */
export interface Aim {
  readonly speed: number;
  readonly k: number;
  readonly x: number;
  readonly y: number;
  /** How far the arrow's axis passes below the eye, squarely to the axis [m]: the arrow leaves from the foot of that perpendicular. */
  readonly eyeHeight?: number;
  readonly wind?: Wind;
}

const nearEnough = 1e-7;
const steepest = 1.4;
/** Lower than any flight passes a target [m]. */
const farBelow = 1000;

/**
 * The lower of the two launch angles at which an arrow passes through a place.
 *
 * @equation y(x; θ) = Y; each flight gives its fall c = (x tan θ − y)/(1 + tan²θ), and the next angle is the low root of Y = x tan θ − c (1 + tan²θ)
 * @param aim - launch speed, drag parameter, the place, the eye's height and the wind [record]
 * @returns θ, launch angle above the horizontal, or a refusal when the place is out of reach [rad]
 * @validity the flight passes within 0.0001 mm of the place; launch angles up to 80°
 * @source own derivation
 * @example launchElevation({ speed: 9.80665, k: 0, x: 4.903325, y: 0 }).value.toFixed(6) // "0.261799"
 */
export function launchElevation(aim: Aim): Result<number> {
  const { speed, k, x, y, wind, eyeHeight = 0 } = aim;
  if (!(speed > 0 && k >= 0 && x > Math.abs(eyeHeight) && Number.isFinite(speed + k + x + y)))
    return refuse('not-a-shot', 'A speed above 0, a distance beyond the bow and a height were expected.');
  const heightAt = (elevation: number) => {
    const ahead = x - eyeHeight * Math.sin(elevation);
    const shot = { speed, elevation, k, until: { x: ahead } };
    const passing = trajectory(wind ? { ...shot, wind } : shot).at(ahead);
    return passing ? passing.y - eyeHeight * Math.cos(elevation) : -Infinity;
  };

  let elevation = 0;
  // The fall of a flat flight with drag, g (e^z − 1 − z)/(4 k² v²) with z = 2 k x, by its series: it is only the first guess.
  const z = 2 * k * x;
  let fall = ((standardGravity * x * x) / (2 * speed * speed)) * (1 + z / 3 + (z * z) / 12);
  for (let tries = 0; tries < 12; tries++) {
    const ahead = x - eyeHeight * Math.sin(elevation);
    const up = y + eyeHeight * Math.cos(elevation);
    const under = ahead * ahead - 4 * fall * (up + fall);
    if (!(under > 0)) break;
    const slope = (2 * (up + fall)) / (ahead + Math.sqrt(under));
    elevation = Math.atan(slope);
    const off = heightAt(elevation) - y;
    if (Math.abs(off) <= nearEnough) return ok(elevation);
    fall -= off / (1 + slope * slope);
  }

  // Near the limit of its reach the two angles draw together and the quick way fails: find the angle that carries highest, then search below it.
  const lowest = Math.atan2(y, x) - 0.5;
  const best = peak(heightAt, lowest, steepest, 1e-6);
  if (!(heightAt(best) >= y && heightAt(lowest) <= y)) return refuse('out-of-reach', outOfReach(speed, x), 'shootingDistance');
  // A flight that ends short of the place has no height there, and a search for nought needs a number.
  return ok(crossing((angle) => Math.max(-farBelow, heightAt(angle) - y), lowest, best, nearEnough));
}

const outOfReach = (speed: number, x: number) =>
  `At ${speed.toFixed(0)} m/s (${(speed / foot).toFixed(0)} ft/s) this arrow does not carry to ${x.toFixed(0)} m (${(x / yard).toFixed(0)} yd): a nearer distance was expected.`;
