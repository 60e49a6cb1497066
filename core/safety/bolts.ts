import type { Bow, Settings } from '../model/index.ts';
import type { SafetyLevel } from './level.ts';

/** Both bolts are turned alike but for the tiller; farther apart than this one of them was miscounted or forgotten: from memory. */
export const BOLTS_APART = 1;
const ROUNDING = 1e-6;

export interface BoltsCheck {
  readonly level: SafetyLevel;
  /** The bolt that is out farthest, and how far [turns]; null while neither was counted. */
  readonly farthest: { readonly bolt: 'upper' | 'lower'; readonly turns: number } | null;
  /** Turns between the two, null unless both were counted. */
  readonly apart: number | null;
}

/**
 * Whether the limb bolts stand within what the maker allows, and alike: a limb whose bolt is out too far can leave its pocket.
 *
 * @equation stop when a bolt is out more than the maker's most; caution when the two differ by more than one turn; unknown while no bolt was counted or the maker's most is not on record
 * @param bow - mostBoltTurns, the most turns out that the maker allows [record]
 * @param settings - upperBolt and lowerBolt, turns out from fully in [record]
 * @returns level, the bolt that is out farthest and the turns between the two [record]
 * @validity bows with limb bolts
 * @source common practice
 * @example boltsCheck({ mostBoltTurns: 5 }, { upperBolt: 6, lowerBolt: 3 }).level // "stop"
 */
export function boltsCheck(
  { mostBoltTurns }: Pick<Bow, 'mostBoltTurns'>,
  { upperBolt, lowerBolt }: Pick<Settings, 'upperBolt' | 'lowerBolt'>,
): BoltsCheck {
  const upperIsOut = (upperBolt ?? -1) >= (lowerBolt ?? -1);
  const turns = upperIsOut ? upperBolt : lowerBolt;
  if (turns === null) return { level: 'unknown', farthest: null, apart: null };
  const apart = upperBolt === null || lowerBolt === null ? null : Math.abs(upperBolt - lowerBolt);
  const found = { farthest: { bolt: upperIsOut ? 'upper' : 'lower', turns }, apart } as const;
  if (mostBoltTurns !== null && turns > mostBoltTurns + ROUNDING) return { ...found, level: 'stop' };
  if (apart !== null && apart > BOLTS_APART + ROUNDING) return { ...found, level: 'caution' };
  return { ...found, level: mostBoltTurns === null ? 'unknown' : 'in range' };
}
