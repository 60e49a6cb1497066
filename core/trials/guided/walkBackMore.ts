import type { WalkBackDistance } from '../../group/index.ts';
import type { TrialReading } from './types.ts';

/**
 * How many more arrows a walk-back wants.
 *
 * @equation nothing read yet: three arrows from each of as many distances as are missing to five; a line not told: as many again, at least a dozen
 * @param readings - what was shot; null when it was read and did not tell [list]
 * @param arrows - arrows shot so far, for a line that is not told [-]
 * @returns the count and the sentence [record]
 * @validity a plan, not a promise
 * @source own derivation
 * @example walkBackMore(null, 18).arrows // 18
 */
export function walkBackMore(readings: readonly WalkBackDistance[] | null, arrows = 0): NonNullable<TrialReading['more']> {
  if (readings === null) {
    const again = Math.max(12, arrows);
    return { arrows: again, text: `About ${again} more, from the same distances.` };
  }
  const shot = new Set(readings.filter(({ offsets }) => offsets.length > 0).map(({ distance }) => distance)).size;
  const missing = Math.max(1, 5 - shot);
  return {
    arrows: 3 * missing,
    text: `Three arrows from each of ${missing} more ${missing === 1 ? 'distance' : 'distances'}, better five or six in all.`,
  };
}
