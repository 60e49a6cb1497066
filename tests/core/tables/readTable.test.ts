import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultPreferences, limits, type UnitChoice } from '../../../core/model/index.ts';
import { readTable, tableTold, type TableColumn } from '../../../core/tables/index.ts';

const { units } = defaultPreferences;
const metric: UnitChoice = { ...units, length: 'cm', weight: 'kg', mass: 'g' };
const inch = 0.0254;
const pound = 4.4482216152605;
const kilogram = 9.80665;

const readings: readonly TableColumn[] = [
  { name: 'draw', measure: 'readingDraw' },
  { name: 'force', measure: 'readingForce', also: ['weight', 'force up'] },
  { name: 'let-down', measure: 'readingForce', also: ['down', 'force down'], optional: true },
];
const masses: readonly TableColumn[] = [{ name: 'mass', measure: 'arrowMass' }];

const fates = (text: string, columns = readings, choice = units) => readTable(text, columns, choice).rows.map(({ fate }) => fate);
const taken = (text: string, columns = readings, choice = units) =>
  readTable(text, columns, choice)
    .rows.filter(({ fate }) => fate === 'taken')
    .map(({ values }) => values);
const whyOf = (text: string, columns = readings) => readTable(text, columns, units).rows.at(-1)?.why;

/** The same two readings, 10 in with 5.2 lb and 28 1/4 in with 36 lb, as people write them: common practice. Values by the definitions. */
const written: readonly (readonly [how: string, text: string])[] = [
  ['tabs', '10\t5.2\n28.25\t36'],
  ['semicolons and decimal commas', '10;5,2\n28,25;36'],
  ['commas', '10,5.2\n28.25, 36'],
  ['several spaces', '10     5.2\n28.25  36'],
  ['several spaces and decimal commas', '10     5,2\n28,25  36,0'],
  ['single spaces', '10 5.2\n28 1/4 36'],
  ['single spaces and units', '10 in 5.2 lb\n28 1/4 in 36 lb'],
  ['units after every number', '10in;5.2lb\n28.25 in;36#'],
  ['other units', '25,4 cm\t5,2 lb\n717.55 mm\t36 lb'],
  ['quotation marks', '"10","5,2"\n"28,25","36"'],
  ['inch marks', '10", 5.2\n28 1/4", 36'],
  ['heads', 'Draw,Force\n10,5.2\n28.25,36'],
  ['heads with units', 'draw (in);force (lb)\n10;5,2\n28,25;36'],
  ['heads in another order', 'force [lb]\tdraw [in]\n5.2\t10\n36\t28.25'],
  ['heads among others', 'No;draw, in;weight, lb;remark\n1;10;5.2;windy\n2;28.25;36;'],
  ['heads and a line of units', 'draw;force\nin;lb\n10;5.2\n28.25;36'],
  ['a blank line, a mark of the editor and line ends of two kinds', '\uFEFF10;5.2\r\n\r\n28.25;36\r\n'],
];

