import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { textQuantity } from '../../../../core/units/index.ts';

/** A length that is small beside a hole: with one digit more than a shot's place, and never nought. */
export function lengthText(metres: number, units: UnitChoice): string {
  const [least, digits] = units.setting === 'mm' ? [0.0001, 1] : [0.000_254, 2];
  const text = textQuantity(Math.max(least, metres), 'setting', units, { digits });
  return metres < least ? `less than ${text}` : text;
}
