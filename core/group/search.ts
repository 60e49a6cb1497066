/**
 * The least whole number for which something that stays true once it is true has become true.
 *
 * @equation doubling until true, then halving the gap
 * @param from - where the search begins [-]
 * @param most - where it ends at the latest [-]
 * @param holds - false below the answer, true from it on [choice]
 * @returns the least whole number that holds, or the last one when none does [-]
 * @validity whole numbers; a condition that turns false again gives one of its crossings
 * @source own derivation
 * @example leastWhole(1, 1000, (n) => n * n > 50) // 8
 */
export function leastWhole(from: number, most: number, holds: (n: number) => boolean): number {
  if (holds(from)) return from;
  let low = from;
  let step = 1;
  while (low + step < most && !holds(low + step)) {
    low += step;
    step *= 2;
  }
  let high = Math.min(most, low + step);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
