import { describe, expect, it } from 'vitest';
import { readSpine } from '../../core/arrow/index.ts';
import { ArrowSet, defaultPreferences, exampleBundle, type NumberedArrow, type Stamp } from '../../core/model/index.ts';
import { wordCell } from '../../renderer/design/entry/cells.ts';
import {
  allSound,
  arrowsFromTable,
  arrowsOf,
  blankArrow,
  dozenRows,
  measuredColumns,
  numberedTo,
  seenColumns,
  tended,
  type DozenRow,
} from '../../renderer/features/arrow/dozenRows.ts';
import { looksLikeMasses } from '../../renderer/features/arrow/massesPasted.ts';

const { units } = defaultPreferences;
const grain = 6.479891e-5;
const today: Stamp = { at: '2026-06-20T10:00:00Z', offsetMinutes: 60 };
const before: Stamp = { at: '2026-05-02T10:00:00Z', offsetMinutes: 60 };
const spine = (text: string) => readSpine(text, '28 in, 880 g', units);
const columns = measuredColumns(true, spine);
const all = [...columns, ...seenColumns];
const kept = (rows: readonly DozenRow[], opened: readonly NumberedArrow[] = []) => arrowsOf(rows, opened, all, units, today);

const arrows: readonly NumberedArrow[] = [
  {
    number: 1,
    mass: 309.73 * grain,
    spines: [0.0152, null, 0.0153],
    straightness: 0.0001,
    lookOver: { nock: 'sound', shaft: 'sound', point: 'sound', fletching: 'flaw' },
    lookedOver: before,
    setAside: false,
    note: 'fletching lifts',
  },
  { number: 7, mass: null, spines: [], straightness: null, lookOver: null, lookedOver: null, setAside: true, note: '' },
];

describe('numbered arrows on their sheet', () => {
  it('come back exactly as they were when nothing was touched', () => {
    const rows = [...dozenRows(arrows, units, today), blankArrow];
    expect(kept(rows, arrows)).toEqual({ arrows, wrong: null, allSeen: false });
    expect(rows[0]?.seen.text).toBe('2 May');
  });

  it('are numbered 1 to 12 at a stroke, those that are missing', () => {
    const rows = numberedTo(12, [...dozenRows(arrows, units, today), blankArrow]);
    expect(rows.map((row) => row.number.text)).toEqual(['1', '7', '2', '3', '4', '5', '6', '8', '9', '10', '11', '12', '']);
    expect(numberedTo(12, rows)).toEqual(rows);
    const twelve = kept(numberedTo(12, [blankArrow])).arrows;
    expect(twelve).toHaveLength(12);
    expect(ArrowSet.safeParse({ ...exampleBundle.arrowSet, arrows: twelve }).success).toBe(true);
  });

  it('get the next number when somebody types in a row without one', () => {
    const rows = [...dozenRows(arrows, units, today), { ...blankArrow, mass: { text: '310', si: 0.02 } }, blankArrow];
    expect(tended(rows, rows).map((row) => row.number.text)).toEqual(['1', '7', '8', '']);
  });

  it('are looked over now when a part is, and never before', () => {
    const rows = dozenRows(arrows, units, today);
    const [first, second] = rows;
    if (first === undefined || second === undefined) throw new Error('two rows were expected');
    const next = tended([{ ...first, fletching: wordCell('sound') }, second], rows);
    expect(kept(next, arrows).arrows.map(({ lookedOver }) => lookedOver)).toEqual([today, null]);
    const unseen = wordCell('not looked at');
    const none = tended([{ ...first, nock: unseen, shaft: unseen, point: unseen, fletching: unseen }, second], rows);
    expect(kept(none, arrows).arrows[0]).toMatchObject({ lookOver: null, lookedOver: null });
  });

  it('are all sound only where somebody said so, and only those that are shot', () => {
    const rows = [...dozenRows(arrows, units, today), blankArrow];
    const { arrows: found, allSeen } = kept(allSound(rows), arrows);
    expect(found[0]?.lookOver).toEqual({ nock: 'sound', shaft: 'sound', point: 'sound', fletching: 'sound' });
    expect(found[0]?.lookedOver).toEqual(today);
    expect(found[1]).toEqual(arrows[1]);
    expect(allSeen).toBe(true);
    const added = tended([...allSound(rows).slice(0, 2), { ...blankArrow, mass: { text: '310', si: 0.02 } }], rows);
    expect(kept(added, arrows).allSeen).toBe(false);
  });

  it('are refused with two of one number, or with a figure that cannot be read', () => {
    const [first] = dozenRows(arrows, units, today);
    if (first === undefined) throw new Error('a row was expected');
    expect(kept([first, first]).wrong).toBe('Number 1 stands on two arrows: give one of them another.');
    expect(kept([{ ...first, mass: { text: 'heavy', si: null } }]).wrong).toBe(
      'Arrow 1, mass: A weighed arrow such as 310 gr or 20.1 g was expected.',
    );
    expect(kept([{ ...first, spine3: { text: '500', si: null } }]).wrong).toMatch(/^Arrow 1, spine at 1\/2 turn: /);
  });
});

