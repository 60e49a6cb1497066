import { dayText } from '../../../core/findings/index.ts';
import type { Stamp } from '../../../core/model/common.ts';
import type { ArrowLookOver, Condition } from '../../../core/model/lookOver.ts';
import { MOST_ARROWS, type NumberedArrow } from '../../../core/model/numberedArrow.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { readTable, type TableRead } from '../../../core/tables/index.ts';
import {
  blankCell,
  figureCell,
  isBlank,
  pastedCells,
  tableColumns,
  withSpare,
  wordCell,
  wrongIn,
  type EntryColumn,
  type EntryRow,
} from '../../design/entry/index.ts';

const partKeys = ['nock', 'shaft', 'point', 'fletching'] as const satisfies readonly (keyof ArrowLookOver)[];
const spineKeys = ['spine1', 'spine2', 'spine3', 'spine4'] as const;

/** `origin` is the place of the arrow in the set as it was opened: what is not shown here is taken from there. */
export type DozenKey =
  | 'number'
  | 'mass'
  | 'straightness'
  | 'aside'
  | 'note'
  | 'seen'
  | 'origin'
  | (typeof partKeys)[number]
  | (typeof spineKeys)[number];
export type DozenRow = EntryRow<DozenKey>;
type Column = EntryColumn<DozenKey>;

/** What the look-over's day reads while the sheet is open and it was done just now. */
const JUST_NOW = 'now';

const number: Column = { key: 'number', name: 'number', kind: 'number', most: 999, also: ['no', 'arrow'] };
const mass: Column = { key: 'mass', name: 'mass', kind: 'figure', measure: 'arrowMass', also: ['weight'] };
const straightness: Column = {
  key: 'straightness',
  name: 'straightness',
  kind: 'figure',
  measure: 'straightness',
  also: ['tir', 'runout', 'wobble'],
};
const conditions: readonly { readonly value: Condition; readonly text: string }[] = [
  { value: 'not looked at', text: 'not seen' },
  { value: 'sound', text: 'sound' },
  { value: 'flaw', text: 'flaw' },
];

/** Weighed, spined at one place or at four a quarter turn apart, and rolled. */
export function measuredColumns(around: boolean, read: (text: string) => ReturnType<NonNullable<ReadSpine>>): readonly Column[] {
  const turns = ['', '1/4 turn', '1/2 turn', '3/4 turn'];
  const spines = spineKeys.slice(0, around ? 4 : 1).map((key, i): Column => {
    const turn = turns[i] ?? '';
    const also = i === 0 ? ['deflection', 'spine 1'] : [`spine ${i + 1}`];
    const base = { key, also, kind: 'figure', measure: 'deflection', read } as const;
    return i === 0 ? { ...base, name: 'spine' } : { ...base, name: `spine at ${turn}`, head: turn };
  });
  return [number, mass, ...spines, straightness];
}
type ReadSpine = Extract<Column, { kind: 'figure' }>['read'];

/** What was seen, and what was decided on it. */
export const seenColumns: readonly Column[] = [
  number,
  ...partKeys.map((key): Column => ({ key, name: key, kind: 'choice', options: conditions })),
  { key: 'aside', name: 'set aside', kind: 'tick' },
  { key: 'note', name: 'note', kind: 'words', most: 200 },
  { key: 'seen', name: 'looked over', kind: 'told' },
];

const unseen = wordCell('not looked at');
export const blankArrow: DozenRow = {
  number: blankCell,
  mass: blankCell,
  spine1: blankCell,
  spine2: blankCell,
  spine3: blankCell,
  spine4: blankCell,
  straightness: blankCell,
  nock: unseen,
  shaft: unseen,
  point: unseen,
  fletching: unseen,
  aside: blankCell,
  note: blankCell,
  seen: blankCell,
  origin: blankCell,
};

const numberCell = (value: number) => ({ text: String(value), si: value });

export function dozenRows(arrows: readonly NumberedArrow[], units: UnitChoice, today: Stamp): readonly DozenRow[] {
  return arrows.map((arrow, place) => {
    const spine = (i: number) => figureCell(arrow.spines[i] ?? null, 'deflection', units);
    return {
      number: numberCell(arrow.number),
      mass: figureCell(arrow.mass, 'arrowMass', units),
      spine1: spine(0),
      spine2: spine(1),
      spine3: spine(2),
      spine4: spine(3),
      straightness: figureCell(arrow.straightness, 'straightness', units),
      nock: wordCell(arrow.lookOver?.nock ?? unseen.text),
      shaft: wordCell(arrow.lookOver?.shaft ?? unseen.text),
      point: wordCell(arrow.lookOver?.point ?? unseen.text),
      fletching: wordCell(arrow.lookOver?.fletching ?? unseen.text),
      aside: wordCell(arrow.setAside ? 'yes' : ''),
      note: wordCell(arrow.note),
      seen: wordCell(arrow.lookedOver === null ? '' : dayText(arrow.lookedOver, today)),
      origin: wordCell(String(place)),
    };
  });
}

/** After an edit: whoever typed in a row without a number gets the next one, and a part that was looked at was looked at now. */
export function tended(rows: readonly DozenRow[], before: readonly DozenRow[]): readonly DozenRow[] {
  let free = Math.max(0, ...rows.map((row) => row.number.si ?? 0));
  const same = rows.length === before.length;
  return rows.map((row, i) => {
    const numbered =
      row.number.text === '' && !isBlank(row, blankArrow) && free < 999 ? { ...row, number: numberCell(++free) } : row;
    const was = same ? before[i] : undefined;
    if (was === undefined || partKeys.every((key) => was[key].text === row[key].text)) return numbered;
    return { ...numbered, seen: partKeys.every((key) => row[key].text === unseen.text) ? blankCell : wordCell(JUST_NOW) };
  });
}

