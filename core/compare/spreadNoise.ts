import { c4, fQuantileUpper, MEAN_RADIUS_PER_SPREAD, momentsOf, tQuantile, axisVariance, type Point } from '../group/index.ts';

/**
 * How much larger or smaller the mean radius of a second group may come out without being believed: the stricter of two tests.
 *
 * @equation F interval of the spreads, R = √(π/2) s/c4: R (√F c4/c4' − 1) upwards, R (1 − c4/(c4' √F)) downwards; Levene: t √(Σ s²ᵢ/nᵢ) of the radii √(n/(n−1)) rᵢ; where their means do not differ by that, at least the difference seen
 * @param reference - places of the one group [m]
 * @param other - places of the other group [m]
 * @param larger - whether the other group came out larger [choice]
 * @returns half width of the noise on the mean radius of many, 95 % [m]
 * @validity two groups with a spread; the F test alone cries wolf on heavy tails, Levene's on few shots, so both must agree
 * @source levene-1960
 * @example Math.round(1000 * spreadNoise(exampleFletched.shots, exampleBare.shots, true)) // 22
 */
export function spreadNoise(reference: readonly Point[], other: readonly Point[], larger: boolean): number {
  const [d1, d2] = [2 * (reference.length - 1), 2 * (other.length - 1)];
  const [a, b] = [ofMany(reference, d1), ofMany(other, d2)];
  const few = c4(d1) / c4(d2);
  const byF = larger
    ? a * (Math.sqrt(fQuantileUpper(0.025, d2, d1)) * few - 1)
    : a * (1 - few / Math.sqrt(fQuantileUpper(0.025, d1, d2)));
  const levene = byLevene(radii(reference), radii(other), larger);
  // A hair more than what is seen: the caller works the same difference out in another order.
  return Math.max(byF, levene.noise, levene.finds ? 0 : Math.abs(b - a) * (1 + 1e-9));
}

const ofMany = (points: readonly Point[], df: number): number =>
  (MEAN_RADIUS_PER_SPREAD * Math.sqrt(axisVariance(momentsOf(points)))) / c4(df);

interface Radii {
  readonly n: number;
  readonly mean: number;
  /** Of the radii √(n/(n−1)) rᵢ, over n: what their mean is out by, squared [m²]. */
  readonly meanVariance: number;
}

function radii(points: readonly Point[]): Radii {
  const n = points.length;
  const { centre } = momentsOf(points);
  const freed = points.map(({ x, y }) => Math.sqrt(n / (n - 1)) * Math.hypot(x - centre.x, y - centre.y));
  const mean = freed.reduce((sum, radius) => sum + radius, 0) / n;
  return { n, mean, meanVariance: freed.reduce((sum, radius) => sum + (radius - mean) ** 2, 0) / (n - 1) / n };
}

function byLevene(a: Radii, b: Radii, larger: boolean): { noise: number; finds: boolean } {
  const variance = a.meanVariance + b.meanVariance;
  // Radii all alike say nothing against the F interval.
  if (variance === 0) return { noise: 0, finds: true };
  const df = variance ** 2 / (a.meanVariance ** 2 / (a.n - 1) + b.meanVariance ** 2 / (b.n - 1));
  const noise = tQuantile(0.975, df) * Math.sqrt(variance);
  return { noise, finds: (larger ? b.mean - a.mean : a.mean - b.mean) > noise };
}
