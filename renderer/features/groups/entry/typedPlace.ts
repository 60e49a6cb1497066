import { limits } from '../../../../core/model/limits.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { ok, refuse, type Result } from '../../../../core/model/problem.ts';
import { parseQuantity, textQuantity } from '../../../../core/units/index.ts';

interface Place {
  readonly x: number;
  readonly y: number;
}

/** "12r 8d": two figures, each with its side. */
const SIDES = /^([\d.,/¼½¾⅛⅜⅝⅞ ]*[\d¼½¾⅛⅜⅝⅞])\s*([rlud])\s*([\d.,/¼½¾⅛⅜⅝⅞ ]*[\d¼½¾⅛⅜⅝⅞])\s*([rlud])$/;
const across = (side: string): boolean => side === 'r' || side === 'l';

/** Across and up, out of figures with sides: one to the right or left, and one up or down, in either order. */
function sidesOf(text: string): readonly [string, string] | null {
  const [, one = '', side = '', two = '', other = ''] = SIDES.exec(text.trim().toLowerCase()) ?? [];
  if (side === '' || across(side) === across(other)) return null;
  const signed = (figure: string, at: string) => (at === 'l' || at === 'd' ? `-${figure}` : figure);
  const [first, second] = [signed(one, side), signed(two, other)];
  return across(side) ? [first, second] : [second, first];
}

/** Whether what was typed is whole without Enter: the second side says that nothing more comes. */
export const isWholePlace = (text: string): boolean => sidesOf(text) !== null;

/** "3: 12 -8": the arrow's number before its place, where somebody notes it. */
const NUMBERED = /^\s*([1-9]\d{0,2})\s*:(.*)$/s;

/** What was typed, parted into the arrow's number and its place. */
export function numberedPlace(text: string): { readonly arrow: number | null; readonly place: string } {
  const [, arrow, place] = NUMBERED.exec(text) ?? [];
  return arrow === undefined || place === undefined ? { arrow: null, place: text } : { arrow: Number(arrow), place };
}

/** The figures of "12 -8", "12-8", "1,2; 3", "1 1/2 in -3/4 in": parted by a blank, a semicolon or the second one's sign. */
const figuresOf = (text: string): readonly string[] =>
  text
    .trim()
    .replace(/(?<=[^\s;])\s*([-−–+])\s*(?=[\d.,¼½¾⅛⅜⅝⅞])/gu, ';$1')
    .replace(/(?<=\d)\s+(?=[a-z"])/gi, '')
    .split(/\s*;\s*|\s+(?![½¼¾⅛⅜⅝⅞]|\d+\/\d)/)
    .filter((part) => part !== '');

/** The place that was typed, across and up from the centre of the face [m], or a sentence that says what was expected. */
export function typedPlace(text: string, units: UnitChoice): Result<Place> {
  const [x, y, more] = (sidesOf(text) ?? figuresOf(text)).map((part) => parseQuantity(part, 'setting', units));
  if (x === undefined || y === undefined || more !== undefined) {
    const sentence = `Two figures were expected, across and up from the centre, as in 12 −8 or 12r 8d (${units.setting}).`;
    return refuse('two-figures', sentence);
  }
  if (!x.ok) return x;
  if (!y.ok) return y;
  if (Math.max(Math.abs(x.value), Math.abs(y.value)) <= limits.shotOffset.max) return ok({ x: x.value, y: y.value });
  return refuse('too-far', `A shot within ${textQuantity(limits.shotOffset.max, 'setting', units)} of the centre was expected.`);
}
