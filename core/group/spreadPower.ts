import { tQuantile } from './distributions.ts';
import { leastWhole } from './search.ts';

const MOST = 1e6;
const FEWEST = 3;
/** A difference so gross needs no test: what is not found even then is not promised. */
const GROSS = 10;

/** Squared variation of a length of two coordinates (Rayleigh) and of one (half normal). */
const VARIATION = { 1: Math.PI / 2 - 1, 2: 4 / Math.PI - 1 } as const;

/** By so much the noise of few lengths is less than the two points of t put together say. */
const less = (pairs: number, axes: 1 | 2): number => 1 - (axes === 2 ? 0.42 / (pairs + 4) : 0.8 / (pairs + 1.7));

/**
 * The mildest tightening that the t test of Helmert lengths finds with a wanted chance.
 *
 * @equation r = 1/R; R - 1 = κ k (t_{1-α/2} √E + t_power √V): m = n - 1 lengths, ν = m1 + m2 - 2, V = R²/m2 + 1/m1, E = ((m2 - 1) R² + m1 - 1)/ν (1/m1 + 1/m2) as the pooled test takes it, k² = 4/π - 1, with one coordinate π/2 - 1; κ = 1 - 0.42/(h + 4), with one 1 - 0.8/(h + 1.7), h = 2/(1/m1 + 1/m2), by simulation
 * @param n1 - n1, shots in the new group, ≥ 3 [-]
 * @param n2 - n2, shots in the old, ≥ 3 [-]
 * @param power - the wanted chance, 0.5 to 0.95 [-]
 * @param alpha - α, two-sided [-]
 * @param axes - 2 where a length is made of height and side, 1 where of one of them [choice]
 * @returns r, true new spread over old, below 1; null where not even a tenth of the spread is found so often [-]
 * @validity round normal shots, power 0.8 and α 0.025 and 0.05: what it promises four times in five was found in .77 to .83 for 3 to 48 shots each (core/SCIENCE.md); about so elsewhere. An argument outside throws RangeError
 * @source own derivation
 * @example ratioTold(4, 4, 0.8, 0.05, 2) // null
 */
export function ratioTold(n1: number, n2: number, power: number, alpha: number, axes: 1 | 2): number | null {
  if (!(n1 >= FEWEST && n2 >= FEWEST)) throw new RangeError('At least three shots in each group are needed.');
  if (!(alpha > 0 && alpha < 0.5 && power >= 0.5 && power <= 0.95))
    throw new RangeError('0 < alpha < 0.5 <= power <= 0.95 is needed.');
  const [m1, m2] = [n1 - 1, n2 - 1];
  const nu = m1 + m2 - 2;
  const noise = less(2 / (1 / m1 + 1 / m2), axes) * Math.sqrt(VARIATION[axes]);
  const [wanted, chance] = [tQuantile(1 - alpha / 2, nu), tQuantile(power, nu)];
  const shown = (ratio: number): boolean => {
    const pooled = (((m2 - 1) * ratio ** 2 + m1 - 1) / nu) * (1 / m1 + 1 / m2);
    const own = ratio ** 2 / m2 + 1 / m1;
    return ratio - 1 >= noise * (wanted * Math.sqrt(pooled) + chance * Math.sqrt(own));
  };
  if (!shown(GROSS)) return null;
  let [low, high] = [1, GROSS];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (shown(middle)) high = middle;
    else low = middle;
  }
  return 2 / (low + high);
}

/**
 * Arrows needed in each of two groups for the t test of Helmert lengths to find a change of spread.
 *
 * @equation the least n whose ratioTold is as near 1 as the ratio
 * @param ratio - r, one true spread over the other, > 0 and not 1 [-]
 * @param power - the wanted chance of finding it, 0.5 to 0.95 [-]
 * @param alpha - α, two-sided [-]
 * @param axes - 2 where a length is made of height and side, 1 where of one of them [choice]
 * @returns n in each group, at least 3 and at most a million [-]
 * @validity as ratioTold; a ratio and its inverse need the same, and one below a tenth as much as a tenth
 * @source own derivation
 * @example arrowsToTell(0.5, 0.8, 0.05, 2) // 13
 */
export function arrowsToTell(ratio: number, power: number, alpha: number, axes: 1 | 2): number {
  if (!(ratio > 0 && ratio !== 1)) throw new RangeError('A ratio above 0 that is not 1 is needed.');
  const sought = Math.max(1 / GROSS, Math.min(ratio, 1 / ratio));
  return leastWhole(FEWEST, MOST, (n) => (ratioTold(n, n, power, alpha, axes) ?? 0) >= sought);
}
