import type { ArrowSet, Bow } from '../model/index.ts';
import type { SafetyLevel } from './level.ts';

/**
 * Whether the shaft may be shot from a compound at all: wood breaks under so sudden a load, and a broken shaft goes into the hand.
 *
 * @equation stop for a wooden shaft on a compound, else in range
 * @param bow - bowKind [record]
 * @param arrowSet - material [record]
 * @returns in range or stop [choice]
 * @validity every bow and material; it says nothing of any other shaft
 * @source common practice
 * @example compoundShaftCheck({ bowKind: 'compound' }, { material: 'wood' }) // "stop"
 */
export function compoundShaftCheck(
  bow: Pick<Bow, 'bowKind'>,
  arrowSet: Pick<ArrowSet, 'material'>,
): Extract<SafetyLevel, 'in range' | 'stop'> {
  return bow.bowKind === 'compound' && arrowSet.material === 'wood' ? 'stop' : 'in range';
}

/**
 * Whether a compound's arrow lies on a rest: off the hand or a bare shelf its fletching passes the skin or the riser at a compound's speed.
 *
 * @equation caution for a compound shot off the hand or the shelf, else in range
 * @param bow - bowKind and arrowPass [record]
 * @returns in range or caution [choice]
 * @validity every bow
 * @source common practice
 * @example compoundPassCheck({ bowKind: 'compound', arrowPass: 'hand' }) // "caution"
 */
export function compoundPassCheck(bow: Pick<Bow, 'bowKind' | 'arrowPass'>): Extract<SafetyLevel, 'in range' | 'caution'> {
  return bow.bowKind === 'compound' && bow.arrowPass !== 'rest and button' ? 'caution' : 'in range';
}
