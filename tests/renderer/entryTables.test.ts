import { describe, expect, it } from 'vitest';
import { defaultPreferences, type ForceReading, type UnitChoice } from '../../core/model/index.ts';
import { MOST_READINGS } from '../../core/model/readings.ts';
import {
  figureCell,
  isBlank,
  typedCell,
  withSpare,
  wrongIn,
  type EntryColumn,
  type EntryRow,
} from '../../renderer/design/entry/cells.ts';
import { moved } from '../../renderer/design/entry/move.ts';
import { isTable, pasteAt } from '../../renderer/design/entry/paste.ts';
import { fileText } from '../../renderer/design/entry/fileText.ts';
import {
  blankReading,
  readingColumns,
  readingRows,
  readingsFromTable,
  readingsOf,
} from '../../renderer/features/bow/readingRows.ts';
import { blankSpeed, speedsFromTable, speedsOf } from '../../renderer/features/bow/speedRows.ts';

const { units } = defaultPreferences;
const metric: UnitChoice = { ...units, length: 'mm', weight: 'kg', mass: 'g' };
const inch = 0.0254;
const pound = 4.4482216152605;
const grain = 6.479891e-5;

const mass: EntryColumn<'mass'> = { key: 'mass', name: 'mass', kind: 'figure', measure: 'arrowMass' };

describe('a cell', () => {
  it('shows a figure without its unit, one decimal finer than elsewhere, and keeps it exactly', () => {
    expect(figureCell(309.7 * grain, 'arrowMass', units)).toEqual({ text: '309.7', si: 309.7 * grain });
    expect(figureCell(310 * grain, 'arrowMass', units).text).toBe('310');
    expect(figureCell(28.25 * inch, 'readingDraw', units).text).toBe('28 1/4');
    expect(figureCell(0.6 * inch, 'deflection', units).text).toBe('0.600');
    expect(figureCell(0.6004 * inch, 'deflection', units).text).toBe('0.6004');
    expect(figureCell(178.4 * 0.3048, 'arrowSpeed', units).text).toBe('178.4');
    expect(figureCell(null, 'arrowMass', units)).toEqual({ text: '', si: null });
  });

  it('is read as it is typed, in any unit, and says what is wrong with it', () => {
    expect(typedCell(mass, '20 g', units).si).toBeCloseTo(0.02, 12);
    expect(wrongIn(mass, typedCell(mass, '', units), units)).toBeNull();
    expect(wrongIn(mass, typedCell(mass, 'heavy', units), units)).toBe('A weighed arrow such as 310 gr or 20.1 g was expected.');
    const number: EntryColumn = { key: 'number', name: 'number', kind: 'number', most: 999 };
    expect(typedCell(number, ' 7 ', units).si).toBe(7);
    expect(wrongIn(number, typedCell(number, '7.5', units), units)).toBe(
      'For number, a whole number from 1 to 999 was expected.',
    );
    const draw: EntryColumn = { key: 'draw', name: 'draw', kind: 'figure', measure: 'readingDraw' };
    expect(wrongIn(draw, typedCell(draw, '28 1/4', metric), metric)).toBe('A fraction needs its unit here, as in 28 1/4 in.');
  });
});

describe('moving in a table', () => {
  const size = { rows: 3, columns: 2 };
  it('goes with the arrow keys and stops at the edge', () => {
    expect(moved({ row: 1, column: 0 }, size, 'ArrowUp', false, 'across')).toEqual({ row: 0, column: 0 });
    expect(moved({ row: 0, column: 0 }, size, 'ArrowUp', false, 'across')).toBeNull();
    expect(moved({ row: 0, column: 1 }, size, 'ArrowRight', false, 'across')).toBeNull();
    expect(moved({ row: 0, column: 0 }, size, 'a', false, 'across')).toBeNull();
  });

  it('goes with Enter along the rows or down the column, and back with Shift', () => {
    expect(moved({ row: 0, column: 1 }, size, 'Enter', false, 'across')).toEqual({ row: 1, column: 0 });
    expect(moved({ row: 1, column: 0 }, size, 'Enter', true, 'across')).toEqual({ row: 0, column: 1 });
    expect(moved({ row: 0, column: 1 }, size, 'Enter', false, 'down')).toEqual({ row: 1, column: 1 });
    expect(moved({ row: 2, column: 1 }, size, 'Enter', false, 'down')).toBeNull();
  });
});

