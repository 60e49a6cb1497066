import { limits, type Limit, type Measure } from '../model/limits.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { chosenUnit } from './chosen.ts';
import { decimalsOf } from './decimals.ts';
import { parseFor } from './parse.ts';
import { suchAs } from './words.ts';

/** Rounding noise of a conversion: 35.56 cm must be the 14 in that it is. */
const NOISE = 1e-12;

/**
 * Reads one measured figure of a record from a form's field.
 *
 * @equation parseQuantity within the measure's limits; a value past a limit by rounding noise (1e-12) is the limit
 * @param key - the measure [choice]
 * @param text - what was typed; an empty field means not measured [text]
 * @param units - the person's choice of units [record]
 * @returns the SI value, null for an empty field, or a refusal whose field is the measure [SI]
 * @validity a count is a whole number; the limits of core/model/limits.ts, told in the person's own unit
 * @source common practice
 * @example readMeasure('braceHeight', '2 in', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }).problem.sentence // "A brace height between 3 and 14 in was expected."
 */
export function readMeasure(key: Measure, text: string, units: UnitChoice): Result<number | null> {
  if (text.trim() === '') return ok(null);
  const limit: Limit = limits[key];
  const read = parseFor({ name: limit.name, such: suchAs[key] }, text, limit.use, units);
  if (!read.ok) return refuse(read.problem.code, read.problem.sentence, key);
  // Two and a half vanes would be shown as three.
  if (limit.use === 'count' && !Number.isInteger(read.value))
    return refuse('not-whole', `${limit.name} is a whole number, such as ${suchAs[key]}.`, key);
  const slack = NOISE * Math.max(Math.abs(limit.min), Math.abs(limit.max));
  if (read.value < limit.min - slack || read.value > limit.max + slack)
    return refuse('out-of-limits', between(limit, units), key);
  return ok(Math.min(Math.max(read.value, limit.min), limit.max));
}

/** Both ends rounded inward, so that what the sentence allows is allowed: a limit is a round figure in one unit and is told as round in any other. */
function between({ name, use, min, max }: Limit, units: UnitChoice): string {
  const { symbol, factor, zero } = chosenUnit(use, units);
  const inward = (si: number, round: (figure: number) => number, nudge: number): string => {
    const figure = (si - zero) / factor;
    const scale = 10 ** Math.min(decimalsOf(use, units, figure), roundEnough(figure));
    return String((round(figure * scale + nudge) + 0) / scale).replace('-', '\u2212');
  };
  const range = `${name} between ${inward(min, Math.ceil, -1e-9)} and ${inward(max, Math.floor, 1e-9)}`;
  return `${range}${symbol === '' ? '' : symbol === '°' ? symbol : ` ${symbol}`} was expected.`;
}

/** Decimals of two figures that count; whole from ten on. */
const roundEnough = (figure: number): number =>
  figure === 0 ? 0 : Math.max(0, 1 - Math.floor(Math.log10(Math.abs(figure)) + 1e-9));
