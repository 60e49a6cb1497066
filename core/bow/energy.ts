import { requirePositive } from '../model/positive.ts';

/**
 * Energy stored in a drawn bow, from its weight at full draw and the fullness of its force-draw curve.
 *
 * @equation E = φ F d
 * @param weight - F, weight at full draw [N]
 * @param stroke - d, power stroke [m]
 * @param fullness - φ, area under the curve over F d: .5 for a straight line, .581 typical of recurves [-]
 * @returns E, stored energy [J]
 * @validity by definition of φ; RangeError for anything that is not positive and finite
 * @source tuijn-kooi-1992
 * @example storedEnergy(200, 0.5, 0.58) // 58
 */
export function storedEnergy(weight: number, stroke: number, fullness: number): number {
  requirePositive({ weight, stroke, fullness });
  return fullness * weight * stroke;
}

/** Force at the string [N] against the draw from the brace height [m]. */
export type ForceOfDraw = (draw: number) => number;

/**
 * The simplest force-draw curve of a given fullness: a parabola from nothing at the brace height to the full-draw weight.
 *
 * @equation F(u) = F (a u/d + c (u/d)²), a = 6φ − 2, c = 3 − 6φ
 * @param weight - F, weight at full draw [N]
 * @param stroke - d, power stroke [m]
 * @param fullness - φ, from 1/3 to 2/3 [-]
 * @returns F(u), a function of the draw from the brace height [m] that gives the force [N] [function]
 * @validity outside 1/3 to 2/3 the parabola would not rise all the way: RangeError, as for anything that is not positive and finite
 * @source own derivation
 * @example forceDrawCurve(180, 0.5, 0.58)(0.5) // 180
 */
export function forceDrawCurve(weight: number, stroke: number, fullness: number): ForceOfDraw {
  requirePositive({ weight, stroke, fullness });
  if (fullness < 1 / 3 || fullness > 2 / 3) throw new RangeError(`fullness must lie between 1/3 and 2/3, not ${fullness}.`);
  const a = 6 * fullness - 2;
  const c = 3 - 6 * fullness;
  return (draw) => {
    const x = draw / stroke;
    return weight * x * (a + c * x);
  };
}
