import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultPreferences, type UnitChoice } from '../../../core/model/index.ts';
import { dimensionOf } from '../../../core/units/dimensions.ts';
import { parseQuantity, type Use } from '../../../core/units/index.ts';
import { table } from '../../../core/units/table.ts';

const units = defaultPreferences.units;
const inch = 0.0254;
const pound = 4.4482216152605;
const grain = 6.479891e-5;

const read = (text: string, use: Use, choice: UnitChoice = units): number => {
  const result = parseQuantity(text, use, choice);
  if (!result.ok) throw new Error(`${text}: ${result.problem.sentence}`);
  return result.value;
};
const refusal = (text: string, use: Use): string => {
  const result = parseQuantity(text, use, units);
  if (result.ok) throw new Error(`${text} was read as ${result.value}`);
  return result.problem.sentence;
};

/** Ways in which people at a bench write one and the same figure (common practice); values by hand from the definitions. */
const written: readonly (readonly [use: Use, value: number, ...texts: string[]])[] = [
  [
    'length',
    28.25 * inch,
    '28 1/4 in',
    '28-1/4 in',
    '28¼"',
    '28¼″',
    '28 1/4"',
    '28 1/4',
    '28 1/4”',
    '28.25in',
    '28,25 in',
    '28 1⁄4 inches',
  ],
  [
    'length',
    28.25 * inch,
    '28 ¼ in.',
    '28.25 INCHES',
    '  28.25   Inch ',
    '28.250\u2009in',
    "28.25 ''",
    '28‑1/4"',
    '+28.25',
    '28 2/8',
  ],
  ['length', inch / 8, '1/8 in', '⅛"', '.125', '0.125 in', ',125 in', '0,125 in', '0 1/8'],
  ['length', 68 * inch, '5\'8"', '5′8″', "5' 8", '5 ft 8 in', '5ft8', '5 feet, 8 inches', '5\'-8"', '68'],
  ['length', 68.5 * inch, '5\' 8 1/2"', '5 ft 8.5 in', '68½'],
  [
    'length',
    0.718,
    '71.8cm',
    '71.8 cm',
    '71,8 CM',
    '718 mm',
    '0.718 m',
    '71.8 centimetres',
    '0.718 meters',
    '71\u00a0cm\u00a08 mm',
  ],
  ['length', 1.75, '1750 mm', '1\u2009750 mm', '1\u202f750 mm', '1 m 75 cm', '1,750.0 mm', '1.750,0 mm'],
  ['setting', -0.002, '-2 mm', '−2 mm', '–2mm', '- 2', '−0.2 cm'],
  ['weight', 38 * pound, '38#', '38 lb', '38 lbs', '38 lbs.', '38 Pounds', '38 LBF', '38', '37 lb 16 oz'],
  ['weight', 17.2 * 9.80665, '17,2 kg', '17.2kgf', '17.2 Kilos', '17200 g', '168.67438 N', '168.67438 newtons'],
  ['mass', 310 * grain, '310 gr', '310 grains', '310', '310 Grs.'],
  ['mass', 0.02, '20 g', '20 grams', '20 grammes', '0.02 kg', '20g', '2e1 g', '20000 mg'],
  ['distance', 60 * 0.9144, '60 yd', '60 yards', '60yds', '60 y', '180 feet'],
  ['distance', 18, '18', '18 m', '18 metres', '18 Meters'],
  ['speed', 180 * 0.3048, '180 fps', '180 ft/s', '180 feet per second', '180', '180 ft / sec', '180 f.p.s.'],
  ['speed', 55, '55 m/s', '55 metres per second', '198 km/h', '198 kph'],
  ['deflection', 0.5 * inch, '0.500', '.5"', '1/2 in', '12.7 mm'],
  ['density', (7.5 * grain) / inch, '7.5 gr/in', '7 1/2 grains per inch', '7.5'],
  ['massPerWeight', (8 * grain) / pound, '8 gr/lb', '8 grains per pound', '8', '8 gr/#'],
  ['stiffness', 4.24, '4.24 N m²', '4.24 N·m²', '4.24 Nm2', '4.24 N m^2', '4.24'],
  ['stiffness', 887.2 * pound * inch * inch, '887.2 lb·in²', '887.2 lb-in^2', '887.2 lb in2'],
  // 180 g of weight by standard gravity; 5 lb/in by the international pound-force and inch (NIST SP 811).
  ['smallForce', 0.18 * 9.80665, '180 g', '180 gf', '0.18 kg'],
  ['smallForce', 1.8, '1.8 N', '1,8 newtons', '1.8'],
  ['springRate', (5 * pound) / inch, '5 lb/in', '5 pounds per inch', '5 #/in'],
  ['springRate', 900, '0.9 N/mm', '0,9', '9 N/cm', '900 N/m'],
  ['weightPerLength', (2.5 * pound) / inch, '2.5 lb/in', '2 1/2 lbs per in', '2.5'],
  ['inertia', 0.00092, '0.92 g m²', '0.92 g·m²', '0.92 gm2', '0.92 g m^2', '0.92', '0.00092 kg m²', '0.00092 kg·m2'],
  ['frequency', 78, '78 Hz', '78'],
  ['energy', 45.6, '45.6 J', '45.6 N·m', '45.6'],
  ['time', 0.0162, '16.2 ms', '0.0162 s', '0.0162'],
  ['angle', Math.PI / 60, '3°', '3 deg', '3 degrees', '3'],
  ['turns', 2.25, '2 1/4', '2¼ turns', '2.25', '2,25 turns'],
  ['turns', 0.5, '½ turn', '1/2'],
  ['count', 12, '12'],
  ['ratio', 0.25, '0.25', '25 %', '1/4'],
  // Scales of temperature and pressure: NIST SP 811, appendix B.
  ['temperature', 288.15, '15', '15 °C', '15 C', '15 deg C', '59 °F', '59 f', '59 degrees Fahrenheit', '288.15 K'],
  ['temperature', 268.15, '-5', '−5 °C', '23 °F', '- 5 Celsius'],
  ['pressure', 101325, '1013.25', '1013.25 hPa', '1013.25 mbar', '101.325 kPa'],
  ['pressure', 760 * 133.322387415, '760 mmHg', '760 mm Hg'],
  ['pressure', 30 * 3386.388640341, '30 inHg', '30 in Hg'],
  ['humidity', 0.5, '50', '50 %', '50%', '50 percent'],
  ['altitude', 250, '250', '250 m', '250 metres'],
  ['altitude', 3000 * 0.3048, '3000 ft', '3000 feet'],
  ['count', 1234567, '1,234,567', '1.234.567,0'],
];

