/** How far a figure of the set's arrows ranges, in the figure's unit [SI]. */
export interface Spread {
  /** Arrows that have the figure. */
  readonly n: number;
  readonly mean: number;
  /** Standard deviation with n − 1; null for one arrow. */
  readonly sd: number | null;
  readonly low: number;
  readonly high: number;
  /** Half of the arrows lie on either side of it. */
  readonly median: number;
}

/**
 * Mean, standard deviation, ends and median of the figures that are known.
 *
 * @equation x̄ = Σx/n, s² = Σ(x − x̄)²/(n − 1)
 * @param figures - x, one an arrow [SI]
 * @returns the spread, null without any figure [record]
 * @validity finite figures
 * @source nist-strd
 * @example spreadOf([1, 2, 6]).median // 2
 */
export function spreadOf(figures: readonly number[]): Spread | null {
  const sorted = figures.toSorted((a, b) => a - b);
  const [low] = sorted;
  const high = sorted.at(-1);
  if (low === undefined || high === undefined) return null;
  const n = sorted.length;
  // Counted from the least, so that arrows which differ by little lose no figures.
  const mean = low + sorted.reduce((sum, x) => sum + (x - low), 0) / n;
  const sd = n < 2 ? null : Math.sqrt(sorted.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (n - 1));
  const half = Math.floor(n / 2);
  const median = n % 2 === 1 ? (sorted[half] ?? low) : ((sorted[half - 1] ?? low) + (sorted[half] ?? high)) / 2;
  return { n, mean, sd, low, high, median };
}
