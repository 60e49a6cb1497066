import { type ChangedSince, readWords, type SightScale } from '../../../../core/aim/index.ts';
import { dayText, marksRefused } from '../../../../core/findings/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { Stamp } from '../../../../core/model/common.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { countWord } from '../../../../core/model/sentence.ts';
import { factorOf, showQuantity, textQuantity } from '../../../../core/units/index.ts';
import type { MarkLineData } from '../../../plots/markLine/marks.ts';
import type { Said } from '../../../plots/readAlong/words.ts';
import type { Head } from '../part.ts';
import { isOnBar, misfitOf, type MarkRow, type MarksView } from './derive.ts';
import { lineFit } from './lineFit.ts';
import { readingsOf } from './readings.ts';

export const farText = (distance: number, units: UnitChoice): string => textQuantity(distance, 'distance', units);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const halfOf = ({ low, high }: Band): number => (high - low) / 2;

/** A reading in the scale's numbers, with a real minus. */
export const readText = (reading: number, { unit }: SightScale): string => readWords(reading, unit).replace('-', '−');

/** "± 1.1" in the scale's numbers. */
export const halfText = (reading: Band, scale: SightScale): string => `± ${readWords(halfOf(reading), scale.unit)}`;

/** Whether the scale's own numbers are the unit that settings are shown in. */
export const inShownUnit = ({ unit }: SightScale, units: UnitChoice): boolean =>
  Math.abs(unit / factorOf('setting', units) - 1) < 1e-6;

/** Half of an interval as the scale has it: "1.1 mm", or "0.11 on the scale" where its numbers are others. */
const pinText = (half: number, scale: SightScale, units: UnitChoice): string =>
  inShownUnit(scale, units) ? textQuantity(half * scale.unit, 'setting', units) : `${readWords(half, scale.unit)} on the scale`;

/** "Point: 100 gr then, 120 gr now". */
export function changeText({ name, use, then, now }: ChangedSince, units: UnitChoice, today: Stamp): string {
  const text = (value: string | number) => {
    if (typeof value === 'number') return use === null ? String(value) : textQuantity(value, use, units);
    return /^\d{4}-\d\d-\d\d$/.test(value) ? dayText({ at: `${value}T12:00:00Z`, offsetMinutes: 0 }, today) : value;
  };
  return `${name}: ${text(then)} then, ${text(now)} now`;
}

/** The rows that carry a reading to which the pin goes, nearest first, one a distance. */
const told = (rows: readonly MarkRow[]) =>
  rows.filter((row, i) => row.reading !== null && isOnBar(row) && rows[i - 1]?.distance !== row.distance) as readonly (MarkRow & {
    readonly reading: Band;
  })[];

/** From the nearest mark outward as far as no reading is weak: how far the sight is fixed, and how well. */
export function fixedOf(view: MarksView): { readonly from: number; readonly to: number; readonly half: number } | null {
  const rows = told(view.rows);
  const start = rows.findIndex(({ weak }) => !weak);
  if (start < 0) return null;
  const weak = rows.findIndex((row, i) => i > start && row.weak);
  const held = rows.slice(start, weak < 0 ? undefined : weak);
  const [first, last] = [held[0], held.at(-1)];
  if (first === undefined || last === undefined) return null;
  return { from: first.distance, to: last.distance, half: Math.max(...held.map(({ reading }) => halfOf(reading))) };
}

/** "with 10 mm a unit and with numbers that grow upward": the scale on which marks go together, where on the given one they do not. */
export function scaleHow({ picture: { scale }, otherScale }: MarksView, units: UnitChoice): string | null {
  if (otherScale === null) return null;
  const unit = otherScale.unit === scale.unit ? null : `with ${textQuantity(otherScale.unit, 'setting', units)} a unit`;
  const grows =
    otherScale.grows === scale.grows ? null : `with numbers that grow ${otherScale.grows === 'down' ? 'downward' : 'upward'}`;
  return [unit, grows].filter((part) => part !== null).join(' and ');
}

