import type { UnitChoice } from '../model/preferences.ts';
import { chosenUnit } from './chosen.ts';
import { decimalsOf, keepsNoughts } from './decimals.ts';
import { readsNought } from './nought.ts';
import type { Use } from './uses.ts';

export interface ShowOptions {
  /** Exactly this many decimals, noughts kept, no fractions and always the chosen unit: for columns that must line up. */
  readonly digits?: number;
  /** A plus before figures above nought: for differences. */
  readonly signed?: boolean;
}

export interface Shown {
  readonly figure: string;
  readonly unit: string;
}

const MINUS = '\u2212';
const SIXTY_FOURTH = 1 / 64;

/**
 * A figure and its unit as the trade writes them.
 *
 * @equation figure = (SI value − the SI value at the scale's nought) / factor, rounded to the trade's decimals; inches of length within 1/64 of an eighth, and turns within 1/64, as "28 1/4"; times below 0.1 s in ms unless the decimals are fixed
 * @param si - the value [SI]
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @param options - fixed decimals, plus sign [record]
 * @returns figure with a real minus sign, and unit (empty for counts and ratios) [record]
 * @validity finite values; throws RangeError on NaN and infinities, which no part of core hands out
 * @source common practice
 * @example showQuantity(0.71755, 'length', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }, {}).figure // "28 1/4"
 */
export function showQuantity(si: number, use: Use, units: UnitChoice, options: ShowOptions = {}): Shown {
  if (!Number.isFinite(si)) throw new RangeError(`A finite figure was expected to show as ${use}, not ${si}.`);
  const { symbol, factor, zero } = chosenUnit(use, units);
  const milliseconds = use === 'time' && options.digits === undefined && Number((Math.abs(si) * 1000).toFixed(1)) < 100;
  const value = milliseconds ? si * 1000 : (si - zero) / factor;
  const size = Math.abs(value);
  const decimals = options.digits ?? (milliseconds ? 1 : decimalsOf(use, units, value));
  const rounded = size.toFixed(decimals);
  const fraction = options.digits === undefined && inEighths(use, symbol) ? eighths(size, Number(rounded)) : null;
  const trims = options.digits === undefined && !keepsNoughts(use);
  const unsigned = fraction ?? (trims ? trim(rounded) : rounded);
  const sign = readsNought(unsigned) ? '' : value < 0 ? MINUS : options.signed === true ? '+' : '';
  const unit = milliseconds ? 'ms' : use === 'turns' && turnsAreOne(unsigned) ? 'turn' : symbol;
  return { figure: sign + unsigned, unit };
}

/**
 * A figure with its unit in one text.
 *
 * @equation figure, space, unit; no space before a degree sign, no unit for counts and ratios
 * @param si - the value [SI]
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @param options - fixed decimals, plus sign [record]
 * @returns the text; parseQuantity reads it back to the same figure [text]
 * @validity as showQuantity
 * @source common practice
 * @example textQuantity(0.01524, 'deflection', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }, {}) // "0.600 in"
 */
export function textQuantity(si: number, use: Use, units: UnitChoice, options: ShowOptions = {}): string {
  const { figure, unit } = showQuantity(si, use, units, options);
  return unit === '' || unit === '°' ? figure + unit : `${figure} ${unit}`;
}

const inEighths = (use: Use, symbol: string): boolean => (use === 'length' && symbol === 'in') || use === 'turns';
const trim = (figure: string): string => (figure.includes('.') ? figure.replace(/\.?0+$/, '') : figure);
const turnsAreOne = (figure: string): boolean => figure === '1' || /^\d+\/\d+$/.test(figure);

/** The rounded figure is asked too: what is read back from the screen must be shown in the same way again. */
function eighths(size: number, rounded: number): string | null {
  const count = Math.round(size * 8);
  if (Math.min(Math.abs(size - count / 8), Math.abs(rounded - count / 8)) > SIXTY_FOURTH) return null;
  const whole = Math.floor(count / 8);
  const part = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'][count % 8] ?? '';
  return part === '' ? String(whole) : whole === 0 ? part : `${whole} ${part}`;
}
