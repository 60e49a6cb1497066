import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultPreferences, type UnitChoice } from '../../../core/model/index.ts';
import { dimensionOf } from '../../../core/units/dimensions.ts';
import { factorOf, parseQuantity, showQuantity, stepOf, textQuantity, unitOf, type Use } from '../../../core/units/index.ts';

const units = defaultPreferences.units;
const metric: UnitChoice = {
  length: 'cm',
  setting: 'cm',
  weight: 'kg',
  mass: 'g',
  distance: 'yd',
  speed: 'm/s',
  deflection: 'mm',
};
const third: UnitChoice = {
  length: 'mm',
  setting: 'in',
  weight: 'N',
  mass: 'gr',
  distance: 'm',
  speed: 'ft/s',
  deflection: 'in',
};
const uses = Object.keys(dimensionOf) as Use[];
const inch = 0.0254;

/** The precision in which the trade speaks (common practice). */
const spoken: readonly (readonly [si: number, use: Use, choice: UnitChoice, text: string])[] = [
  [28.25 * inch, 'length', units, '28 1/4 in'],
  [28 * inch, 'length', units, '28 in'],
  [(28.25 + 1 / 64) * inch, 'length', units, '28 1/4 in'],
  [28.2 * inch, 'length', units, '28.2 in'],
  [28.19 * inch, 'length', units, '28.19 in'],
  [0.5 * inch, 'length', units, '1/2 in'],
  [-1.5 * inch, 'length', units, '−1 1/2 in'],
  [0.718, 'length', metric, '71.8 cm'],
  [0.7184, 'length', third, '718 mm'],
  [0.0065, 'setting', units, '6.5 mm'],
  [-0.002, 'setting', units, '−2 mm'],
  [0.0002, 'setting', metric, '0.02 cm'],
  [inch / 8, 'setting', third, '0.125 in'],
  [38 * 4.4482216152605, 'weight', units, '38 lb'],
  [17.25 * 9.80665, 'weight', metric, '17.3 kg'],
  [310.4 * 6.479891e-5, 'mass', units, '310 gr'],
  [8.44 * 6.479891e-5, 'mass', units, '8.4 gr'],
  [0.0201, 'mass', metric, '20.1 g'],
  [0.6 * inch, 'deflection', units, '0.600 in'],
  [0.01524, 'deflection', metric, '15.24 mm'],
  [18, 'distance', units, '18 m'],
  [18.3, 'distance', units, '18.3 m'],
  [54.864, 'distance', metric, '60 yd'],
  [-0.123, 'drop', units, '−12 cm'],
  [54.9, 'speed', units, '180 ft/s'],
  [54.86, 'speed', metric, '54.9 m/s'],
  [4, 'wind', units, '4 m/s'],
  [4.02336, 'wind', metric, '9 mph'],
  [(7.5 * 6.479891e-5) / inch, 'density', units, '7.5 gr/in'],
  [0.0191, 'density', metric, '19.1 g/m'],
  [(8.25 * 6.479891e-5) / 4.4482216152605, 'massPerWeight', units, '8.3 gr/lb'],
  [0.00114 / 9.80665, 'massPerWeight', metric, '1.14 g/kg'],
  [1.8, 'smallForce', units, '1.8 N'],
  [1.234, 'smallForce', metric, '1.23 N'],
  [912, 'springRate', units, '0.91 N/mm'],
  [(2.25 * 4.4482216152605) / inch, 'weightPerLength', units, '2.25 lb/in'],
  [(0.4 * 9.80665) / 0.01, 'weightPerLength', metric, '0.4 kg/cm'],
  [350, 'weightPerLength', third, '3.5 N/cm'],
  [0.000923, 'inertia', units, '0.923 g m²'],
  [4.243, 'stiffness', units, '4.24 N m²'],
  [78.01, 'frequency', units, '78 Hz'],
  [45.6, 'energy', units, '45.6 J'],
  [1.2152, 'time', units, '1.22 s'],
  [0.01624, 'time', units, '16.2 ms'],
  [0.09999, 'time', units, '0.1 s'],
  [Math.PI / 60, 'angle', units, '3°'],
  [2.25, 'turns', units, '2 1/4 turns'],
  [1, 'turns', units, '1 turn'],
  [-0.25, 'turns', units, '−1/4 turn'],
  [0, 'turns', units, '0 turns'],
  [12, 'count', units, '12'],
  [1.527, 'ratio', units, '1.53'],
  [52.46, 'reading', units, '52.46'],
  [288.15, 'temperature', units, '15 °C'],
  [263.65, 'temperature', units, '−9.5 °C'],
  [101325, 'pressure', units, '1013 hPa'],
  [0.5, 'humidity', units, '50 %'],
  [250, 'altitude', units, '250 m'],
  [250, 'altitude', metric, '820 ft'],
];

