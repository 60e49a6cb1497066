import type { UnitChoice } from '../../model/preferences.ts';
import { factorOf, textQuantity, type Use } from '../../units/index.ts';

/**
 * A figure that was taken and not measured, with no more digits than are meant.
 *
 * @equation two significant digits in the shown unit, after "about"
 * @param si - the value, above nought [SI]
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @returns the text [text]
 * @validity finite figures above nought
 * @source common practice
 * @example about(0.3881, 'length', defaultPreferences.units) // "about 15 in"
 */
export function about(si: number, use: Use, units: UnitChoice): string {
  const factor = factorOf(use, units);
  const rounded = Number((si / factor).toPrecision(2));
  const digits = Math.max(0, 1 - Math.floor(Math.log10(rounded)));
  return `about ${textQuantity(rounded * factor, use, units, { digits })}`;
}