describe('reading a typed quantity', () => {
  it.each(written.flatMap(([use, value, ...texts]) => texts.map((text) => [text, use, value] as const)))(
    'reads %j as %s',
    (text, use, value) => {
      expect(Math.abs(read(text, use) - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
    },
  );

  it('reads a bare number in the chosen unit of its use', () => {
    const metric: UnitChoice = {
      length: 'cm',
      setting: 'in',
      weight: 'kg',
      mass: 'g',
      distance: 'yd',
      speed: 'm/s',
      deflection: 'mm',
    };
    expect(read('71.8', 'length', metric)).toBeCloseTo(0.718, 12);
    expect(read('1/4', 'setting', metric)).toBeCloseTo(0.00635, 12);
    expect(read('17.2', 'weight', metric)).toBeCloseTo(17.2 * 9.80665, 12);
    expect(read('20', 'mass', metric)).toBeCloseTo(0.02, 12);
    expect(read('60', 'distance', metric)).toBeCloseTo(54.864, 12);
    expect(read('55', 'speed', metric)).toBeCloseTo(55, 12);
    expect(read('12.7', 'deflection', metric)).toBeCloseTo(0.0127, 12);
  });

  it('reads back any figure in any unit within 1e-12 of it', () => {
    const uses = Object.keys(dimensionOf) as Use[];
    const choices = uses.flatMap((use) =>
      table[dimensionOf[use]].flatMap((unit) => [unit.symbol, ...unit.also].map((name) => ({ use, unit, name }))),
    );
    expect(choices.length).toBeGreaterThan(100);
    fc.assert(
      fc.property(
        fc.constantFrom(...choices),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        fc.boolean(),
        ({ use, unit, name }, size, below) => {
          const si = below ? -size : size;
          const typed = `${(si - unit.zero) / unit.factor} ${name}`;
          expect(Math.abs(read(typed, use) - si)).toBeLessThanOrEqual(1e-12 * (size + unit.zero));
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('never throws and never hands out a figure that is not finite', () => {
    const signs = fc.constantFrom(...Array.from('0123456789 .,/-+\'"#¼½eEinmcftlbgrkyds²°·'));
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ maxLength: 80 }), fc.string({ unit: signs, maxLength: 14 })),
        fc.constantFrom(...(Object.keys(dimensionOf) as Use[])),
        (text, use) => {
          const result = parseQuantity(text, use, units);
          expect(result.ok ? Number.isFinite(result.value) : result.problem.sentence.endsWith('.')).toBe(true);
        },
      ),
      { numRuns: 3000 },
    );
  });
});

describe('refusing what is not a quantity', () => {
  const such = 'A length such as 28 1/4 in or 71.8 cm was expected.';

  it.each([
    '',
    '   ',
    'in',
    'abc',
    'NaN',
    'Infinity',
    '--2',
    '28 25',
    '28 - 2 mm',
    '28..5',
    '5 in 8 ft',
    '5 ft 8 7 in',
    '1 750',
    '5ft.8in',
  ])('asks for a length in place of %j', (text) =>
    expect(refusal(text, 'length')).toMatch(/was expected\.$|can be read in two ways/),
  );

  it('asks for a length in place of a page of text', () => expect(refusal('1'.repeat(5000), 'length')).toBe(such));

  it('says what a length looks like', () => expect(refusal('about a yard', 'length')).toBe(such));

  it.each(['28 1/', '28 1/ in', '1/ in', '28 1/x', '1/0', '28 1/0 in', '1/4.5', '28 1 / 4'])(
    'asks for the lower number of the fraction in %j',
    (text) => expect(refusal(text, 'length')).toBe('A fraction needs its lower number, as in 28 1/4.'),
  );

  it.each(['28 /4', '/4 in'])('asks for the upper number of the fraction in %j', (text) =>
    expect(refusal(text, 'length')).toBe('A fraction needs its upper number, as in 28 1/4.'),
  );

  it.each(['71/2', '28 5/4', '28 4/4 in'])('does not take %j for a fraction larger than one', (text) =>
    expect(refusal(text, 'length')).toMatch(/^A fraction is smaller than one/),
  );

  it.each(['1,234', '28,125 in', '1,234,56', '12,34,567'])('does not guess what the comma means in %j', (text) =>
    expect(refusal(text, 'length')).toMatch(/two ways/),
  );

  it('names the units of the right dimension when another was typed', () => {
    expect(refusal('9 lb', 'length')).toBe('This is a length: in, cm or mm were expected, not lb.');
    expect(refusal('28 in', 'weight')).toBe('This is a draw weight: lb, kg or N were expected, not in.');
    expect(refusal('12 lb', 'count')).toBe('This is a count: no unit was expected, not lb.');
  });

  it('says that a unit is not known', () =>
    expect(refusal('28 furlongs', 'length')).toBe('The unit "furlongs" is not known: in, cm or mm were expected.'));

  it.each(['1e999 in', '99999999999999999999 in', '-1e300'])('refuses the absurd figure %j', (text) =>
    expect(refusal(text, 'length')).toMatch(/^That figure is beyond anything at a bench/),
  );

  it('reads the plainest figures as the whole reader does, which alone knows a plus', () => {
    const part = fc.constantFrom('', '.5', '.25', ',5', ',75', '.123', ',123', '.0');
    const unit = fc.constantFrom('', ' mm', ' cm', ' in', ' lb', ' kg', ' gr', ' m', ' furlong', ' n', ' x');
    const use = fc.constantFrom<Use>('length', 'setting', 'weight', 'mass', 'distance', 'count');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2_000_000 }), part, unit, use, (whole, decimals, word, of) => {
        const text = `${whole}${decimals}${word}`;
        expect(parseQuantity(text, of, units)).toEqual(parseQuantity(`+${text}`, of, units));
      }),
    );
  });
});
