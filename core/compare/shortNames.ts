/**
 * What tells two names apart: the parts between commas with which both begin are left out.
 *
 * @equation drop the leading parts that are alike, but never the last part of either
 * @param first - the one name [text]
 * @param second - the other name [text]
 * @returns both, shortened [list]
 * @validity any names; names without a comma stay whole
 * @source own derivation
 * @example shortNames('Tobin, 110 gr', 'Tobin, 85 gr') // ["110 gr", "85 gr"]
 */
export function shortNames(first: string, second: string): readonly [string, string] {
  const [a, b] = [first.split(', '), second.split(', ')];
  let shared = 0;
  while (shared < Math.min(a.length, b.length) - 1 && a[shared] === b[shared]) shared++;
  return [a.slice(shared).join(', '), b.slice(shared).join(', ')];
}