describe('a table of arrows', () => {
  const start = numberedTo(12, [blankArrow]);
  const massOf = (rows: readonly DozenRow[]) =>
    Object.fromEntries(rows.filter((row) => row.mass.text !== '').map((row) => [row.number.text, row.mass.text]));

  it('with numbers goes to the arrows that bear them', () => {
    const { rows, read } = arrowsFromTable('no;mass\n3;310,5\n1;309\n14;312\nx;5', start, columns, units);
    expect(massOf(rows)).toEqual({ 1: '309', 3: '310.5', 14: '312' });
    expect(read.leftOut).toBe(1);
  });

  it('of masses alone fills the arrows in order, and writes over none', () => {
    const first = arrowsFromTable('310\n311\n312', start, columns, units).rows;
    expect(massOf(first)).toEqual({ 1: '310', 2: '311', 3: '312' });
    expect(massOf(arrowsFromTable('320', first, columns, units).rows)).toEqual({ 1: '310', 2: '311', 3: '312', 4: '320' });
    expect(massOf(arrowsFromTable('310\n311', [blankArrow], columns, units).rows)).toEqual({ 1: '310', 2: '311' });
  });

  it('of masses keeps the place of an arrow whose line is blank or cannot be read', () => {
    const { rows } = arrowsFromTable('310\nheavy\n312\n\n314', start, columns, units);
    expect(massOf(rows)).toEqual({ 1: '310', 3: '312', 5: '314' });
    const onBlank = arrowsFromTable('310\nheavy\n312', [blankArrow], columns, units).rows;
    expect(massOf(onBlank)).toEqual({ 1: '310', 3: '312' });
  });

  it('is told from a column of numbers by parts of a grain, three figures or a figure twice', () => {
    expect(looksLikeMasses('310\n311\n312')).toBe(true);
    expect(looksLikeMasses('20,1\nheavy\n20,3')).toBe(true);
    expect(looksLikeMasses('21\n20\n21')).toBe(true);
    expect(looksLikeMasses('1\n2\n3\n12')).toBe(false);
    expect(looksLikeMasses('1\t310\n2\t311')).toBe(false);
    expect(looksLikeMasses('310')).toBe(false);
  });

  it('takes spines too, and says what it left out', () => {
    const { rows, read } = arrowsFromTable('1\t310\t0.602\t0.604\n2\t311\t0.610\n3\t312\t9', start, columns, units);
    expect(rows.slice(0, 2).map((row) => [row.spine1.text, row.spine2.text])).toEqual([
      ['0.602', '0.604'],
      ['0.610', ''],
    ]);
    expect(read.rows.map(({ fate }) => fate)).toEqual(['taken', 'taken', 'left out']);
  });
});