describe('a table pasted into a cell', () => {
  const blank: EntryRow<'mass'> = { mass: { text: '', si: null } };
  const texts = (rows: readonly EntryRow<'mass'>[]) => rows.map((row) => row.mass.text);

  it('is told from a single figure', () => {
    expect([isTable('310'), isTable('310\n'), isTable('310\n311'), isTable('310\t0.6'), isTable('5 ft 8 in')]).toEqual([
      false,
      false,
      true,
      true,
      false,
    ]);
  });

  it('fills from there down, and leaves a row alone whose line is blank or cannot be read', () => {
    const rows = withSpare(
      ['301', '302', '303', '304'].map((text): EntryRow<'mass'> => ({ mass: typedCell(mass, text, units) })),
      blank,
      10,
    );
    const pasted = pasteAt(rows, blank, [mass], { row: 1, column: 0 }, 'mass (gr)\n310\n\nbroken\n311\n312', units, 10);
    expect(texts(pasted.rows)).toEqual(['301', '310', '303', '304', '311', '312']);
    expect(pasted.read.leftOut).toBe(1);
  });

  it('says of each line below the table’s last row that it is left out', () => {
    const pasted = pasteAt([blank, blank], blank, [mass], { row: 1, column: 0 }, '310\n311\n312', units, 3);
    expect(texts(pasted.rows)).toEqual(['', '310', '311']);
    expect(pasted.read.rows.map(({ fate }) => fate)).toEqual(['taken', 'taken', 'left out']);
    expect([pasted.read.taken, pasted.read.leftOut]).toEqual([2, 1]);
    expect(pasted.read.rows[2]?.why).toBe('This table holds 3 rows, and the rest is below them.');
  });

  it('leaves one blank row for whoever goes on', () => {
    const filled = { mass: typedCell(mass, '310', units) };
    expect(withSpare([filled], blank, 10)).toHaveLength(2);
    expect(withSpare([filled, blank], blank, 10)).toHaveLength(2);
    expect(withSpare([filled, filled], blank, 2)).toHaveLength(2);
    expect(isBlank(filled, blank)).toBe(false);
  });
});

