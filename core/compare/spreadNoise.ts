import { fQuantileUpper, momentsOf, tQuantile, type Point } from '../group/index.ts';

/**
 * How much larger or smaller the mean radius of a second group may come out without being believed: the stricter of two tests.
 *
 * @equation F interval of the spreads: r (√F − 1) upwards, r (1 − 1/√F) downwards; Levene: t √(Σ s²ᵢ/nᵢ) of the radii √(n/(n−1)) rᵢ
 * @param reference - places of the one group [m]
 * @param other - places of the other group [m]
 * @param larger - whether the other group came out larger [choice]
 * @returns half width of the noise on the mean radius, 95 % [m]
 * @validity two groups with a spread; the F test alone cries wolf on heavy tails, Levene's on few shots, so both must agree
 * @source levene-1960
 * @example Math.round(1000 * spreadNoise(exampleFletched.shots, exampleBare.shots, true)) // 21
 */
export function spreadNoise(reference: readonly Point[], other: readonly Point[], larger: boolean): number {
  const [a, b] = [radii(reference), radii(other)];
  const [d1, d2] = [2 * (reference.length - 1), 2 * (other.length - 1)];
  const byF = larger
    ? a.mean * (Math.sqrt(fQuantileUpper(0.025, d2, d1)) - 1)
    : a.mean * (1 - 1 / Math.sqrt(fQuantileUpper(0.025, d1, d2)));
  return Math.max(byF, byLevene(a, b));
}

interface Radii {
  readonly n: number;
  readonly mean: number;
  /** Of the radii √(n/(n−1)) rᵢ, over n: what their mean is out by, squared [m²]. */
  readonly meanVariance: number;
}

function radii(points: readonly Point[]): Radii {
  const n = points.length;
  const { centre } = momentsOf(points);
  const plain = points.map(({ x, y }) => Math.hypot(x - centre.x, y - centre.y));
  const mean = plain.reduce((sum, radius) => sum + radius, 0) / n;
  const variance = plain.reduce((sum, radius) => sum + (radius - mean) ** 2, 0) / (n - 1);
  return { n, mean, meanVariance: (variance * n) / (n - 1) / n };
}

function byLevene(a: Radii, b: Radii): number {
  const variance = a.meanVariance + b.meanVariance;
  // Radii all alike say nothing against the F interval.
  if (variance === 0) return 0;
  const df = variance ** 2 / (a.meanVariance ** 2 / (a.n - 1) + b.meanVariance ** 2 / (b.n - 1));
  return tQuantile(0.975, df) * Math.sqrt(variance);
}
