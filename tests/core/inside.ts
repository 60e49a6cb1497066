import fc from 'fast-check';

/** Evenly over a range, its ends among them: drawn as doubles, numbers of a range that holds nought crowd about nought. */
export const inside = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1e6 }).map((n) => min + ((max - min) * n) / 1e6);
