import { xml, type XmlNode } from '../../export/xml.ts';
import { ok, refuse, type Result } from '../../../core/model/problem.ts';
import { together } from '../../../core/model/sentence.ts';
import { uprightCheck } from '../checkLine.ts';
import { sizes, written } from '../ink.ts';
import { MARGIN, type Page } from '../pages.ts';
import type { PaperHead, StripPaper } from '../papers.ts';
import { paragraph } from '../paragraph.ts';
import { frameOf, type Sheet, sheetOf } from '../sheet.ts';
import { checkText, correction } from '../trueSize.ts';
import { barScale, drawBarScale } from './barScale.ts';
import { drawStrip } from './draw.ts';
import { stripList } from './list.ts';
import { stripMarks, type StripMarks } from './marks.ts';
import { type PlacedRow, placeOf, stripPlaces, type StripPlaces } from './places.ts';
import { widthsFor } from './widths.ts';

export interface StripOptions {
  /** Which of `stripWidths` [mm]. */
  readonly widths: readonly number[];
  /** Whether every reading is listed beside the strips. */
  readonly list: boolean;
}

/** Between one thing and the next across the sheet [mm]. */
const GAP = 6;
const SCALE_ROOM = 13;

/** The reading by which the strip is stuck on, at a line with its figure: a known mark near the middle, or else the one there. */
function setBy(lines: StripMarks['lines']) {
  const rows = lines.filter(({ labelled }) => labelled).map(({ row }) => row);
  const middle = ((rows[0]?.at ?? 0) + (rows.at(-1)?.at ?? 0)) / 2;
  const known = rows.filter((row) => row.known);
  return [...(known.length > 0 ? known : rows)].sort((a, b) => Math.abs(a.at - middle) - Math.abs(b.at - middle))[0];
}

/** Only what every strip of the sheet has a figure for. */
const labelledOnAll = (strips: readonly StripMarks[]): StripMarks['lines'] =>
  (strips[0]?.lines ?? []).filter(({ row }) =>
    strips.every(({ lines }) => lines.some((line) => line.row === row && line.labelled)),
  );

function howTo(paper: StripPaper, lines: StripMarks['lines'], factor: number): string[] {
  const by = setBy(lines);
  const line = by === undefined ? '' : `${by.label} ${paper.distanceUnit}`;
  return [
    checkText(factor),
    'Lay the sheet against the bar: its own scale must agree. Cut out the strip that is as wide as the bar allows, along its outline.',
    by === undefined
      ? ''
      : `Set the sight to ${by.reading.value.toFixed(paper.digits).replace('-', '\u2212')}. Stick the strip on, arrow up, with its line for ${line} at the pin.`,
  ].filter((step) => step !== '');
}

/** What dots, dashes and rings say. */
function explained({ placed }: StripPlaces, { proven }: StripPaper): string[] {
  const [known, weak] = [placed.some((row) => row.known), placed.some((row) => row.weak)];
  const said = [
    known && 'A dot is a mark that was shot. It stands at the fitted place.',
    !proven && 'Every line is dashed, for none of them is proven.',
    weak &&
      `${proven ? 'A dashed line is weak; where it has a ring' : 'Where a line has a ring'}, the mark lies within its bar 95 times in 100. Shoot there and enter it.`,
  ].filter((words) => words !== false);
  return said.length === 0 ? [] : [said.join(' ')];
}

/** "74 to 80 yd, at 118.3 to 128.8". */
function namesOf(rows: readonly PlacedRow[], { distanceUnit, digits }: StripPaper): string {
  const [first, last] = [rows[0], rows.at(-1)];
  if (first === undefined || last === undefined) return '';
  const text = (value: number) => value.toFixed(digits).replace('-', '\u2212');
  if (rows.length <= 2) return together(rows.map(({ label, reading }) => `${label} ${distanceUnit} at ${text(reading.value)}`));
  return `${first.label} to ${last.label} ${distanceUnit}, at ${text(first.reading.value)} to ${text(last.reading.value)}`;
}

/** The distances that have no line, and why. */
function leftOut({ off, turned, beyond }: StripPlaces, paper: StripPaper): string[] {
  const { lowest = -Infinity, distanceUnit } = paper;
  const below = off.filter(({ reading }) => reading.value < lowest);
  const above = off.filter((row) => !below.includes(row));
  const [nearest, farthest] = [beyond[0]?.label ?? '', beyond.at(-1)?.label ?? ''];
  return [
    ...[below, above].filter((rows) => rows.length > 0).map((rows) => `Off the bar: ${namesOf(rows, paper)}.`),
    ...(turned.length === 0 ? [] : [`So near that the pin comes down again, and not on the strip: ${namesOf(turned, paper)}.`]),
    ...(beyond.length === 0
      ? []
      : [`Farther than the arrow carries: ${nearest === farthest ? nearest : `${nearest} to ${farthest}`} ${distanceUnit}.`]),
  ];
}

