import { crossing } from '../flight/root.ts';
import { chiSquareQuantile } from './distributions.ts';
import { c4, MEAN_RADIUS_PER_SPREAD, type Interval } from './measures.ts';
import type { Point } from './points.ts';

/** What a group of n round shots shows on average, per unit of the spread of one axis. */
export interface SmallGroup {
  readonly n: number;
  /** Mean extreme spread, and its standard deviation. */
  readonly extremeSpread: number;
  readonly extremeSpreadSd: number;
  /** Mean range of one axis (d2), and its standard deviation (d3). */
  readonly range: number;
  readonly rangeSd: number;
}

/**
 * From 2 to 20 shots. Extreme spread: two exactly (√π, √(4 - π)), three by closed form, the rest by simulation with standard errors below 2e-5 in the
 * mean and 2e-4 in its deviation. Ranges: by quadrature; they agree with d2 and d3 of the tables (montgomery-2013, from memory). All computed independently.
 */
const rows: readonly (readonly [number, number, number, number, number])[] = [
  [2, 1.7724538509, 0.9265027504, 1.1283791671, 0.8525024664],
  [3, 2.4088012403, 0.8920497721, 1.6925687506, 0.888368004],
  [4, 2.793404, 0.85597, 2.058750746, 0.8798082028],
  [5, 3.065882, 0.82691, 2.3259289473, 0.8640819411],
  [6, 3.275206, 0.80344, 2.5344127212, 0.8480396861],
  [7, 3.4442, 0.784, 2.7043567512, 0.8332053356],
  [8, 3.585359, 0.76778, 2.8472006121, 0.8198314898],
  [9, 3.7062, 0.7537, 2.9700263244, 0.8078342746],
  [10, 3.811589, 0.74147, 3.0775054617, 0.7970506735],
  [11, 3.9049, 0.7307, 3.1728727038, 0.7873146205],
  [12, 3.988368, 0.72118, 3.2584552797, 0.7784783412],
  [13, 4.0639, 0.7126, 3.3359803541, 0.7704162021],
  [14, 4.1328, 0.7048, 3.4067631082, 0.7630230956],
  [15, 4.196, 0.6976, 3.4718268899, 0.7562114297],
  [16, 4.254502, 0.69096, 3.5319827861, 0.7499080894],
  [17, 4.3087, 0.6851, 3.587883962, 0.744051784],
  [18, 4.3593, 0.6795, 3.640063758, 0.7385908534],
  [19, 4.4067, 0.6742, 3.6889630232, 0.7334814955],
  [20, 4.451231, 0.66952, 3.7349501196, 0.7286863457],
];

/** The table by number of shots. */
export const smallGroups: readonly SmallGroup[] = rows.map(([n, extremeSpread, extremeSpreadSd, range, rangeSd]) => ({
  n,
  extremeSpread,
  extremeSpreadSd,
  range,
  rangeSd,
}));

/** A figure of one group beside the spread that it implies, with 95 % interval [m]. */
export interface Implied {
  readonly measured: number;
  readonly spread: number;
  readonly spreadInterval: Interval;
}

/**
 * Mean radius that n round shots show about their own centre, on average, per unit of the spread of one axis.
 *
 * @equation √(π/2) √((n - 1)/n)
 * @param n - n, shots, ≥ 2 [-]
 * @returns mean radius per spread [-]
 * @validity round normal shots; fewer than two throw RangeError
 * @source own derivation
 * @example expectedMeanRadius(2) // 0.886226925452758
 */
export function expectedMeanRadius(n: number): number {
  if (!(n >= 2)) throw new RangeError('At least two shots are needed.');
  return MEAN_RADIUS_PER_SPREAD * Math.sqrt((n - 1) / n);
}

/**
 * Spread of one axis that an extreme spread implies, for those who wrote down nothing else.
 *
 * @equation σ = ES/E_n; interval by a chi law of the same mean and coefficient of variation (Patnaik)
 * @param measured - ES, the two shots farthest apart, > 0 [m]
 * @param n - n, shots, 2 to 20 [-]
 * @returns the spread with its 95 % interval; null above 20 shots, where the figure is too poor to use [record]
 * @validity round normal shots, none left out; ends within 3 % of the exact ones; a figure that is not positive or fewer than two shots throw RangeError
 * @source patnaik-1950
 * @example spreadFromExtremeSpread(0.17724538509, 2).spread // 0.1
 */
export function spreadFromExtremeSpread(measured: number, n: number): Implied | null {
  const row = rowOf(measured, n);
  return row === undefined ? null : implied(measured, row.extremeSpread, row.extremeSpreadSd);
}

/**
 * Spread of one axis that a figure of merit implies.
 *
 * @equation FOM = (range of x + range of y)/2, σ = FOM/d2; interval by a chi law of the same mean and of deviation d3/√2 (Patnaik)
 * @param measured - FOM, > 0 [m]
 * @param n - n, shots, 2 to 20 [-]
 * @returns the spread with its 95 % interval; null above 20 shots, where the figure is too poor to use [record]
 * @validity round normal shots, none left out; ends within 3 % of the exact ones; a figure that is not positive or fewer than two shots throw RangeError
 * @source patnaik-1950
 * @example spreadFromFigureOfMerit(0.11283791671, 2).spread // 0.1
 */
export function spreadFromFigureOfMerit(measured: number, n: number): Implied | null {
  const row = rowOf(measured, n);
  return row === undefined ? null : implied(measured, row.range, row.rangeSd / Math.SQRT2);
}

/**
 * Figure of merit of a group: the mean of its width and its height.
 *
 * @equation ((max x - min x) + (max y - min y))/2
 * @param points - places of the shots [m]
 * @returns figure of merit [m]
 * @validity finite places; 0 for none
 * @source grubbs-1964
 * @example figureOfMerit([{ x: 0, y: 0 }, { x: 0.03, y: 0.01 }]) // 0.02
 */
export function figureOfMerit(points: readonly Point[]): number {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return points.length === 0 ? 0 : (right - left + high - low) / 2;
}

function rowOf(measured: number, n: number): SmallGroup | undefined {
  if (!(measured > 0 && Number.isFinite(measured) && n >= 2))
    throw new RangeError('A figure above 0 of two shots or more is needed.');
  return smallGroups.find((row) => row.n === n);
}

/** The ν at which √(χ²/ν) varies, per unit of its mean, as the figure does. */
function sameVariation(variation: number): number {
  const excess = (logDf: number): number => Math.sqrt(1 / c4(Math.exp(logDf)) ** 2 - 1) - variation;
  return Math.exp(crossing(excess, 0, 6, 1e-12));
}

function implied(measured: number, mean: number, sd: number): Implied {
  const nu = sameVariation(sd / mean);
  const unit = (measured / mean) * c4(nu) * Math.sqrt(nu);
  return {
    measured,
    spread: measured / mean,
    spreadInterval: [unit / Math.sqrt(chiSquareQuantile(0.975, nu)), unit / Math.sqrt(chiSquareQuantile(0.025, nu))],
  };
}
