import { standardGravity } from '../units/exact.ts';
import type { Wind } from './wind.ts';

/**
 * A flight counted by its steepness p. Seen from air that moves steadily an arrow flies as in still air, in one upright plane, and there
 * its speed is known in closed form at every steepness; distance, height and time are sums over it.
 */
export interface Hodograph {
  /** Steepness where each stretch begins, and where the last ends. */
  readonly steepness: readonly number[];
  /** How far along the plane, how high and how late each stretch begins, and the last ends. */
  readonly along: readonly number[];
  readonly height: readonly number[];
  readonly time: readonly number[];
  /** 1/u² = base − slope F(p). */
  readonly base: number;
  readonly slope: number;
  /** Which way the plane stands: cosine and sine of its angle to the right. */
  readonly ahead: number;
  readonly aside: number;
  readonly wind: Wind;
}

/** What a stretch adds: along the plane [m], up [m] and in time [s]. */
export interface Stretch {
  readonly along: number;
  readonly height: number;
  readonly time: number;
}

/** Steeper than this, and where an arrow hardly gets on [m/s], a flight is counted by its time instead. */
const STEEPEST = 50;
const SLOWEST = 3;
const MOST_STRETCHES = 60;
/** A stretch is this part of the way to where the sum would be endless, and of how far the root is smooth: eight points then tell it to 1e-10. */
const [TO_ENDLESS, TO_ROUGH] = [1.5, 0.8];

/** Places and weights of Gauss's rule with eight points between −1 and 1. */
const places = [
  -0.9602898564975363, -0.7966664774136267, -0.525532409916329, -0.1834346424956498, 0.1834346424956498, 0.525532409916329,
  0.7966664774136267, 0.9602898564975363,
];
const weights = [
  0.1012285362903763, 0.2223810344533745, 0.3137066458778873, 0.362683783378362, 0.362683783378362, 0.3137066458778873,
  0.2223810344533745, 0.1012285362903763,
];

/** F(p) = ½ (p √(1 + p²) + asinh p), whose slope is √(1 + p²). */
function arc(p: number): number {
  const root = Math.sqrt(1 + p * p);
  return 0.5 * (p * root + (p < 0 ? -Math.log(root - p) : Math.log(root + p)));
}

/**
 * The speed along the plane at a steepness.
 *
 * @equation u = 1/√(base − slope F(p))
 * @param flight - from hodograph [record]
 * @param steepness - p, rise for each metre along [-]
 * @returns u [m/s]
 * @validity steepness of the flight; not checked, since it is read inside loops
 * @source mcshane-kelley-reno-1953
 * @example speedAt({ base: 0.25, slope: 0 }, 0.3) // 2
 */
export function speedAt({ base, slope }: Pick<Hodograph, 'base' | 'slope'>, steepness: number): number {
  return 1 / Math.sqrt(base - slope * arc(steepness));
}

/**
 * How far, how high and how long an arrow flies between two steepnesses.
 *
 * @equation s = ∫ u² dp/g,  y = ∫ p u² dp/g,  t = ∫ u dp/g, by Gauss's rule with eight points
 * @param flight - base and slope of 1/u² [record]
 * @param from - the greater steepness, where the stretch begins [-]
 * @param to - the lesser one [-]
 * @returns what the stretch adds [record]
 * @validity no longer than one stretch of the hodograph
 * @source abramowitz-stegun-1964; mcshane-kelley-reno-1953
 * @example stretch({ base: 0.01, slope: 0 }, 0.1, 0).along.toFixed(6) // "1.019716"
 */
export function stretch({ base, slope }: Pick<Hodograph, 'base' | 'slope'>, from: number, to: number): Stretch {
  const middle = (from + to) / 2;
  const half = (from - to) / 2;
  // Written plainly, since it is what every flight waits for: a list taken apart here would cost more than the sum.
  let along = 0;
  let height = 0;
  let time = 0;
  for (let i = 0; i < 8; i++) {
    const p = middle + half * places[i]!;
    const root = Math.sqrt(1 + p * p);
    const u = 1 / Math.sqrt(base - (slope / 2) * (p * root + (p < 0 ? -Math.log(root - p) : Math.log(root + p))));
    const part = weights[i]! * u;
    time += part;
    along += part * u;
    height += part * u * p;
  }
  const scale = half / standardGravity;
  return { along: along * scale, height: height * scale, time: time * scale };
}

/**
 * Fly an arrow by its hodograph, the curve of its velocities.
 *
 * @equation d(1/u²)/dp = −(2k/g) √(1 + p²), so 1/u² = 1/u₀² + (2k/g)(F(p₀) − F(p)); x = s cos ψ + w_x t, y and z likewise
 * @param velocity - v₀, along, up and to the side, over the ground [m/s]
 * @param k - drag parameter [1/m]
 * @param wind - w, steady [record]
 * @param reached - told how far downrange and how high a stretch ends and how steep [m, m, -]: whether that is far enough [function]
 * @returns the flight in stretches, or null where it is too steep or hardly gets on [record]
 * @validity steepness from 50 up to 50 down; each stretch to about 1e-10 of itself
 * @source mcshane-kelley-reno-1953
 * @example hodograph([60, 0, 0], 0, { x: 0, y: 0, z: 0 }, (x) => x >= 60).base.toFixed(8) // "0.00027778"
 */
export function hodograph(
  velocity: readonly [number, number, number],
  k: number,
  wind: Wind,
  reached: (x: number, y: number, steepness: number) => boolean,
): Hodograph | null {
  const forth = velocity[0] - wind.x;
  const right = velocity[2] - wind.z;
  const speed = Math.sqrt(forth * forth + right * right);
  const ahead = forth / speed;
  const aside = right / speed;
  let p = (velocity[1] - wind.y) / speed;
  const slope = (2 * k) / standardGravity;
  if (!(speed > SLOWEST && Math.abs(p) < STEEPEST)) return null;
  const base = 1 / (speed * speed) + slope * arc(p);
  const flight = { base, slope };
  const steepness = [p];
  const along = [0];
  const height = [0];
  const time = [0];
  let s = 0;
  let y = 0;
  let t = 0;
  for (let count = 0; count < MOST_STRETCHES; count++) {
    const root = Math.sqrt(1 + p * p);
    const endless = slope === 0 ? Infinity : (base - slope * arc(p)) / (slope * root);
    const to = p - Math.min(TO_ENDLESS * endless, TO_ROUGH * root);
    const added = stretch(flight, p, to);
    s += added.along;
    y += added.height;
    t += added.time;
    p = to;
    steepness.push(p);
    along.push(s);
    height.push(y);
    time.push(t);
    if (reached(s * ahead + wind.x * t, y + wind.y * t, p))
      return { steepness, along, height, time, base, slope, ahead, aside, wind };
    if (!(speedAt(flight, p) * ahead + wind.x > SLOWEST && p > -STEEPEST)) return null;
  }
  return null;
}
