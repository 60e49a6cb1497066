/** How a safety figure stands. Nothing here is ever called safe: in range means that this one rule found nothing. */
export type SafetyLevel = 'stop' | 'caution' | 'in range' | 'unknown';

const fromBest: readonly SafetyLevel[] = ['in range', 'unknown', 'caution', 'stop'];

/**
 * Whether one level stands worse than another.
 *
 * @equation in range, unknown, caution, stop: the later is the worse
 * @param level - the level that is asked about [choice]
 * @param than - the level it is held against [choice]
 * @returns true when it is worse; false when both are alike [choice]
 * @validity any two levels
 * @source own derivation
 * @example worseLevel('stop', 'caution') // true
 */
export function worseLevel(level: SafetyLevel, than: SafetyLevel): boolean {
  return fromBest.indexOf(level) > fromBest.indexOf(than);
}
