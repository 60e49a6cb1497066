import type { Point } from '../../../../core/group/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { together } from '../../../../core/model/sentence.ts';
import { readsNought, showQuantity, textQuantity, unitOf } from '../../../../core/units/index.ts';
import { depthRange, rangeText } from '../words.ts';

export const far = (distance: number, units: UnitChoice): string => textQuantity(distance, 'distance', units);
export const size = (height: number, units: UnitChoice): string => textQuantity(Math.abs(height), 'drop', units);
/** Nought as it is shown. */
export const nought = (height: number, units: UnitChoice): boolean => readsNought(showQuantity(height, 'drop', units).figure);
export const points = (score: number): string => score.toFixed(1);

/** "48 cm low" */
export const upText = (up: number, units: UnitChoice): string =>
  nought(up, units) ? 'none' : `${size(up, units)} ${up > 0 ? 'high' : 'low'}`;

/** "12 cm left" */
export const acrossText = (across: number, units: UnitChoice): string =>
  nought(across, units) ? 'none' : `${size(across, units)} ${across > 0 ? 'right' : 'left'}`;

/** "48 cm low", "12 cm left"; nothing on the middle. */
export const placeTexts = ({ x, y }: Point, units: UnitChoice): readonly string[] => [
  ...(nought(y, units) ? [] : [upText(y, units)]),
  ...(nought(x, units) ? [] : [acrossText(x, units)]),
];

/** "48 cm low and 12 cm left"; null on the middle. */
export function placeText(place: Point, units: UnitChoice): string | null {
  const said = placeTexts(place, units);
  return said.length === 0 ? null : together(said);
}

/** The two sides of a place on the face: below nought, and above. */
const sides = { up: ['low', 'high'], across: ['left', 'right'] } as const;

/** The ends of a band behind its figure: "44 to 52", "0.8 low to 3.1 high"; empty where they read like the figure itself. */
export function bandText(band: Band, way: keyof typeof sides, units: UnitChoice): string {
  if (nought(band.low, units) && nought(band.high, units)) return '';
  if (band.low < 0 && band.high > 0) {
    const [low, high] = [band.low, band.high].map((end) => showQuantity(Math.abs(end), 'drop', units).figure);
    return `${low} ${sides[way][0]} to ${high} ${sides[way][1]}`;
  }
  const range = depthRange(band, units);
  return range.includes(' to ') ? range : '';
}

/** "41 to 45 cm low" */
export function bandWithSide(band: Band, way: keyof typeof sides, units: UnitChoice): string {
  const range = bandText(band, way, units);
  if (range === '' || (band.low < 0 && band.high > 0)) return range;
  return `${range} ${unitOf('drop', units)} ${sides[way][band.value > 0 ? 1 : 0]}`;
}

export const settingText = (setFor: Band, units: UnitChoice): string =>
  textQuantity(setFor.value, 'distance', units, { digits: 1 });

export const settingRange = (setFor: Band, units: UnitChoice): string => {
  const range = rangeText(setFor, 'distance', units, 1);
  return range.includes(' to ') ? range : '';
};

export const degrees = (slope: number): string => `${Number(((Math.abs(slope) * 180) / Math.PI).toFixed(1))}°`;

export const heightFigure = (height: number, units: UnitChoice): string =>
  showQuantity(Math.abs(height), 'drop', units, { digits: 0 }).figure;

/** Over a refusal, whose sentence stands beneath: so near, what is asked is no guess. */
export const refusedTitle = (code: string): string => (code === 'too-near' ? 'Too near for such a guess' : 'Out of reach');
