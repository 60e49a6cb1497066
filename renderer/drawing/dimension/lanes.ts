/** Something that wants to stand at a place along a lane, and how much of the lane it fills. */
export interface Wish {
  /** Where its middle would best stand. */
  readonly at: number;
  readonly size: number;
}

/** Where it stands now, and whether it had to move so far that a leader must join it to its place. */
export interface Place {
  readonly at: number;
  readonly from: number;
  readonly to: number;
  readonly moved: boolean;
}

/** A move smaller than this needs no leader: the eye joins them by itself [px]. */
const UNSEEN = 2;

/**
 * Places labels along a lane: within its bounds first, then in the order they were given, then with the least movement (least squares). When
 * they cannot all fit they are packed from the lane's start and the last ones leave it: the caller sees that by the last `to`.
 */
export function lane(wishes: readonly Wish[], low: number, high: number, gap = 0): readonly Place[] {
  // With the labels before it taken off, each wish is one number, and "in order without touching" is "not falling".
  let before = 0;
  const starts = wishes.map(({ size }) => (before += size + gap) - size - gap);
  const room = high - low - Math.max(0, before - gap);
  const wanted = notFalling(wishes.map(({ at, size }, i) => at - size / 2 - (starts[i] ?? 0)));
  return wishes.map(({ at, size }, i) => {
    // Cutting the answer off at the bounds leaves it the least movement that keeps them.
    const from = low + Math.min(Math.max(0, (wanted[i] ?? 0) - low), Math.max(0, room)) + (starts[i] ?? 0);
    return { at: from + size / 2, from, to: from + size, moved: Math.abs(from + size / 2 - at) > UNSEEN };
  });
}

/** The sequence that never falls and is nearest to the given one: neighbours that fall are pooled at their mean. */
function notFalling(values: readonly number[]): readonly number[] {
  const pools: { sum: number; count: number }[] = [];
  const mean = (pool: { sum: number; count: number } | undefined) => (pool === undefined ? -Infinity : pool.sum / pool.count);
  for (const value of values) {
    let pool = { sum: value, count: 1 };
    while (mean(pools.at(-1)) > mean(pool)) {
      const last = pools.pop() ?? { sum: 0, count: 0 };
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
    }
    pools.push(pool);
  }
  return pools.flatMap((pool) => Array.from({ length: pool.count }, () => mean(pool)));
}