describe('showing a quantity', () => {
  it.each(spoken)('shows %d as %s', (si, use, choice, text) => expect(textQuantity(si, use, choice)).toBe(text));

  it('has a line for every use', () => expect(new Set(spoken.map(([, use]) => use)).size).toBe(uses.length));

  it('signs differences on request, and nought never', () => {
    expect(textQuantity(0.002, 'setting', units, { signed: true })).toBe('+2 mm');
    expect(textQuantity(-0.002, 'setting', units, { signed: true })).toBe('−2 mm');
    expect(textQuantity(0, 'setting', units, { signed: true })).toBe('0 mm');
    expect(textQuantity(-0.00001, 'setting', units)).toBe('0 mm');
  });

  it('keeps exactly the decimals that a column asks for', () => {
    expect(showQuantity(28.25 * inch, 'length', units, { digits: 2 })).toEqual({ figure: '28.25', unit: 'in' });
    expect(showQuantity(18, 'distance', units, { digits: 1 })).toEqual({ figure: '18.0', unit: 'm' });
    expect(showQuantity(-0.0216, 'time', units, { digits: 2 })).toEqual({ figure: '−0.02', unit: 's' });
  });

  it('refuses to show what is no figure', () => {
    expect(() => showQuantity(Number.NaN, 'length', units)).toThrow(RangeError);
    expect(() => showQuantity(Number.POSITIVE_INFINITY, 'length', units)).toThrow(RangeError);
  });

  it('shows the same figure again when its own text is read, in every use and choice of units', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...uses),
        fc.constantFrom(units, metric, third),
        fc.double({ min: -2000, max: 2000, noNaN: true }),
        (use, choice, figure) => {
          const text = textQuantity(figure * factorOf(use, choice), use, choice);
          const read = parseQuantity(text, use, choice);
          expect(read.ok && textQuantity(read.value, use, choice)).toBe(text);
        },
      ),
      { numRuns: 6000 },
    );
  });

  it('shows the same figure again in sixteenths, hundredths and their neighbours, where rounding is tempted', () => {
    const cases = [
      ['length', units],
      ['turns', units],
      ['length', metric],
      ['mass', metric],
    ] as const;
    const changed = cases.flatMap(([use, choice]) =>
      Array.from({ length: 6401 }, (_, n) => textQuantity((n / 640) * factorOf(use, choice), use, choice)).filter((text) => {
        const read = parseQuantity(text, use, choice);
        return !read.ok || textQuantity(read.value, use, choice) !== text;
      }),
    );
    expect(changed).toEqual([]);
  });

  it('is never further off than half of its last place, or 1/50 in where it writes eighths', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (figure) => {
        const read = parseQuantity(textQuantity(figure * inch, 'length', units), 'length', units);
        expect(read.ok && Math.abs(read.value / inch - figure)).toBeLessThan(0.0207);
      }),
    );
  });
});

describe('the unit and the step of a use', () => {
  it('follows the choice', () => {
    expect([unitOf('length', units), unitOf('length', metric), unitOf('weight', third)]).toEqual(['in', 'cm', 'N']);
    expect([unitOf('drop', units), unitOf('drop', metric)]).toEqual(['cm', 'in']);
    expect([unitOf('massPerWeight', units), unitOf('massPerWeight', metric), unitOf('massPerWeight', third)]).toEqual([
      'gr/lb',
      'g/kg',
      'g/kg',
    ]);
    expect([unitOf('count', units), unitOf('ratio', units)]).toEqual(['', '']);
  });

  it('steps as the trade does (common practice)', () => {
    expect(stepOf('length', units)).toBeCloseTo(inch / 8, 15);
    expect(stepOf('length', third)).toBeCloseTo(0.001, 15);
    expect(stepOf('setting', units)).toBeCloseTo(0.0005, 15);
    expect(stepOf('weight', units)).toBeCloseTo(4.4482216152605 / 2, 12);
    expect(stepOf('mass', units)).toBeCloseTo(6.479891e-5, 15);
    expect(stepOf('turns', units)).toBe(0.25);
    expect(stepOf('distance', units)).toBe(1);
    expect(stepOf('deflection', units)).toBeCloseTo(0.000254, 15);
  });

  it('shows a step as a change: no step is smaller than the figures on the screen', () => {
    for (const choice of [units, metric, third]) {
      for (const use of uses) expect(textQuantity(stepOf(use, choice), use, choice), use).not.toBe(textQuantity(0, use, choice));
    }
  });
});
