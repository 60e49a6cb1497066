/**
 * Numbers that look random and are the same for the same seed.
 *
 * @equation mulberry32 (public domain): a counter in steps of 0x6d2b79f5, mixed by two multiplications
 * @param seed - any whole number [-]
 * @returns a source of numbers from 0 to 1, below 1 [function]
 * @validity for simulations, not for secrets; repeats after 2³² numbers
 * @source from memory
 * @example seeded(1)() === seeded(1)() // true
 */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
