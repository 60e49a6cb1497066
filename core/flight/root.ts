/**
 * Find where a function crosses nought, by false position with the Illinois rule.
 *
 * @equation x = (a f(b) − b f(a)) / (f(b) − f(a)); when one end stays twice, its value is halved
 * @param f - the function, continuous [function]
 * @param from - one end, where f has one sign or is nought [-]
 * @param to - the other end, where f has the other sign or is nought [-]
 * @param tolerance - how near to nought f must come [-]
 * @returns x, the crossing [-]
 * @validity throws RangeError when f has the same sign at both ends; ends early once the bracket is as narrow as numbers allow
 * @source dowell-1971
 * @example crossing((x) => x * x - 2, 0, 2, 1e-14) // 1.4142135623730951
 */
export function crossing(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (Math.abs(fa) <= tolerance) return a;
  if (Math.abs(fb) <= tolerance) return b;
  if (!(fa * fb < 0)) throw new RangeError('The function does not change its sign between the two ends.');
  for (;;) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (!(Math.abs(fx) > tolerance) || Math.abs(b - a) <= 4 * Number.EPSILON * Math.abs(b) || x === a || x === b) return x;
    if (fx * fb < 0) {
      a = b;
      fa = fb;
    } else fa /= 2;
    b = x;
    fb = fx;
  }
}
