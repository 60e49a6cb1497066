import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultPreferences, limits, type UnitChoice } from '../../../core/model/index.ts';
import { readShots, shotLayouts, tableTold, type ShotsAsked } from '../../../core/tables/index.ts';

const { units } = defaultPreferences;
const plain: ShotsAsked = { layout: null, unit: '', origin: { x: 0, y: 0 }, yGrows: 'up' };
const read = (text: string, asked: Partial<ShotsAsked> = {}, choice: UnitChoice = units) =>
  readShots(text, { ...plain, ...asked }, choice);
const places = (text: string, asked: Partial<ShotsAsked> = {}) => read(text, asked).shots.map(({ x, y }) => [x, y]);

/** Two shots, 12 mm right and 8 mm low, 4 mm left and 30.5 mm high: as people write them (common practice); values by the definitions. */
const written: readonly (readonly [how: string, text: string])[] = [
  ['tabs', '12\t-8\n-4\t30.5'],
  ['semicolons and decimal commas', '12;-8\n-4;30,5'],
  ['commas', '12,-8\n-4,30.5'],
  ['single spaces', '12 -8\n-4 30.5'],
  ['a unit in every cell', '1.2 cm;-0.8 cm\n-4 mm;3.05 cm'],
  ['heads with units', 'x (cm);y (cm)\n1,2;-0,8\n-0,4;3,05'],
  ['heads in words', 'across [mm],height [mm]\n12,-8\n-4,30.5'],
  ['heads in another order', 'y mm\tx mm\n-8\t12\n30.5\t-4'],
  ['heads and a line of units', 'x;y\ncm;cm\n1.2;-0.8\n-0.4;3.05'],
  ['arrow numbers before them', '1;12;-8\n2;-4;30.5'],
  ['arrow numbers before and ends behind', '1;12;-8;1\n2;-4;30.5;1'],
  ['a long minus', '12;−8\n−4;30.5'],
];