/** The finding of the part, and what it rests on: first what would move every mark, then the scale that puts them right. */
export function marksHead(view: MarksView, units: UnitChoice, braceFirst = false): Head {
  const head = foundHead(view, units);
  const how = scaleHow(view, units);
  if (braceFirst) return { ...head, note: 'Brace height first: mending it moves every mark.' };
  return how === null ? head : { ...head, note: `Read ${how} they go together: take the scale so, above the table.` };
}

function foundHead(view: MarksView, units: UnitChoice): Head {
  const { picture, rows } = view;
  const { fit, from, scale } = picture;
  if (fit === null)
    return {
      title: 'Two marks, shot in, will fix the sight',
      note: 'Type two distances far apart and what the sight reads at each: every other distance follows, with how sure it is.',
    };
  if (!fit.ok)
    return {
      title: marksRefused(fit.problem.code),
      note: 'What was typed is kept. What to look at stands under the marks.',
    };
  if (from === 'moved')
    return {
      title: `${noneProven(picture.unproven.length)} no longer proven`,
      note: 'The readings below are those of before, moved by what changed since and as unsure as that is. Shoot one in again.',
    };
  const misfit = misfitOf(fit.value);
  const least = leastSure(view, units);
  if (misfit !== null)
    return {
      title: `The mark for ${farText(misfit.distance, units)} does not fit the other ${countWord(fit.value.marks.length - 1)}`,
      note: `It still counts: every reading follows it, and is ${timesText(fit.value.wider)} times as unsure. Shoot it in again, or leave it out.`,
    };
  const count = fit.value.marks.length;
  const unclear = fit.value.judged.filter(({ verdict, leftOut = false }) => verdict === 'one of these' && !leftOut).length;
  if (unclear > 0)
    return {
      title: `${unclear === count ? 'The' : 'Of the'} ${countWord(count)} marks${unclear === count ? '' : `, ${countWord(unclear)}`} do not go together`,
      note: `${unclear === 2 ? 'Neither' : 'None of them'} can be blamed by itself, and every reading is ${timesText(fit.value.wider)} times as unsure.`,
    };
  const marks = `${capital(countWord(count))} mark${count === 1 ? '' : 's'}`;
  const fixed = fixedOf(view);
  const widest = told(rows).reduce((most, { reading }) => Math.max(most, halfOf(reading)), 0);
  const verb = count === 1 ? 'fixes' : 'fix';
  const title =
    fixed === null
      ? `${marks} ${count === 1 ? 'leaves' : 'leave'} the sight unsure, ${pinText(widest, scale, units)} at worst`
      : `${marks} ${verb} the sight to ${pinText(fixed.half, scale, units)} ${spanText(fixed, told(rows)[0]?.distance, units)}`;
  return { title, note: least };
}

const noneProven = (count: number): string =>
  count === 1 ? 'The mark is' : count === 2 ? 'Both marks are' : `All ${countWord(count)} marks are`;

const timesText = (times: number): string => times.toFixed(times < 10 ? 1 : 0);

function spanText({ from, to }: { from: number; to: number }, nearest: number | undefined, units: UnitChoice): string {
  if (from === to) return `at ${farText(to, units)}`;
  return from === nearest ? `out to ${farText(to, units)}` : `from ${farText(from, units)} to ${farText(to, units)}`;
}

/** "At 70 m it is ± 2.2 mm, or 18 cm on the face: …" */
function leastSure({ rows, picture, next }: MarksView, units: UnitChoice): string {
  const [first, ...others] = told(rows);
  if (first === undefined) return '';
  const worst = others.reduce((most, row) => (halfOf(row.reading) > halfOf(most.reading) ? row : most), first);
  const face = worst.onFace === null ? '' : `, or ${textQuantity(worst.onFace, 'drop', units)} on the face`;
  const half = `± ${pinText(halfOf(worst.reading), picture.scale, units)}${face}`;
  const at = `At ${farText(worst.distance, units)}`;
  if (next === null) return `${at}, where it is least sure, it is ${half}. 95 %.`;
  const there = next.distance === worst.distance ? 'there' : `at ${farText(next.distance, units)}`;
  return `${at} it is ${half}, 95 %: shoot one more mark ${there} before you print it.`;
}

