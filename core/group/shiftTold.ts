import { smallestShiftFound } from './power.ts';

const FEWEST = 3;

/**
 * The smallest shift that the default test of two centres finds with a wanted chance.
 *
 * @equation d of smallestShiftFound times 1 + B (1 + 9.5 x²/√m)/(m - 1)², m shots in the smaller group, x = 1 - m/M by the larger, B = 0.47 + 0.21 log2(0.05/α), by simulation: what few shots cost a test that does not know that they are round
 * @param n1 - n1, shots in one group, ≥ 2 [-]
 * @param n2 - n2, shots in the other, ≥ 2 [-]
 * @param power - the wanted chance of finding it, above α, at most 0.9999 [-]
 * @param alpha - α, false alarms allowed, at most 0.05 [-]
 * @returns d, shift per spread of one axis; null where one group has two shots, which show next to nothing: 9 spreads and more [-]
 * @validity round normal groups of one spread, power 0.8 and α 0.025 and 0.05: what it promises four times in five was found in .77 to .83 with 3 to 12 shots (core/SCIENCE.md). An argument outside throws RangeError
 * @source own derivation
 * @example shiftTold(3, 2, 0.8, 0.05) // null
 */
export function shiftTold(n1: number, n2: number, power: number, alpha: number): number | null {
  const d = smallestShiftFound(n1, n2, power, alpha);
  if (alpha > 0.05) throw new RangeError('An alpha of at most 0.05 is needed.');
  const [fewer, more] = [Math.min(n1, n2), Math.max(n1, n2)];
  if (fewer < FEWEST) return null;
  const b = 0.47 + 0.21 * Math.log2(0.05 / alpha);
  return d * (1 + (b * (1 + (9.5 * (1 - fewer / more) ** 2) / Math.sqrt(fewer))) / (fewer - 1) ** 2);
}
