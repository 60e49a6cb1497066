import { crossing } from '../flight/root.ts';
import { chanceInside, type Scatter } from './chanceInside.ts';
import { fQuantileUpper } from './distributions.ts';

/** How near the chance must come to the share. */
const NEAR = 1e-13;

/**
 * Radius of the circle that holds a given share of round, centred shots, per unit of their spread.
 *
 * @equation √(-2 ln(1 - q)); with ν degrees of freedom of the spread √(2 F), F = F_(1 - q)(2, ν)
 * @param share - q, share of the shots, between 0 and 1 [-]
 * @param degreesOfFreedom - ν, of a spread that is itself an estimate; left out for a spread that is known [-]
 * @returns radius per spread [-]
 * @validity round normal scatter about the circle's own centre; a share or a ν outside its range throws RangeError
 * @source grubbs-1964
 * @example roundCircle(0.5) // 1.1774100225
 */
export function roundCircle(share: number, degreesOfFreedom = Infinity): number {
  if (!(share > 0 && share < 1)) throw new RangeError('A share between 0 and 1 is needed.');
  if (degreesOfFreedom === Infinity) return Math.sqrt(-2 * Math.log1p(-share));
  return Math.sqrt(2 * fQuantileUpper(1 - share, 2, degreesOfFreedom));
}

/**
 * Radius of the circle about the aim that holds a given share of the shots of any scatter, round or oval, centred or not.
 *
 * @equation r with P(inside r) = q, by false position on chanceInside
 * @param share - q, share of the shots, between 0 and 1 [-]
 * @param scatter - spreads along the axes, offset of the centre and ν [record]
 * @returns r [m]
 * @validity as chanceInside; a share outside its range throws RangeError
 * @source own derivation
 * @example circleHolding(0.5, { spread: [3, 2], offset: { x: 1, y: 2 } }) // 3.615735401
 */
export function circleHolding(share: number, scatter: Scatter): number {
  const { spread, offset, degreesOfFreedom } = scatter;
  const round = roundCircle(share, degreesOfFreedom);
  const off = Math.hypot(offset.x, offset.y);
  if (off === 0 && spread[0] === spread[1]) return round * spread[0];
  const widest = 1.001 * (off + round * Math.max(...spread));
  return crossing((radius) => chanceInside(radius, scatter) - share, 0, widest, NEAR);
}