/** Numbers 1 to 12 where they are missing. */
export function numberedTo(count: number, rows: readonly DozenRow[]): readonly DozenRow[] {
  const there = new Set(rows.map((row) => row.number.si));
  const missing = Array.from({ length: count }, (_, i) => i + 1).filter((one) => !there.has(one));
  const filled = rows.filter((row) => !isBlank(row, blankArrow));
  return withSpare([...filled, ...missing.map((one) => ({ ...blankArrow, number: numberCell(one) }))], blankArrow, MOST_ARROWS);
}

/** Every arrow that is still shot, looked over just now and found sound: somebody has to have pressed the button for it. */
export const allSound = (rows: readonly DozenRow[]): readonly DozenRow[] =>
  rows.map((row) => {
    if (isBlank(row, blankArrow) || row.aside.text !== '') return row;
    const sound = wordCell('sound');
    return { ...row, nock: sound, shaft: sound, point: sound, fletching: sound, seen: wordCell(JUST_NOW) };
  });

interface Kept {
  readonly arrows: readonly NumberedArrow[];
  readonly wrong: string | null;
  /** Whether every arrow that is shot was looked over just now, part by part. */
  readonly allSeen: boolean;
}

/** What the rows come to, or why they cannot be kept as they stand. */
export function arrowsOf(
  rows: readonly DozenRow[],
  opened: readonly NumberedArrow[],
  columns: readonly Column[],
  units: UnitChoice,
  now: Stamp,
): Kept {
  const filled = rows.filter((row) => !isBlank(row, blankArrow));
  const arrows = filled.map((row): NumberedArrow => {
    const spines = spineKeys.map((key) => row[key].si);
    while (spines.length > 0 && spines.at(-1) === null) spines.pop();
    const { nock, shaft, point, fletching } = row;
    const looked = partKeys.some((key) => row[key].text !== unseen.text);
    const was = row.origin.text === '' ? undefined : opened[Number(row.origin.text)];
    return {
      number: row.number.si ?? 0,
      mass: row.mass.si,
      spines,
      straightness: row.straightness.si,
      lookOver: looked
        ? {
            nock: nock.text as Condition,
            shaft: shaft.text as Condition,
            point: point.text as Condition,
            fletching: fletching.text as Condition,
          }
        : null,
      lookedOver: row.seen.text === JUST_NOW ? now : looked ? (was?.lookedOver ?? now) : null,
      setAside: row.aside.text !== '',
      note: row.note.text.trim(),
    };
  });
  const shot = filled.filter((row) => row.aside.text === '');
  const allSeen =
    shot.length > 0 &&
    shot.every(
      (row) => row.seen.text === JUST_NOW && partKeys.every((key) => row[key] !== unseen && row[key].text !== unseen.text),
    );
  return { arrows, wrong: wrongOf(filled, columns, units), allSeen };
}

function wrongOf(filled: readonly DozenRow[], columns: readonly Column[], units: UnitChoice): string | null {
  const numbers = filled.map((row) => row.number.si);
  for (const row of filled) {
    for (const column of columns) {
      const sentence = wrongIn(column, row[column.key], units);
      if (sentence !== null) return `Arrow ${row.number.text}, ${column.name}: ${sentence}`;
    }
    if (row.number.si === null) return 'Every arrow needs a number.';
  }
  const twice = numbers.find((one, i) => numbers.indexOf(one) !== i);
  if (twice !== undefined) return `Number ${twice} stands on two arrows: give one of them another.`;
  return filled.length > MOST_ARROWS ? `At most ${MOST_ARROWS} numbered arrows were expected in one set.` : null;
}

/** The arrow after the last: it has a number also where its line could not be read. */
const nextArrow = (rows: readonly DozenRow[]): DozenRow => {
  const last = Math.max(0, ...rows.map((row) => row.number.si ?? 0));
  return last < 999 ? { ...blankArrow, number: numberCell(last + 1) } : blankArrow;
};

/** A table with numbers goes to the arrows that bear them; one without fills the rows from the top, or goes on below. */
export function arrowsFromTable(
  text: string,
  rows: readonly DozenRow[],
  columns: readonly Column[],
  units: UnitChoice,
): { readonly rows: readonly DozenRow[]; readonly read: TableRead } {
  const [, ...figures] = columns;
  const required = (list: readonly Column[], count: number) =>
    tableColumns(list).map((column, i) => ({ ...column, optional: i >= count }));
  const byNumber = readTable(text, required(columns, 2), units, MOST_ARROWS);
  const inOrder = readTable(text, required(figures, 1), units, MOST_ARROWS);
  const numbered = byNumber.taken >= inOrder.taken && byNumber.taken > 0;
  const read = numbered ? byNumber : inOrder;
  const next = rows.filter((row) => !isBlank(row, blankArrow));
  const asked = numbered ? columns : figures;
  // Rows are filled in order only while their masses are missing; what was weighed before is not written over.
  const free = next.findIndex((row) => row.mass.text === '');
  const start = free < 0 ? next.length : free;
  // A line that is blank or left out keeps its arrow's place: the next figure is the next arrow's.
  const top = read.rows.find(({ fate }) => fate === 'taken')?.line ?? 0;
  for (const { fate, line, values } of read.rows) {
    if (fate !== 'taken') continue;
    const cells = pastedCells(asked, values, units);
    const row = numbered ? next.findIndex((one) => one.number.si === values[0]) : start + line - top;
    if (row < 0) next.push({ ...blankArrow, ...cells });
    else {
      while (next.length <= row) next.push(nextArrow(next));
      next[row] = { ...(next[row] ?? blankArrow), ...cells };
    }
  }
  return { rows: withSpare(tended(next, next), blankArrow, MOST_ARROWS), read };
}
