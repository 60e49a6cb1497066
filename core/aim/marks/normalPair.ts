/**
 * Two independent normal numbers out of even ones.
 *
 * @equation (u, v) even on the unit disc, s = u² + v²; (u, v) √(−2 ln s / s)
 * @param random - numbers from 0 to 1, below 1 [function]
 * @returns two numbers of mean 0 and standard deviation 1 [list]
 * @validity throws RangeError when a hundred pairs in a row miss the disc: then they are not random
 * @source marsaglia-bray-1964
 * @example normalPair(() => 0.75).map((z) => z.toFixed(6)) // ["0.832555","0.832555"]
 */
export function normalPair(random: () => number): [number, number] {
  for (let tries = 0; tries < 100; tries++) {
    const [u, v] = [2 * random() - 1, 2 * random() - 1];
    const s = u * u + v * v;
    if (s > 0 && s < 1) {
      const by = Math.sqrt((-2 * Math.log(s)) / s);
      return [u * by, v * by];
    }
  }
  throw new RangeError('Random numbers from 0 to 1 were expected.');
}
