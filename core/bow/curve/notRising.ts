import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';
import type { ReadingFlag } from './flags.ts';
import type { ReadPoint } from './rows.ts';

/**
 * The fewest readings that stand in the way of a curve that rises all the way, each with the one that it contradicts.
 *
 * @equation the points outside a longest run of forces that never falls
 * @param points - what was read, in order of the draws [list]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns one flag for each reading of such a point; none when the forces never fall [list]
 * @validity finger bows, whose weight grows with the draw; a compound's falls by design and is not asked
 * @source own derivation
 * @example notRising([], defaultPreferences.units) // []
 */
export function notRising(points: readonly ReadPoint[], units: UnitChoice): readonly ReadingFlag[] {
  if (points.every(({ force }, i) => force >= (points[i - 1]?.force ?? 0))) return [];
  const kept = longestRun(points.map(({ force }) => force));
  const text = ({ force, draw }: ReadPoint) =>
    `${textQuantity(force, 'weight', units)} at ${textQuantity(draw, 'length', units)}`;
  return points.flatMap((point, i) => {
    if (kept.has(i)) return [];
    const more = points.findLast((other, at) => at < i && other.force > point.force);
    const less = points.find((other, at) => at > i && other.force < point.force);
    const [word, other] = more === undefined ? (['more', less] as const) : (['less', more] as const);
    const sentence = `${text(point)} is ${word} than ${text(other ?? point)}: read both again. Until then the curve keeps both and its band holds them.`;
    return point.rows.map((index): ReadingFlag => ({ index, code: 'not rising', sentence }));
  });
}

/**
 * A longest run of values that never falls, out of a list.
 *
 * @equation the most places i < j < … with v_i ≤ v_j ≤ …; of two as many, the one whose later entries come earlier
 * @param values - the values, in order [list]
 * @returns their places [list]
 * @validity finite values
 * @source own derivation
 * @example [...longestRun([1, 5, 2, 3])] // [3,2,0]
 */
export function longestRun(values: readonly number[]): ReadonlySet<number> {
  const length: number[] = [];
  const before: number[] = [];
  for (const [i, value] of values.entries()) {
    let [best, from] = [0, -1];
    for (let j = 0; j < i; j++) if ((values[j] ?? 0) <= value && (length[j] ?? 0) > best) [best, from] = [length[j] ?? 0, j];
    length.push(best + 1);
    before.push(from);
  }
  const kept = new Set<number>();
  for (let at = length.indexOf(Math.max(...length)); at >= 0; at = before[at] ?? -1) kept.add(at);
  return kept;
}