const titleOf = ({ title, proven }: StripPaper): string => (proven ? title : `${title}, not proven`);

/** The strips of several widths at true size, the bar's own scale and the check line beside them, and what to do with them. */
export function stripSheet(
  paper: StripPaper,
  head: PaperHead,
  page: Page,
  options: StripOptions,
  checkLine: number | null,
): Result<Sheet> {
  const factor = correction(checkLine);
  const places = stripPlaces(paper);
  const { placed } = places;
  if (placed.length < 2)
    return refuse(
      'nothing-on-the-bar',
      'Fewer than two of these distances are on the bar. Choose others, or see to the ends of its scale.',
    );
  const chosen = widthsFor(paper.proven).filter(({ width }) => options.widths.includes(width));
  if (chosen.length === 0) return refuse('no-strip', 'Choose at least one width of strip.');
  const title = titleOf(paper);
  const frame = frameOf(page, title, paper.note, head, paper.proven);
  const strips = chosen.map((place) => stripMarks(placed, place, factor));
  const height = strips[0]?.height ?? 0;
  const top = frame.top + 5;
  if (top + height > frame.bottom) {
    const fits = placed.filter(({ at }) => top + 14 + factor * (at - (placed[0]?.at ?? 0)) <= frame.bottom).at(-1);
    return refuse(
      'too-long',
      `A strip to ${placed.at(-1)?.label ?? ''} ${paper.distanceUnit} is ${Math.round(height)} mm long and the sheet has room for ${Math.floor(frame.bottom - top)} mm. Print it to ${fits?.label ?? ''} ${paper.distanceUnit}, and the farther distances by themselves.`,
    );
  }
  const nodes: XmlNode[] = [...frame.nodes];
  const first = placed[0]?.at ?? 0;
  const [line] = strips[0]?.lines ?? [];
  const firstY = line === undefined ? 0 : line.y - factor * (line.row.at - first);
  const yOf = (reading: number) => top + firstY + factor * (placeOf(reading, paper) - first);
  const readingAt = (y: number) => {
    const at = first + (y - top - firstY) / factor;
    return at / (paper.unit * 1000) / (paper.grows === 'down' ? 1 : -1);
  };
  let x = MARGIN + SCALE_ROOM;
  nodes.push(written('the bar’s scale', MARGIN, top - 1.6, 'name', sizes.small));
  nodes.push(...drawBarScale(barScale(readingAt(top), readingAt(top + height), yOf), x - 2.5));
  for (const marks of strips) {
    const { width } = marks.place;
    nodes.push(written(`${width} mm`, x + width, top - 1.6, 'note', sizes.small, 'end'));
    nodes.push(
      xml(
        'g',
        { transform: `translate(${x} ${top})`, 'data-strip': width },
        drawStrip(marks, {
          unit: paper.distanceUnit,
          // Which strip this is: told as fully as it is long.
          side: [`${head.archer}, ${head.date}: ${head.arrows}`, `${head.archer}, ${head.date}`],
        }),
      ),
    );
    x += width + GAP;
  }
  nodes.push(...uprightCheck(x + 1, top + 1, factor));
  const textX = x + 25;
  const room = page.width - MARGIN - textX;
  let y = top;
  for (const [i, step] of howTo(paper, labelledOnAll(strips), factor).entries()) {
    const { nodes: lines, bottom } = paragraph(step, { x: textX + 5, top: y, width: room - 5 }, sizes.text);
    nodes.push(written(String(i + 1), textX, y + 0.95 * sizes.text, 'strong', sizes.text), ...lines);
    y = bottom + 2;
  }
  for (const words of [...explained(places, paper), ...leftOut(places, paper)]) {
    const { nodes: lines, bottom } = paragraph(words, { x: textX, top: y, width: room }, sizes.note, 'note');
    nodes.push(...lines);
    y = bottom + 1.4;
  }
  if (options.list)
    nodes.push(...stripList(paper, places, { left: textX, right: page.width - MARGIN, top: y + 2, bottom: frame.bottom }));
  return ok(sheetOf(page, title, `${title}. ${paper.note}`, nodes));
}