describe('a table of shots', () => {
  it.each(written)('is read with %s', (_how, text) => {
    expect(places(text)).toEqual([
      [0.012, -0.008],
      [-0.004, 0.0305],
    ]);
  });

  it('is in inches where inches were chosen, and a head or a cell says otherwise', () => {
    expect(places('1 1/2;-1/2', { unit: 'in' })).toEqual([[0.0381, -0.0127]]); // 1 in = 25.4 mm
    expect(places('x (mm);y (mm)\n12;-8', { unit: 'in' })).toEqual([[0.012, -0.008]]);
    expect(places('12 mm;-8 mm', { unit: 'in' })).toEqual([[0.012, -0.008]]);
  });

  it('counts from where its nought is, and up or down', () => {
    const corner = { x: -0.2, y: 0.2 };
    expect(places('212;208', { origin: corner, yGrows: 'down' })).toEqual([[0.012, -0.008]]);
    expect(places('0;0', { origin: { x: 0.05, y: -0.03 } })).toEqual([[0.05, -0.03]]);
  });

  it('gives arrows and ends by its heads, in any order, and leaves out again what was left out', () => {
    const { shots } = read(
      'end,arrow,x (mm),y (mm),left out,reason\n2,7,12,-8,yes,"struck the stand, hard"\n2,8,1,1,no,\n,,3,3,yes,',
    );
    expect(shots).toEqual([
      { line: 2, x: 0.012, y: -0.008, arrow: 7, end: 2, leftOut: 'struck the stand, hard' },
      { line: 3, x: 0.001, y: 0.001, arrow: 8, end: 2, leftOut: null },
      { line: 4, x: 0.003, y: 0.003, arrow: null, end: null, leftOut: 'left out in the table it came from' },
    ]);
  });

  it('takes its columns in the order that was chosen where no heads say it', () => {
    const text = '3;2;12;8\n4;2;4;30';
    expect(read(text).layout).toBe('arrow x y end');
    expect(read('3;2;12.5;-8\n4;2;-4;30').layout).toBe('arrow end x y');
    expect(read(text, { layout: 'arrow end x y' }).shots[0]).toMatchObject({ arrow: 3, end: 2, x: 0.012, y: 0.008 });
  });

  it('says once of a column whose head nobody knows that it is not read, and which heads are known', () => {
    const { read: told, shots } = read('Wind;x (cm);y (cm)\n3;1,5;-0,8\n4;-0,4;3');
    expect(shots.map(({ x, arrow }) => [x, arrow])).toEqual([
      [0.015, null],
      [-0.004, null],
    ]);
    expect(tableTold(told)).toBe(
      '2 lines taken, with heads. Column 1, “Wind”, is not read: heads that are known are arrow, end, x, y, left out, reason.',
    );
    expect(tableTold(read('x;y;Wind;Licht\n1;2;3;4').read)).toContain('Column 3, “Wind”, and column 4, “Licht”, are not read');
    expect(read('x;y\ncm;cm\n1;2').read.unread).toEqual([]);
  });

  it('knows the words of some neighbours in a head', () => {
    expect(read('Pfeil;rechts (mm);Höhe (mm);Passe\n7;12;-8;2').shots).toEqual([
      { line: 2, x: 0.012, y: -0.008, arrow: 7, end: 2, leftOut: null },
    ]);
    expect(read('Flèche;droite (mm);hauteur (mm)\n7;12;-8').shots[0]).toMatchObject({ x: 0.012, y: -0.008, arrow: 7 });
  });

  it('counts lines as other counts are written', () => {
    const many = Array.from({ length: 1200 }, (_, i) => `${i % 90};${i % 70}`).join('\n');
    expect(tableTold(read(many).read)).toMatch(/^1,200 lines taken\./);
  });

  it('says of every line what became of it', () => {
    const { read: told, shots } = read('Saturday, windy\nx;y\n12;-8\n12;-8\nmiss;\n9;gust\n4000;0\n5;6;gusty', {});
    expect(told.rows.map(({ line, fate, why }) => `${line} ${fate}: ${why ?? ''}`)).toEqual([
      '1 left out: There is no figure on this line.',
      '2 header: ',
      '3 taken: ',
      '4 taken: The same as line 3; kept all the same.',
      '5 left out: There is no figure on this line.',
      '6 left out: A shot position such as 35 mm or 1.4 in was expected.',
      '7 left out: A shot position between −3000 and 3000 mm was expected.',
      '8 taken: The words at its end were not read.',
    ]);
    expect(shots).toHaveLength(3);
    expect(tableTold(told)).toBe('3 lines taken, 4 left out, with heads.');
  });

  it('says of a shot that the origin carries beyond what can be, and of one that the group has already', () => {
    const far = read('2900;0', { origin: { x: 0.2, y: 0 } });
    expect(far.shots).toEqual([]);
    expect(far.read.rows[0]).toMatchObject({
      fate: 'left out',
      why: 'From there it lies more than 3000 mm from the centre of the face.',
    });
    const there = [{ x: 0.012, y: -0.008, arrow: null, end: null, leftOut: null }];
    const twice = readShots('12;-8', plain, units, there);
    expect(twice.read.rows[0]?.why).toBe('The same as a shot of the group; kept all the same.');
    expect(twice.shots).toHaveLength(1);
  });

  it('of 10,000 lines is read whole, and beyond what is read it says how many were not', () => {
    const lines = Array.from({ length: 10_000 }, (_, i) => `${(i % 6) + 1};${i % 300};-${i % 170},5`);
    const { shots, read: told } = read(lines.join('\n'));
    expect(shots).toHaveLength(10_000);
    expect(told.tooMany).toBeNull();
    expect(shots[9_999]).toMatchObject({ arrow: 4, x: 0.099, y: -0.1395 });
    expect(readShots(lines.join('\n'), plain, units, [], 9_000).read.tooMany).toMatch(/9,000 lines were read; 1,000 more/);
  });

  it('tells the fate of every line of any text whatever, and gives only places that can be', () => {
    const piece = fc.oneof(
      fc.string({ maxLength: 12 }),
      fc.constantFrom(
        'x',
        'y',
        'arrow',
        'end',
        'mm',
        'cm',
        'in',
        ';',
        ',',
        '\t',
        ' ',
        '"',
        '12',
        '-8',
        '3,5',
        '1/4',
        '=1+1',
        'NaN',
        '1e9',
      ),
    );
    const anyText = fc.array(fc.oneof(piece, fc.constant('\n')), { maxLength: 60 }).map((parts) => parts.join(''));
    const anyAsked = fc.record({
      layout: fc.constantFrom(null, ...shotLayouts),
      unit: fc.constantFrom('', 'mm', 'cm', 'in'),
      origin: fc.record({ x: fc.constantFrom(0, -0.61, 0.02), y: fc.constantFrom(0, 0.61, -0.03) }),
      yGrows: fc.constantFrom('up' as const, 'down' as const),
    });
    fc.assert(
      fc.property(anyText, anyAsked, (text, asked) => {
        const { shots, read: told } = readShots(text, asked, units);
        const lines = text.split(/\r\n|\r|\n/).filter((line) => /[^\s;,]/.test(line.replace(/^\uFEFF/, '')));
        expect(told.rows).toHaveLength(lines.length);
        expect(told.taken).toBe(shots.length);
        expect(told.rows.filter(({ fate }) => fate === 'taken').map(({ line }) => line)).toEqual(shots.map(({ line }) => line));
        for (const { fate, why } of told.rows) if (fate === 'left out') expect(why).toMatch(/^[A-Z].*\.$/s);
        for (const { x, y } of shots) expect(Math.max(Math.abs(x), Math.abs(y))).toBeLessThanOrEqual(limits.shotOffset.max);
      }),
    );
  });
});
