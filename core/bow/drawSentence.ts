import type { UnitChoice } from '../model/preferences.ts';
import { showQuantity, textQuantity } from '../units/index.ts';
import type { ForceDraw } from './forceDraw.ts';

/**
 * How evenly a bow draws and where it stacks, as one sentence.
 *
 * @equation least and greatest growth over 2 in of the later half of the stroke; the draw it stacks from, or what is missing to tell
 * @param drawn - the force-draw curve [record]
 * @param units - the person's choice of units [record]
 * @returns for instance "Over the later half of the draw the weight grows by 1.5 to 1.6 lb/in." [text]
 * @validity a curve that was not read says what its kind lets expect, and that it does
 * @source own derivation
 * @example drawSentence({ from: 'readings', growth: { least: 350.2536, most: 525.3805 }, stacksFrom: null }, defaultPreferences.units) // "Over the later half of the draw the weight grows by 2 to 3 lb/in."
 */
export function drawSentence(drawn: Pick<ForceDraw, 'from' | 'growth' | 'stacksFrom'>, units: UnitChoice): string {
  const { from, growth, stacksFrom } = drawn;
  const [least, most] = [growth.least, growth.most].map((si) => textQuantity(si, 'weightPerLength', units));
  const between = least === most ? least : `${showQuantity(growth.least, 'weightPerLength', units).figure} to ${most}`;
  const stacks = stacksFrom === null ? '.' : `, and it stacks from ${textQuantity(stacksFrom, 'length', units)}.`;
  return from === 'readings'
    ? `Over the later half of the draw the weight grows by ${between}${stacks}`
    : `A bow of this kind and weight grows by about ${between} over the later half of the draw: only readings on a scale tell how this one does.`;
}
