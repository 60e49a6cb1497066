/** A numbered thing with two figures, each in units of its tolerance [-]. */
export interface Placed {
  readonly number: number;
  readonly x: number;
  readonly y: number;
}

/** Two costs nearer than this are one: they differ by rounding. */
const SAME = 1e-9;

/**
 * The count of things that lie closest together: the sum of their two ranges is the least that there is.
 *
 * Two ranges make a box, and the least box is bounded by things. So it is enough to take every pair of x as its sides, and within them each
 * run of `count` neighbours in y: some n³/2 steps in place of all choices. Any `count` things of a least box have its cost, so the lowest
 * numbers in it are as good as any.
 *
 * @equation least of (x_max − x_min) + (y_max − y_min) over all choices of count; among equals the choice whose sorted numbers come first
 * @param things - with their figures; at least count of them [list]
 * @param count - how many are wanted [-]
 * @returns their numbers, sorted [list]
 * @validity finite figures; no numbers when there are fewer things than wanted
 * @source own derivation
 * @example closestBox([{ number: 1, x: 0, y: 0 }, { number: 2, x: 3, y: 0 }, { number: 3, x: 2, y: 0.5 }], 2) // [2,3]
 */
export function closestBox(things: readonly Placed[], count: number): readonly number[] {
  let least = Number.POSITIVE_INFINITY;
  boxes(things, count, (cost) => {
    least = Math.min(least, cost);
    return least;
  });
  let best: readonly number[] = [];
  boxes(things, count, (cost, inside) => {
    if (cost <= least + SAME) {
      const numbers = inside()
        .map(({ number }) => number)
        .toSorted((a, b) => a - b)
        .slice(0, count);
      if (best.length === 0 || comesBefore(numbers, best)) best = numbers;
    }
    return least + SAME;
  });
  return best;
}

/** Every box that may be least; `see` answers with the cost beyond which a box is not worth a look. */
function boxes(things: readonly Placed[], count: number, see: (cost: number, inside: () => readonly Placed[]) => number): void {
  const byHeight = things.toSorted((a, b) => a.y - b.y || a.number - b.number);
  const sides = [...new Set(things.map(({ x }) => x))].toSorted((a, b) => a - b);
  let limit = Number.POSITIVE_INFINITY;
  for (const [from, left] of sides.entries()) {
    for (const right of sides.slice(from)) {
      if (right - left > limit) break;
      const between = byHeight.filter(({ x }) => x >= left && x <= right);
      for (let start = 0; start + count <= between.length; start++) {
        const low = between[start]?.y ?? 0;
        const high = between[start + count - 1]?.y ?? 0;
        limit = see(right - left + high - low, () => between.filter(({ y }) => y >= low && y <= high));
      }
    }
  }
}

function comesBefore(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((number, i) => number !== b[i]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}
