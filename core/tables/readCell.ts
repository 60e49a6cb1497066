import type { UnitChoice } from '../model/preferences.ts';
import { limits, type Measure } from '../model/limits.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { unitOf } from '../units/chosen.ts';
import { readMeasure } from '../units/readMeasure.ts';
import type { TableColumn } from './table.ts';

/** What a comma and a point mean in a table: told cell by cell, or the same throughout. */
export type Style = 'each' | 'comma' | 'point';

const PLAIN = /^-?\d+(?:[.,]\d+)?$/;

/**
 * Reads a figure of a table: as a field of a form does, but a bare number may have its unit from elsewhere.
 *
 * @equation readMeasure of the text, with the unit after it when the text has none
 * @param key - the measure [choice]
 * @param text - the cell; an empty one has no figure [text]
 * @param units - the person's choice of units [record]
 * @param unit - the unit of bare numbers; empty for the person's own [text]
 * @returns the SI value, null for an empty cell, or a refusal whose field is the measure [SI]
 * @validity as readMeasure; a fraction of a millimetre or centimetre is refused, since its unit was forgotten
 * @source common practice
 * @example readEntry('readingDraw', '28 1/4', { length: 'cm', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }, 'in').value // 0.71755
 */
export function readEntry(key: Measure, text: string, units: UnitChoice, unit: string): Result<number | null> {
  // Most cells of a long table are no more than this, and its time is theirs.
  if (PLAIN.test(text)) return readMeasure(key, unit === '' ? text : `${text} ${unit}`, units);
  const bare = /\d/.test(text) && !/[a-z#'"°%′″’”]/i.test(text);
  const meant = unit === '' ? unitOf(limits[key].use, units) : unit;
  if (bare && /[/⁄¼½¾⅓⅔⅛⅜⅝⅞]/u.test(text) && ['mm', 'cm'].includes(meant))
    return refuse('fraction-without-unit', `A fraction needs its unit here, as in ${text.trim()} in.`, key);
  return readMeasure(key, bare && unit !== '' ? `${text} ${unit}` : text, units);
}

/**
 * Reads one cell for what its column is.
 *
 * @equation a figure within its limits, a whole number, or one of the column's words
 * @param column - what the column is taken for [record]
 * @param text - the cell [text]
 * @param style - what commas and points mean [choice]
 * @param units - the person's choice of units [record]
 * @param unit - the unit of bare numbers; empty for the column's or the person's own [text]
 * @returns the value, null for an empty cell, or a sentence that says what was expected [SI]
 * @validity any text
 * @source common practice
 * @example readCell({ name: 'number', whole: [1, 999] }, 'No. 7', 'each', defaultPreferences.units, '').value // 7
 */
export function readCell(
  column: TableColumn,
  text: string,
  style: Style,
  units: UnitChoice,
  unit: string,
): Result<number | null> {
  if (text.trim() === '') return ok(null);
  if ('measure' in column)
    return readEntry(column.measure, plainly(text, style), units, unit === '' ? (column.unit ?? '') : unit);
  if ('whole' in column) {
    const [least, most] = column.whole;
    const number = Number(/^(?:no\.?|nr\.?|#)?\s*(\d{1,9})\.?$/i.exec(text.trim())?.[1] ?? NaN);
    return number >= least && number <= most
      ? ok(number)
      : refuse('not-a-number', `For ${column.name}, a whole number from ${least} to ${most} was expected.`);
  }
  if ('anyText' in column) return ok(1);
  const word = text.trim().toLowerCase();
  const at = column.words.findIndex((words) => words.includes(word));
  const known = column.words.map(([first = '']) => first).join(' or ');
  return at >= 0 ? ok(at) : refuse('unknown-word', `For ${column.name}, ${known} was expected.`);
}

const WHOLE = /^-?\d+$/;
const byComma = { thousands: /(?<=\d)\.(?=\d{3}(?!\d))/g, stray: /\d\.|\.\d/, decimal: /,(?=\d)/ };
const byPoint = { thousands: /(?<=\d),(?=\d{3}(?!\d))/g, stray: /\d,|,\d/, decimal: /\.(?=\d)/ };

/** The figure with a decimal point and nothing else; what the style does not allow is made unreadable, so that it speaks against the style. */
function plainly(text: string, style: Style): string {
  if (style === 'each') return text;
  if (WHOLE.test(text)) return text;
  const { thousands, stray, decimal } = style === 'comma' ? byComma : byPoint;
  const whole = text.replace(thousands, '');
  if (stray.test(whole)) return `${text} ?`;
  return whole.replace(decimal, '.');
}
