import type { HoldRow } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { inch } from '../../../../core/units/exact.ts';
import { factorOf, readsNought, showQuantity, textQuantity } from '../../../../core/units/index.ts';
import { BUTT } from '../../../plots/archerView/frame.ts';
import { depthRange, rangeText } from '../words.ts';

/** "61 m (58 to 65)"; a band that would only repeat the figure is left out. */
export function about(band: Band, units: UnitChoice): string {
  const text = textQuantity(band.value, 'distance', units, { digits: 0 });
  const range = rangeText(band, 'distance', units, 0);
  return range.includes(' to ') ? `${text} (${range})` : text;
}

export interface HoldCell {
  /** "294 below", "on it". */
  readonly figure: string;
  /** "274 to 312"; with the centre between its ends each says its side: "53 below to 60 above". */
  readonly band: string;
  readonly side: 'above' | 'below' | 'on';
}

/** A height over or under the centre for a cell: its size and its side. */
export function holdCell(height: Band, units: UnitChoice, words: readonly [over: string, under: string]): HoldCell {
  const size = (metres: number) => showQuantity(Math.abs(metres), 'drop', units, { digits: 0 }).figure;
  const side = readsNought(size(height.value)) ? 'on' : height.value > 0 ? 'above' : 'below';
  const word = (metres: number) => (metres > 0 ? words[0] : words[1]);
  const crosses = height.low < 0 && height.high > 0;
  const end = (metres: number) => (readsNought(size(metres)) ? '0' : `${size(metres)} ${word(metres)}`);
  return {
    side,
    figure: side === 'on' ? 'on it' : `${size(height.value)} ${word(height.value)}`,
    band: crosses ? `${end(height.low)} to ${end(height.high)}` : depthRange(height, units),
  };
}

/** As near as an eye height is measured, in the unit that it is measured in. */
export const aLittle = (units: UnitChoice): { readonly size: number; readonly name: string } =>
  units.setting === 'in' ? { size: inch / 16, name: 'A sixteenth of an inch' } : { size: 0.001, name: 'A millimetre' };

/** From the nock to the tip of a usual arrow [m]. Common practice. */
const USUAL = 0.74;

/** Why nothing is assumed for an eye height, with what a little of it does: a little at the nock is as many at the target as the arrow goes into the distance. */
export function eyeHeightTells(units: UnitChoice): string {
  const { size, name } = aLittle(units);
  const far = 30 * factorOf('distance', units);
  const moved = textQuantity((size * far) / USUAL, 'drop', units, { digits: units.distance === 'yd' ? 1 : 0 });
  return `${name} moves a point of aim by some ${moved} at ${textQuantity(far, 'distance', units)}, so nothing is assumed here.`;
}

/** Where the place lies that the tip covers, and what to do about it. */
export function whereItLies({ hold, ground }: HoldRow, units: UnitChoice): string {
  if (ground !== null) {
    const range = rangeText(ground, 'distance', units);
    const out = textQuantity(ground.value, 'distance', units);
    return `That is under the ground at the target: lay a marker ${range === out ? out : `${out} out (${range})`} and hold the tip on it.`;
  }
  if (hold.value > BUTT / 2)
    return 'That is over the butt: pick something behind it at that height, only where all the ground beyond is clear, or shoot so far with a lower anchor.';
  if (hold.value < -BUTT / 2) return 'That is under the butt, on its stand.';
  return 'That is on the butt.';
}

/** How far a string walker goes down for the distance, so that the tip stands on the centre; null where no crawl does it. */
export function crawlSentence({ crawl }: HoldRow, units: UnitChoice): string | null {
  if (crawl === null) return null;
  const text = textQuantity(crawl.value, 'setting', units, { digits: units.setting === 'mm' ? 0 : 2 });
  const range = rangeText(crawl, 'setting', units, units.setting === 'mm' ? 0 : 2);
  return `Or walk ${text} down the string (${range}) and hold the tip on the centre.`;
}