const bars = { on: '', off: 'off the bar', 'in doubt': 'perhaps off the bar', 'below 0': 'below 0: off the bar?' } as const;

/** What the mark is held to be against the others, in a word or two; of a distance without one whether the pin goes there. */
export function verdictText({ judged, mark, bar }: MarkRow): string {
  if (mark === null) return bars[bar];
  if (mark.leftOut !== null) return 'left out';
  if (judged === null || judged.verdict === 'alone') return '';
  return judged.verdict === 'one of these' ? 'one of these is out' : judged.verdict;
}

/** "Shoot 70 m next: …" */
export function nextText({ next, picture: { scale } }: MarksView, units: UnitChoice): string | null {
  if (next === null) return null;
  const [now, then] = [pinText(next.worstNow, scale, units), pinText(next.worstThen, scale, units)];
  const worst = next.worstAt === next.distance ? 'there' : `at ${farText(next.worstAt, units)}`;
  if (now === then) return null;
  return `Shoot ${farText(next.distance, units)} next: the worst, ± ${now} ${worst}, comes down to ± ${then}.`;
}

/** What the columns of the table mean. */
export function tableNote({ picture: { scale, assumed, fit }, spread, rows }: MarksView): string {
  if (fit === null) return 'Shoot in two distances that lie far apart, six arrows each, and type what the sight reads there.';
  if (!fit.ok) return 'Type a figure anew in its row, or leave the mark out under its details.';
  const way = scale.grows === 'down' ? 'downward' : 'upward';
  const unit = assumed.unit ? ' One unit of the scale is taken as 1 mm until somebody gives it.' : '';
  const grows = assumed.grows ? ` Its numbers are taken to grow ${way}.` : '';
  const arrows = spread === null ? ' An arrow’s own scatter is taken as usual: shoot groups, and the archer’s own is used.' : '';
  const below = rows.some(({ bar }) => bar === 'below 0')
    ? ' Whether the pin goes below 0 the lowest number of the sight tells, once it is given.'
    : '';
  return `Bold: shot in, and fields to type in. 95 %: where the mark of six arrows will lie. Amber: six arrows shot in there would narrow it by a quarter or more.${unit}${grows}${below}${arrows}`;
}

/** What the mark to type will read, for whoever types its distance: "101.2 ± 1.3". */
export function expectedText(view: MarksView, distance: number): string | null {
  const [reading] = readingsOf(view, [distance]);
  if (reading == null) return null;
  return `${readText(reading.value, view.picture.scale)} ${halfText(reading, view.picture.scale)}`;
}

/** What the line is fitted to, and what it asks for. */
export function lineNote(view: MarksView, units: UnitChoice): string {
  const fit = lineFit(view);
  if (fit === null) return '';
  const { speed } = fit.figures;
  const all = view.picture.fit?.ok === true && fit === view.picture.fit.value;
  const low = showQuantity(speed.value - 1.96 * speed.sd, 'speed', units).figure;
  const high = textQuantity(speed.value + 1.96 * speed.sd, 'speed', units);
  const of = all ? '' : ' Line and band: of the others, without what does not fit.';
  return `Band: 95 % of a mark shot in there.${of} The marks ask for an arrow speed of ${textQuantity(speed.value, 'speed', units)}, ${low} to ${high}.`;
}

/** What the sight reads at any distance, for whoever reads along the plot. */
export function readAloud(view: MarksView, distance: number, units: UnitChoice): Said {
  const { picture } = view;
  const [reading] = readingsOf(view, [distance]);
  const where = `At ${farText(distance, units)}`;
  if (reading == null) return { where, figures: ['out of reach'] };
  return { where, figures: [`the sight reads ${readText(reading.value, picture.scale)}`, halfText(reading, picture.scale)] };
}

export function lineSentence({ known, unit }: MarkLineData): string {
  const worst = known.reduce((most, { off }) => Math.max(most, Math.abs(off)), 0);
  const out = known.filter(({ fits }) => !fits).length;
  return `Known marks off the fitted line: at most ${worst.toFixed(1)} ${unit}${out === 0 ? '' : `; ${out} of them ${out === 1 ? 'does' : 'do'} not fit`}.`;
}
