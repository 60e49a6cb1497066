import { standardGravity } from '../units/exact.ts';
import type { Wind } from './wind.ts';

/** The terms of each series: as many as tell a step of tens of metres to a ten-thousandth of a millimetre. */
export const TERMS = 14;

/** The series of one step, one after the other: time, height, side, and the velocity along, up and to the side. */
export const T = 0;
export const Y = TERMS;
export const Z = 2 * TERMS;
export const VX = 3 * TERMS;
export const VY = 4 * TERMS;
export const VZ = 5 * TERMS;

/** All six of a step. */
export const SERIES = 6 * TERMS;
/** Room for so many steps is taken at once, with the state after the last. */
const USUAL_STEPS = 4;

/** What is known of a flight over the distance: from where each step counts, and its six series. */
export interface FlightSeries {
  readonly starts: readonly number[];
  /** One step's six series after another's. */
  readonly series: Float64Array;
  /** How far it was flown [m]. */
  readonly end: number;
}

/** A step may miss by this in place [m] and as a share of the speed [-]; smaller than what anything asks of a flight. */
const NEAR = 1e-8;
const SHORTEST = 0.5;
const MOST_STEPS = 60;
/** Steeper than this the distance is no longer what the flight is best counted by, nor where the air hardly passes the arrow [m/s]. */
const STEEPEST = 4;
const SLOWEST = 3;

/**
 * One series at a place of its step.
 *
 * @equation Σ c_n d^n by Horner's rule
 * @param series - of a step [list]
 * @param from - where in it the component begins: T, Y, Z, VX, VY or VZ [-]
 * @param ahead - d, from the start of the step [m]
 * @returns the component there, in its own unit [-]
 * @validity inside the step; not checked, since it is read inside loops
 * @source own derivation
 * @example readSeries(Float64Array.from({ length: 84 }, (_, i) => (i < 2 ? i + 1 : 0)), 0, 0.5) // 2
 */
export function readSeries(series: Float64Array, from: number, ahead: number): number {
  let value = series[from + TERMS - 1]!;
  for (let n = from + TERMS - 2; n >= from; n--) value = value * ahead + series[n]!;
  return value;
}

/**
 * Fly an arrow over the distance by series of high order.
 *
 * @equation d(t, y, z, v)/dx = (1, v_y, v_z, a)/v_x,  a = −k |u| u + g,  u = v − w, each as Σ c_n (x − x₀)^n with the c_n by recurrence
 * @param velocity - v₀, along, up and to the side [m/s]
 * @param k - drag parameter [1/m]
 * @param wind - w [record]
 * @param stop - how far [m]
 * @returns the series of each step, or null where the flight grows too steep or the air stands still about the arrow [record]
 * @validity each step within 1e-8 m by its last terms; a flight that comes down before it gets there is followed below the ground as long as it is not steep
 * @source jorba-zou-2005
 * @example flightSeries([60, 0, 0], 0, { x: 0, y: 0, z: 0 }, 60).series[14 + 2].toFixed(8) // "-0.00136203"
 */
export function flightSeries(
  velocity: readonly [number, number, number],
  k: number,
  wind: Wind,
  stop: number,
): FlightSeries | null {
  const starts: number[] = [];
  const aside = velocity[2] !== 0 || wind.z !== 0;
  const work = new Float64Array(7 * TERMS);
  let c = new Float64Array(USUAL_STEPS * SERIES);
  c[VX] = velocity[0];
  c[VY] = velocity[1];
  c[VZ] = velocity[2];
  let x = 0;
  for (let at = 0; ; at += SERIES) {
    const speed = c[at + VX]!;
    const along = speed - wind.x;
    const up = c[at + VY]! - wind.y;
    const right = c[at + VZ]! - wind.z;
    const passing = along * along + up * up + right * right;
    if (!(passing > SLOWEST * SLOWEST && speed > SLOWEST && Math.abs(c[at + VY]!) < STEEPEST * speed)) return null;
    if (x >= stop) return { starts, series: c, end: stop };
    fill(c, at, work, k, wind, aside);
    const far = reachOf(c, at, speed, stop - x);
    if ((far < SHORTEST && far < stop - x) || starts.length >= MOST_STEPS) return null;
    starts.push(x);
    x = far >= stop - x ? stop : x + far;
    const next = at + SERIES;
    if (next + SERIES > c.length) c = larger(c);
    for (let from = 0; from < SERIES; from += TERMS) c[next + from] = readSeries(c, at + from, far);
  }
}

