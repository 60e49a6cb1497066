import type { ShaftSpine } from '../arrow/index.ts';
import { isWeighed, type DrawWeight } from '../bow/index.ts';

/** By which share a figure may be lower or higher than its value. */
export interface Doubt {
  readonly low: number;
  readonly high: number;
}

const none: Doubt = { low: 1, high: 1 };

/**
 * What a draw weight that was not read at this draw leaves in doubt.
 *
 * @equation low/value and high/value; 1 and 1 for a reading at this draw, whose scale is not doubted here
 * @param weight - value with low and high [N], and where it is from [record]
 * @returns shares of the value [record]
 * @validity weights above nought
 * @source own derivation
 * @example weightDoubt({ value: 100, low: 90, high: 120, from: 'marked weight' }) // {"low":0.9,"high":1.2}
 */
export function weightDoubt({ value, low, high, from }: DrawWeight): Doubt {
  return isWeighed(from) ? none : { low: low / value, high: high / value };
}

/**
 * What a spine that was reckoned from a tube leaves in doubt.
 *
 * @equation low/value and high/value of the deflection; 1 and 1 for a measured spine
 * @param spine - the shaft's deflection with its band [m] and where it is from [record]
 * @returns shares of the value [record]
 * @validity deflections above nought
 * @source own derivation
 * @example spineDoubt({ deflection: { value: 0.01, low: 0.009, high: 0.011 }, from: 'measured' }) // {"low":1,"high":1}
 */
export function spineDoubt({ deflection, from }: Pick<ShaftSpine, 'deflection' | 'from'>): Doubt {
  return from === 'tube' ? { low: deflection.low / deflection.value, high: deflection.high / deflection.value } : none;
}
