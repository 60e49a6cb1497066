const golden = (Math.sqrt(5) - 1) / 2;

/**
 * Find where a function with a single peak is greatest, by golden section.
 *
 * @equation keep the part that holds the greater of two inner points, each (√5−1)/2 from an end
 * @param f - the function, with one peak between the ends [function]
 * @param from - lower end [-]
 * @param to - upper end [-]
 * @param tolerance - how near the peak must be known, > 0 [-]
 * @returns the place of the peak [-]
 * @validity a peak at an end is found as that end within the tolerance; below about 1e-8 of the scale the tolerance is lost in rounding
 * @source kiefer-1953
 * @example Math.round(1000 * peak((x) => -((x - 2) ** 2), 0, 5, 1e-5)) // 2000
 */
export function peak(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  let [low, high] = [from, to];
  let [left, right] = [high - golden * (high - low), low + golden * (high - low)];
  let [atLeft, atRight] = [f(left), f(right)];
  while (high - low > 2 * tolerance)
    if (atLeft < atRight) {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + golden * (high - low);
      atRight = f(right);
    } else {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - golden * (high - low);
      atLeft = f(left);
    }
  return (low + high) / 2;
}
