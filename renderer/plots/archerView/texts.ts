import type { Band } from '../../../core/model/band.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { readsNought, showQuantity, textQuantity, type Use } from '../../../core/units/index.ts';
import type { ArcherViewData } from './data.ts';
import type { HoldTexts } from './lettering.ts';

/** What is written on the picture, in the person's units. */
export function holdTexts(
  { up, across, marker }: Pick<ArcherViewData, 'up' | 'across' | 'marker'>,
  units: UnitChoice,
): HoldTexts {
  const on = isNought(up.value, units);
  return {
    figure: on ? '' : textQuantity(Math.abs(up.value), 'drop', units),
    band: endsOf(up, units),
    side: on ? 'on the centre' : up.value > 0 ? 'above the centre' : 'below the centre',
    across: isNought(across, units) ? null : `${textQuantity(Math.abs(across), 'drop', units)} ${across > 0 ? 'right' : 'left'}`,
    marker:
      marker === null
        ? null
        : { figure: textQuantity(marker.value, 'distance', units), band: fromTo(marker.low, marker.high, 'distance', units) },
  };
}

const isNought = (height: number, units: UnitChoice): boolean => readsNought(showQuantity(height, 'drop', units).figure);

/** The ends of a hold by their size, nearer end first; with the centre between them each says its side. */
function endsOf({ low, high }: Band, units: UnitChoice): string {
  if (low >= 0 || high <= 0) {
    const [a, b] = [Math.abs(low), Math.abs(high)];
    return fromTo(Math.min(a, b), Math.max(a, b), 'drop', units);
  }
  const [under, over] = [showQuantity(-low, 'drop', units).figure, showQuantity(high, 'drop', units).figure];
  return readsNought(under) && readsNought(over) ? '' : `${under} below to ${over} above`;
}

/** Nothing where both ends read alike. */
function fromTo(low: number, high: number, use: Use, units: UnitChoice): string {
  const [from, to] = [showQuantity(low, use, units).figure, showQuantity(high, use, units).figure];
  return from === to ? '' : `${from} to ${to}`;
}
