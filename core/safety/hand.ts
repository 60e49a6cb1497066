import type { Archer, Bow } from '../model/index.ts';
import type { SafetyLevel } from './level.ts';

/**
 * Whether the bow is made for the archer's hand: a right-handed archer draws with the right and shoots a right-handed bow.
 *
 * @equation in range when both hands are the same, else stop; caution where the arrow passes over the hand, since some such bows take either
 * @param archer - hand [record]
 * @param bow - hand and arrowPass [record]
 * @returns in range, caution or stop [choice]
 * @validity both hands are always known
 * @source common practice
 * @example handCheck({ hand: 'right' }, { hand: 'left', arrowPass: 'shelf' }) // "stop"
 */
export function handCheck(archer: Pick<Archer, 'hand'>, bow: Pick<Bow, 'hand' | 'arrowPass'>): Exclude<SafetyLevel, 'unknown'> {
  if (archer.hand === bow.hand) return 'in range';
  return bow.arrowPass === 'hand' ? 'caution' : 'stop';
}
