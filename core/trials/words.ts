import type { UnitChoice } from '../model/preferences.ts';
import { showQuantity, textQuantity, unitOf } from '../units/index.ts';
import type { Side } from './outward.ts';

/** Nobody places a shot finer than this by eye, so sentences do not pretend to. */
const decimals = (units: UnitChoice): number => (units.setting === 'mm' ? 0 : 1);

/**
 * A length on the face, as coarse as shots are placed.
 *
 * @equation whole mm, or one decimal of cm or in
 * @param size - the length; its sign is not told [m]
 * @param units - the person's choice of units [record]
 * @returns for instance "41 mm" [text]
 * @validity finite lengths
 * @source own derivation
 * @example acrossText(-0.0412, defaultPreferences.units) // "41 mm"
 */
export function acrossText(size: number, units: UnitChoice): string {
  return textQuantity(Math.abs(size), 'setting', units, { digits: decimals(units) });
}

/**
 * A length on the face with its half width.
 *
 * @equation signed value ± half width, in one unit
 * @param value - the value [m]
 * @param half - half width of its 95 % interval [m]
 * @param units - the person's choice of units [record]
 * @returns for instance "+41 ± 29 mm" [text]
 * @validity finite lengths
 * @source own derivation
 * @example plusMinusText(0.0412, 0.029, defaultPreferences.units) // "+41 ± 29 mm"
 */
export function plusMinusText(value: number, half: number, units: UnitChoice): string {
  const digits = decimals(units);
  const figure = showQuantity(value, 'setting', units, { digits, signed: true }).figure;
  return `${figure} ± ${showQuantity(half, 'setting', units, { digits }).figure} ${unitOf('setting', units)}`;
}

/**
 * The side of the face on which a sideways shift points.
 *
 * @equation right when x > 0, else left
 * @param dx - sideways shift as the archer sees it [m]
 * @returns the side [choice]
 * @validity a shift that is not nought
 * @source own derivation
 * @example sideOf(-0.02) // "left"
 */
export function sideOf(dx: number): Side {
  return dx > 0 ? 'right' : 'left';
}

/**
 * Where one group lies from another, in the words of the parts that count.
 *
 * @equation the parts asked for, sideways first: "41 mm right of fletched", "33 mm lower than fletched", or both
 * @param dx - sideways shift, right positive [m]
 * @param dy - shift upwards [m]
 * @param parts - whether to tell the sideways part and the height [record]
 * @param from - what the group counted from is called [text]
 * @param units - the person's choice of units [record]
 * @returns the words; the distance alone when no part is asked for [text]
 * @validity finite shifts
 * @source own derivation
 * @example whereWords(0.041, -0.033, { x: true, y: true }, 'fletched', defaultPreferences.units) // "41 mm right of fletched and 33 mm lower"
 */
export function whereWords(
  dx: number,
  dy: number,
  parts: { readonly x: boolean; readonly y: boolean },
  from: string,
  units: UnitChoice,
): string {
  const across = `${acrossText(dx, units)} ${sideOf(dx)} of ${from}`;
  const height = `${acrossText(dy, units)} ${dy > 0 ? 'higher' : 'lower'}`;
  if (parts.x && parts.y) return `${across} and ${height}`;
  return parts.x ? across : parts.y ? `${height} than ${from}` : `${acrossText(Math.hypot(dx, dy), units)} off ${from}`;
}

/**
 * The parts of a shift worth naming when neither has been shown by itself.
 *
 * @equation a part is named when it is more than a third of the other
 * @param dx - sideways shift [m]
 * @param dy - shift upwards [m]
 * @returns which parts to name [record]
 * @validity finite shifts
 * @source own derivation
 * @example mainParts(0.04, 0.01) // { "x": true, "y": false }
 */
export function mainParts(dx: number, dy: number): { x: boolean; y: boolean } {
  return { x: 3 * Math.abs(dx) > Math.abs(dy), y: 3 * Math.abs(dy) > Math.abs(dx) };
}

/**
 * How often chance alone would do as much, in a sentence.
 *
 * @equation once in 1/p tries, to two figures from 100 on; above p = ½ "more often than not", below 1 in 10,000 "less than once in 10,000 tries"
 * @param p - p, chance of a shift at least this large without a true one [-]
 * @returns the sentence [text]
 * @validity 0 < p ≤ 1
 * @source own derivation
 * @example chanceSentence(1 / 123) // "Chance alone would do that once in 120 tries."
 */
export function chanceSentence(p: number): string {
  if (p > 0.5) return 'Chance alone would do that more often than not.';
  if (p < 1e-4) return 'Chance alone would do that less than once in 10,000 tries.';
  return `Chance alone would do that once in ${countText(1 / p)} tries.`;
}

/**
 * A count for a sentence.
 *
 * @equation nearest whole number; from 100 on to two figures; thousands parted by a comma
 * @param count - the count [-]
 * @returns for instance "1,200" [text]
 * @validity 0 up to 1e15
 * @source own derivation
 * @example countText(1234) // "1,200"
 */
export function countText(count: number): string {
  const rounded = count < 99.5 ? Math.round(count) : Number(count.toPrecision(2));
  return String(rounded).replace(/\B(?=(\d{3})+$)/g, ',');
}
