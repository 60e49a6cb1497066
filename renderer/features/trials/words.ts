import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Tear } from '../../../core/model/trial.ts';
import { textQuantity } from '../../../core/units/index.ts';

/** No line ends between a figure and its unit. */
export const withUnit = (text: string): string => text.replace(/(\d) (?=(?:mm|cm|m|yd|ft|in|gr|g|lb|kg|%)\b)/g, '$1\u00a0');

/** "12 mm right, 8 mm up": from the hole of the point to that of the nock. */
export function tearText({ across, up }: Pick<Tear, 'across' | 'up'>, units: UnitChoice): string {
  const size = (value: number) => textQuantity(Math.abs(value), 'setting', units);
  const parts = [
    across === 0 ? null : `${size(across)} ${across > 0 ? 'right' : 'left'}`,
    up === 0 ? null : `${size(up)} ${up > 0 ? 'up' : 'down'}`,
  ].filter((part) => part !== null);
  return parts.length === 0 ? 'no tear, a clean hole' : parts.join(', ');
}