describe('readings on their sheet', () => {
  const read = (inches: number, pounds: number, way: ForceReading['way'] = 'draw'): ForceReading => ({
    draw: inches * inch,
    force: pounds * pound,
    way,
  });
  const kept = [read(10, 5.2), read(20, 22), read(28, 36.1), read(20, 21, 'let-down'), read(24, 28, 'let-down')];

  it('stand draw by draw, and come back as they were', () => {
    const rows = readingRows(kept, units);
    expect(rows.map((row) => [row.draw.text, row.force.text, row.down.text])).toEqual([
      ['10', '5.2', ''],
      ['20', '22', '21'],
      ['28', '36.1', ''],
      ['24', '', '28'],
    ]);
    for (const choice of [units, metric]) expect(readingsOf(readingRows(kept, choice), 'AMO', choice).readings).toEqual(kept);
    expect(readingsOf(rows, 'AMO', units).rowOf).toEqual([0, 1, 2, 1, 3]);
  });

  it('from the grip are kept as AMO draws, which end 1 3/4 in beyond the pivot (ASTM F1832, AMO)', () => {
    const { readings } = readingsOf(readingRows([read(26.25, 36)], units), 'grip', units);
    expect(readings[0]?.draw).toBeCloseTo(28 * inch, 12);
    expect(readingsOf(readingRows([read(41, 36)], units), 'grip', units).wrong).toMatch(
      /^Row 1: From the grip it is a draw of 42 3\/4 in/,
    );
  });

  it('say which row cannot be kept, and pass over blank ones', () => {
    const row = (draw: string, force: string, down = '') => {
      const [d, f, l] = readingColumns(true);
      if (d === undefined || f === undefined || l === undefined) throw new Error('three columns were expected');
      return { draw: typedCell(d, draw, units), force: typedCell(f, force, units), down: typedCell(l, down, units) };
    };
    expect(readingsOf([row('10', '5'), blankReading, row('12', '')], 'AMO', units).wrong).toBe(
      'Row 3: A draw needs the force that was read at it.',
    );
    expect(readingsOf([row('', '5')], 'AMO', units).wrong).toBe('Row 1: A force needs the draw that it was read at.');
    expect(readingsOf([row('10', 'x')], 'AMO', units).wrong).toBe(
      'Row 1: A force of a reading such as 30 lb or 13.6 kg was expected.',
    );
    expect(readingsOf([row('12', '5'), row('11', '9')], 'AMO', units)).toMatchObject({ wrong: null, readings: { length: 2 } });
    expect(readingsOf([blankReading], 'AMO', units)).toEqual({ readings: [], rowOf: [], wrong: null });
  });

  it('are read from a table with a second force, or with the way that each was read', () => {
    const beside = readingsFromTable('draw;force;down\n10;5,2;\n20;22;21', units);
    const byWord = readingsFromTable('draw;force;way\n10;5,2;draw\n20;22;draw\n20;21;let-down', units);
    const both = [beside, byWord].map(({ rows }) => readingsOf(rows, 'AMO', units).readings);
    const expected = [read(10, 5.2), read(20, 22), read(20, 21, 'let-down')];
    for (const readings of both) {
      expect(readings.map(({ way }) => way)).toEqual(expected.map(({ way }) => way));
      readings.forEach(({ draw, force }, i) => {
        expect(draw).toBeCloseTo(expected[i]?.draw ?? 0, 12);
        expect(force).toBeCloseTo(expected[i]?.force ?? 0, 12);
      });
    }
  });
});

describe('timed arrows on their sheet', () => {
  it('are pairs of a mass and a speed', () => {
    const { rows, read } = speedsFromTable('mass (gr),speed (ft/s)\n310,182.4\n402,169.6\n,150', units);
    expect(read.leftOut).toBe(1);
    const { found: speeds, wrong } = speedsOf([...rows, blankSpeed], units);
    expect(wrong).toBeNull();
    expect(speeds[0]?.mass).toBeCloseTo(310 * grain, 12);
    expect(speeds[0]?.speed).toBeCloseTo(182.4 * 0.3048, 12);
    const [first] = rows;
    expect(speedsOf(first === undefined ? [] : [{ ...first, speed: { text: '', si: null } }], units).wrong).toBe(
      'Row 1: An arrow’s mass and its speed belong together.',
    );
    const many = Array.from({ length: MOST_READINGS + 1 }, () => first ?? blankSpeed);
    expect(speedsOf(many, units).wrong).toBe(`At most ${MOST_READINGS} timed arrows were expected; these are ${many.length}.`);
    expect(speedsOf(many.slice(1), units).wrong).toBeNull();
  });
});

describe('a chosen file', () => {
  const file = (...bytes: number[]) => new Blob([new Uint8Array(bytes)]);

  it('is read in UTF-8 and in UTF-16 of either order', async () => {
    expect(await fileText(file(0x31, 0xc2, 0xbc))).toEqual({ ok: true, value: '1¼' });
    expect(await fileText(file(0xff, 0xfe, 0x31, 0, 0x0a, 0))).toEqual({ ok: true, value: '1\n' });
    expect(await fileText(file(0xfe, 0xff, 0, 0x31))).toEqual({ ok: true, value: '1' });
  });

  it('is refused when it is no text or far too large', async () => {
    expect(await fileText(file(0x89, 0x50, 0, 0x47))).toMatchObject({ ok: false, problem: { code: 'no-text' } });
    expect(await fileText(new Blob([new Uint8Array(1_000_001)]))).toMatchObject({ ok: false, problem: { code: 'too-large' } });
  });
});