describe('a pasted table', () => {
  it.each(written)('is read with %s', (_how, text) => {
    for (const choice of text.includes('lb') && text.includes('in') && /head|[([]|#|in;|in /.test(text)
      ? [units, metric]
      : [units]) {
      const rows = taken(text, readings, choice);
      expect(rows).toHaveLength(2);
      [10 * inch, 5.2 * pound, 28.25 * inch, 36 * pound].forEach((value, i) =>
        expect(rows[Math.floor(i / 2)]?.[i % 2]).toBeCloseTo(value, 9),
      );
    }
  });

  it('takes bare numbers in the unit of the heads, and a cell in its own', () => {
    const [first, second] = taken('draw (cm)\tforce (kg)\n25.4\t2.5\n28 in\t36 lb');
    expect(first?.[0]).toBeCloseTo(0.254, 12);
    expect(first?.[1]).toBeCloseTo(2.5 * kilogram, 9);
    expect(second?.[0]).toBeCloseTo(28 * inch, 12);
    expect(second?.[1]).toBeCloseTo(36 * pound, 9);
  });

  it('takes bare numbers without heads in the unit of the column, else of the person', () => {
    expect(taken('71.1\t16', readings, metric)[0]?.[0]).toBeCloseTo(0.711, 12);
    const [draw, force] = readings;
    const inInches = [{ ...draw, unit: 'in' }, force] as readonly TableColumn[];
    expect(taken('28\t16', inInches, metric)[0]?.[0]).toBeCloseTo(28 * inch, 12);
  });

  it('takes a third column when there is one, and goes without where a line has none', () => {
    const rows = taken('draw\tforce up\tforce down\n10\t5.2\t\n20\t22\t21');
    expect(rows.map((row) => row[2] === null)).toEqual([true, false]);
    expect(rows[1]?.[2]).toBeCloseTo(21 * pound, 9);
  });

  it('knows words for what they are', () => {
    const columns: readonly TableColumn[] = [...readings.slice(0, 2), { name: 'way', words: [['draw'], ['let-down', 'down']] }];
    expect(taken('10;5;draw\n10;4.5;Down', columns).map((row) => row[2])).toEqual([0, 1]);
    expect(whyOf('10;5;sideways', columns)).toBe('For way, draw or let-down was expected.');
  });

  it('knows numbers that something bears', () => {
    const columns: readonly TableColumn[] = [{ name: 'arrow', whole: [1, 999] }, ...masses];
    expect(taken('arrow;mass\n1;310\nNo. 2;311\n#3;309', columns).map(([number]) => number)).toEqual([1, 2, 3]);
    expect(whyOf('1.5;310', columns)).toBe('For arrow, a whole number from 1 to 999 was expected.');
  });

  it('is one column if one was asked for, decimal commas or not', () => {
    expect(taken('310,5\n311\n 312,25 gr', masses)).toHaveLength(3);
    expect(taken('mass\n310.5\n311', masses)[0]?.[0]).toBeCloseTo(310.5 * 6.479891e-5, 12);
  });
});

describe('the fate of each line', () => {
  const text = 'Readings of Saturday\ndraw;force\n10;5,2\n\n12;gust\n14\n40;900\n16;13,1;wobbly\n18;1;2;3\nmean;9,1\n';

  it('is told with its number and its text', () => {
    const { rows, taken: count, leftOut } = readTable(text, readings, units);
    expect(rows.map(({ line, fate }) => `${line} ${fate}`)).toEqual([
      '1 left out',
      '2 header',
      '3 taken',
      '5 left out',
      '6 left out',
      '7 left out',
      '8 taken',
      '9 left out',
      '10 left out',
    ]);
    expect(rows[3]?.text).toBe('12;gust');
    expect([count, leftOut]).toEqual([2, 6]);
    expect(tableTold(readTable(text, readings, units))).toBe('2 lines taken, 6 left out, with heads.');
  });

  it('says what was expected', () => {
    expect(whyOf('Readings of Saturday')).toBe('There is no figure on this line.');
    expect(whyOf('10;5\n12;gust')).toBe('A force of a reading such as 30 lb or 13.6 kg was expected.');
    expect(whyOf('10;5\n14')).toBe('There is no force on this line.');
    expect(whyOf('10;5\n20;900')).toBe('A force of a reading between 0 and 140 lb was expected.');
    expect(whyOf('10;5\n20;9;8;7')).toBe('At most 3 figures were expected here, and there are 4.');
    expect(whyOf('10;5\n20 lb;9')).toBe('A draw of a reading is a length: in, cm or mm were expected, not lb.');
    expect(whyOf('10;5;4;windy')).toBe('The words at its end were not read.');
    expect(whyOf(`10;5\n${'9'.repeat(500)}`)).toBe('This line is too long for a line of a table.');
  });

  it('refuses a fraction whose unit was forgotten', () => {
    const row = readTable('28 1/4;36', readings, { ...units, length: 'mm' }).rows[0];
    expect(row).toMatchObject({ fate: 'left out', why: 'A fraction needs its unit here, as in 28 1/4 in.' });
  });

  it('is never a guess at a comma that could be thousands or decimals throughout', () => {
    const grams: readonly TableColumn[] = [{ name: 'force', measure: 'readingForce', unit: 'g' }];
    expect(fates('1,250\n2,375', grams)).toEqual(['left out', 'left out']);
    expect(whyOf('1,250\n2,375', grams)).toMatch(/two ways/);
    // Inside what a draw can be, only one of the two remains; and beside other decimal commas it is plain.
    expect(taken('28,125;36,250')[0]?.[0]).toBeCloseTo(28.125 * inch, 12);
    expect(taken('1,250\n2,5', grams)[0]?.[0]).toBeCloseTo(0.00125 * kilogram, 12);
    expect(taken('1,125\n1,250', masses)[0]?.[0]).toBeCloseTo(1125 * 6.479891e-5, 12);
  });

  it('is told of no more lines than were asked for, and of how many more there were', () => {
    const many = Array.from({ length: 30 }, (_, i) => `${10 + i / 2};${i}`).join('\n');
    const read = readTable(many, readings, units, 20);
    expect(read.rows).toHaveLength(20);
    expect(read.tooMany).toBe('Only the first 20 lines were read; 10 more were left out.');
    expect(tableTold(read)).toBe('20 lines taken. Only the first 20 lines were read; 10 more were left out.');
  });

  it('is nothing for an empty text', () => {
    const read = readTable(' \n;;\n', readings, units);
    expect(read.rows).toEqual([]);
    expect(tableTold(read)).toBe('There is nothing in it.');
    expect(tableTold(readTable('nothing here', readings, units))).toBe('No line taken, 1 left out.');
  });

  it('of a title that ends in a unit is not to set the unit', () => {
    expect(taken('Bow of 68 in\n71.1;16', readings, metric)[0]?.[0]).toBeCloseTo(0.711, 12);
  });
});

describe('any table', () => {
  const separator = fc.constantFrom('\t', ';', '   ', ' ; ', ',');
  const written2 = fc.record({
    rows: fc.array(
      fc.tuple(
        fc.double({ min: 3.1, max: 41.9, noNaN: true }),
        fc.double({ min: 0, max: 62, noNaN: true }),
        fc.option(fc.double({ min: 0, max: 62, noNaN: true }), { nil: null }),
      ),
      { minLength: 1, maxLength: 12 },
    ),
    separator,
    comma: fc.boolean(),
    quoted: fc.boolean(),
    head: fc.constantFrom('none', 'names', 'units', 'turned'),
    force: fc.constantFrom('lb', 'kg', 'N'),
    decimals: fc.integer({ min: 1, max: 6 }),
    end: fc.constantFrom('\n', '\r\n'),
  });

  it('written in any separator, decimals, units and order is read back to what was written', () => {
    fc.assert(
      fc.property(written2, ({ rows, separator: cut, comma, quoted, head, force, decimals, end }) => {
        fc.pre(!(cut === ',' && comma && !quoted));
        const quote = quoted && cut !== '   ' ? '"' : '';
        const figure = (value: number | null) =>
          value === null ? '' : `${quote}${comma ? value.toFixed(decimals).replace('.', ',') : value.toFixed(decimals)}${quote}`;
        const line = ([draw, up, down]: (typeof rows)[number]) =>
          (head === 'turned'
            ? [figure(up), figure(draw)]
            : [figure(draw), figure(up), ...(down === null ? [] : [figure(down)])]
          ).join(cut);
        const heads = {
          none: [],
          names: ['draw', 'force', 'down'],
          units: ['draw (in)', `force (${force})`, `down (${force})`],
          turned: [`force/${force}`, 'draw/in'],
        };
        const text = [...(head === 'none' ? [] : [heads[head].join(cut)]), ...rows.map(line)].join(end);
        const choice: UnitChoice = { ...units, weight: force, length: head === 'units' || head === 'turned' ? 'cm' : 'in' };
        const found = taken(text, readings, choice);
        const factor = { lb: pound, kg: kilogram, N: 1 }[force];
        expect(found).toHaveLength(rows.length);
        rows.forEach(([draw, up, down], i) => {
          expect(found[i]?.[0]).toBeCloseTo(Number(draw.toFixed(decimals)) * inch, 9);
          expect(found[i]?.[1]).toBeCloseTo(Number(up.toFixed(decimals)) * factor, 8);
          if (down === null || head === 'turned') expect(found[i]?.[2]).toBeNull();
          else expect(found[i]?.[2]).toBeCloseTo(Number(down.toFixed(decimals)) * factor, 8);
        });
      }),
      { numRuns: 600 },
    );
  });

  it('and any text gets a fate for every line that is not blank, and only figures that can be', () => {
    const signs = fc.constantFrom(...Array.from('0123456789 .,;\t\n\r"#/-in lbdrawforce()'));
    const columns: readonly TableColumn[] = [...readings, { name: 'way', words: [['draw'], ['down']], optional: true }];
    fc.assert(
      fc.property(fc.oneof(fc.string({ maxLength: 200 }), fc.string({ unit: signs, maxLength: 200 })), (text) => {
        const { rows, taken: count, leftOut } = readTable(text, columns, units);
        const lines = text.split(/\r\n|\r|\n/);
        expect(rows.length).toBe(lines.filter((line) => /[^\s;,\uFEFF]/.test(line)).length);
        expect(count + leftOut + rows.filter(({ fate }) => fate === 'header').length).toBe(rows.length);
        for (const { fate, why, values, line } of rows) {
          expect(lines[line - 1]).toBeDefined();
          expect(fate === 'left out' ? why : '.').toMatch(/\.$/);
          const [draw = null, force = null, down = null] = values;
          expect(draw === null ? fate !== 'taken' : draw >= limits.readingDraw.min && draw <= limits.readingDraw.max).toBe(true);
          for (const value of [force, down])
            if (value !== null) expect(value >= 0 && value <= limits.readingForce.max).toBe(true);
        }
      }),
      { numRuns: 1500 },
    );
  });
});