function larger(c: Float64Array): Float64Array<ArrayBuffer> {
  const room = new Float64Array(2 * c.length);
  room.set(c);
  return room;
}

/** How far a step goes by its last two terms: its place within NEAR, and the speed that the next step begins from. */
function reachOf(c: Float64Array, at: number, speed: number, left: number): number {
  let reach = 1.25 * left;
  for (let n = TERMS - 2; n < TERMS; n++) {
    const place = Math.max(Math.abs(c[at + Y + n]!), Math.abs(c[at + Z + n]!));
    const pace = Math.max(Math.abs(c[at + VX + n]!), Math.abs(c[at + VY + n]!)) / speed;
    const term = Math.max(place, pace);
    if (term > 0) reach = Math.min(reach, (NEAR / term) ** (1 / n));
  }
  return Math.min(left, 0.8 * reach);
}

// Where the series stand that the six are made of: u, |u|², |u|, 1/v_x and |u|/v_x.
const UX = 0;
const UY = TERMS;
const UZ = 2 * TERMS;
const SQUARE = 3 * TERMS;
const PASSING = 4 * TERMS;
const INVERSE = 5 * TERMS;
const RATIO = 6 * TERMS;

/** The six series about the state that their first terms hold. Written out, since it is what every flight waits for. */
function fill(c: Float64Array, at: number, w: Float64Array, k: number, wind: Wind, aside: boolean): void {
  for (let n = 0; n < TERMS - 1; n++) {
    w[UX + n] = n === 0 ? c[at + VX]! - wind.x : c[at + VX + n]!;
    w[UY + n] = n === 0 ? c[at + VY]! - wind.y : c[at + VY + n]!;
    if (aside) w[UZ + n] = n === 0 ? c[at + VZ]! - wind.z : c[at + VZ + n]!;
    let squares = 0;
    for (let i = 0; i <= n; i++) squares += w[UX + i]! * w[UX + n - i]! + w[UY + i]! * w[UY + n - i]!;
    if (aside) for (let i = 0; i <= n; i++) squares += w[UZ + i]! * w[UZ + n - i]!;
    w[SQUARE + n] = squares;
    if (n === 0) {
      w[PASSING] = Math.sqrt(squares);
      w[INVERSE] = 1 / c[at + VX]!;
    } else {
      let roots = 0;
      for (let i = 1; i < n; i++) roots += w[PASSING + i]! * w[PASSING + n - i]!;
      w[PASSING + n] = (squares - roots) / (2 * w[PASSING]!);
      let inverse = 0;
      for (let i = 1; i <= n; i++) inverse += c[at + VX + i]! * w[INVERSE + n - i]!;
      w[INVERSE + n] = -inverse * w[INVERSE]!;
    }
    let ratio = 0;
    for (let i = 0; i <= n; i++) ratio += w[PASSING + i]! * w[INVERSE + n - i]!;
    w[RATIO + n] = ratio;
    let along = 0;
    let up = 0;
    let rise = 0;
    for (let i = 0; i <= n; i++) {
      along += w[RATIO + i]! * w[UX + n - i]!;
      up += w[RATIO + i]! * w[UY + n - i]!;
      rise += c[at + VY + i]! * w[INVERSE + n - i]!;
    }
    const next = n + 1;
    c[at + T + next] = w[INVERSE + n]! / next;
    c[at + Y + next] = rise / next;
    c[at + VX + next] = (-k * along) / next;
    c[at + VY + next] = (-k * up - standardGravity * w[INVERSE + n]!) / next;
    if (!aside) continue;
    let right = 0;
    let drift = 0;
    for (let i = 0; i <= n; i++) {
      right += w[RATIO + i]! * w[UZ + n - i]!;
      drift += c[at + VZ + i]! * w[INVERSE + n - i]!;
    }
    c[at + Z + next] = drift / next;
    c[at + VZ + next] = (-k * right) / next;
  }
}
