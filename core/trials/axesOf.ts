import type { Shift } from '../group/index.ts';
import type { Hand } from '../model/archer.ts';
import { outwardOf } from './outward.ts';
import type { Reading } from './reading.ts';

/**
 * What the two axes of a bare shafts' shift read.
 *
 * @equation outward of the fletched = stiff, inward = weak; low = nocking point high, high = nocking point low; only an axis that is real by itself
 * @param shift - the shift of the bare from the fletched [record]
 * @param hand - the archer's hand [choice]
 * @returns both readings, each null where its axis is not shown [record]
 * @validity finger release
 * @source common practice
 * @example axesOf(shiftOfGroups(exampleFletched.shots, exampleBare.shots, {}).value, 'right').lateral // "weak"
 */
export function axesOf(shift: Pick<Shift, 'dx' | 'dy' | 'axisReal'>, hand: Hand): Pick<Reading, 'lateral' | 'vertical'> {
  return {
    lateral: shift.axisReal.x ? (outwardOf(shift.dx, hand) > 0 ? 'stiff' : 'weak') : null,
    vertical: shift.axisReal.y ? (shift.dy < 0 ? 'nocking point high' : 'nocking point low') : null,
  };
}
