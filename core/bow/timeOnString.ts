import { requirePositive } from '../model/positive.ts';
import type { ForceOfDraw } from './energy.ts';

/** How the arrow leaves: after which time and how fast. */
export interface Loose {
  readonly time: number;
  readonly speed: number;
}

/**
 * Time on the string and speed of an arrow that a straight force-draw line drives.
 *
 * @equation t = (π/2) √((m + K) d / (η F)), v = √(η F d / (m + K))
 * @param weight - F, weight at full draw [N]
 * @param stroke - d, power stroke [m]
 * @param movingMass - m + K, arrow and virtual mass [kg]
 * @param hysteresis - η [-]
 * @returns t [s] and v [m/s] [record]
 * @validity a force in proportion to the draw from the brace height; RangeError for anything that is not positive and finite
 * @source own derivation
 * @example looseFromLine(180, 0.5, 0.025, 1).speed // 60
 */
export function looseFromLine(weight: number, stroke: number, movingMass: number, hysteresis: number): Loose {
  requirePositive({ weight, stroke, movingMass, hysteresis });
  return {
    time: (Math.PI / 2) * Math.sqrt((movingMass * stroke) / (hysteresis * weight)),
    speed: Math.sqrt((hysteresis * weight * stroke) / movingMass),
  };
}

const INTERVALS = 256;

/**
 * Time on the string and speed of an arrow that a given force-draw curve drives.
 *
 * @equation (m + K) u″ = −η F(u), from rest at u = d to u = 0
 * @param force - F(u), force [N] against the draw from the brace height [m] [function]
 * @param stroke - d, power stroke [m]
 * @param movingMass - m + K, arrow and virtual mass [kg]
 * @param hysteresis - η [-]
 * @returns t [s] and v [m/s] [record]
 * @validity a smooth curve that pulls at full draw and gives energy all the way; RangeError where it does not, and for anything that is not positive and finite
 * @source own derivation
 * @example looseFromCurve((draw) => 360 * draw, 0.5, 0.025, 1).speed // 60
 */
export function looseFromCurve(force: ForceOfDraw, stroke: number, movingMass: number, hysteresis: number): Loose {
  requirePositive({ stroke, movingMass, hysteresis, 'the force at full draw': force(stroke) });
  // With u = d (1 - s^2) the start from rest is no longer singular: ds/dt is finite at s = 0. Energy gives the speed at every place,
  // so one pass of Simpson's rule over s, fourth order, gives energy and time together.
  const h = 1 / INTERVALS;
  const power = (s: number): number => force(stroke * (1 - s * s)) * 2 * stroke * s;
  const speedAfter = (work: number): number => {
    if (!(work > 0 && work < Infinity))
      throw new RangeError(`the work done by the curve must be a positive finite number, not ${work}.`);
    return Math.sqrt((2 * hysteresis * work) / movingMass);
  };
  let work = 0;
  let time = 0;
  let powerBefore = 0;
  let slowBefore = Math.sqrt((2 * stroke * movingMass) / (hysteresis * force(stroke)));
  for (let i = 0; i < INTERVALS; i++) {
    const middle = (i + 0.5) * h;
    const end = (i + 1) * h;
    const powerMiddle = power(middle);
    const powerEnd = power(end);
    const workMiddle = work + (h / 24) * (5 * powerBefore + 8 * powerMiddle - powerEnd);
    work += (h / 6) * (powerBefore + 4 * powerMiddle + powerEnd);
    const slowMiddle = (2 * stroke * middle) / speedAfter(workMiddle);
    const slowEnd = (2 * stroke * end) / speedAfter(work);
    time += (h / 6) * (slowBefore + 4 * slowMiddle + slowEnd);
    powerBefore = powerEnd;
    slowBefore = slowEnd;
  }
  return { time, speed: speedAfter(work) };
}
