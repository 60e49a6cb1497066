import { describe, expect, it } from 'vitest';
import { defaultPreferences, limits, type Measure, type UnitChoice } from '../../../core/model/index.ts';
import { readMeasure } from '../../../core/units/index.ts';
import { suchAs } from '../../../core/units/words.ts';

const units = defaultPreferences.units;
const metric: UnitChoice = {
  length: 'mm',
  setting: 'cm',
  weight: 'kg',
  mass: 'g',
  distance: 'yd',
  speed: 'm/s',
  deflection: 'mm',
};
const measures = Object.keys(limits) as Measure[];
const sentence = (key: Measure, text: string, choice: UnitChoice = units): string => {
  const result = readMeasure(key, text, choice);
  if (result.ok) throw new Error(`${text} was read as ${result.value}`);
  expect(result.problem.field).toBe(key);
  return result.problem.sentence;
};
const value = (key: Measure, text: string, choice: UnitChoice = units): number => {
  const result = readMeasure(key, text, choice);
  if (!result.ok || result.value === null) throw new Error(`${text} was not read`);
  return result.value;
};

describe('reading a field of a form', () => {
  it('takes an empty field for not measured', () => {
    expect(readMeasure('braceHeight', '', units)).toEqual({ ok: true, value: null });
    expect(readMeasure('braceHeight', '  ', units)).toEqual({ ok: true, value: null });
  });

  it('says the range in the unit of the person', () => {
    expect(sentence('braceHeight', '2 in')).toBe('A brace height between 3 and 14 in was expected.');
    expect(sentence('braceHeight', '2 in', metric)).toBe('A brace height between 77 and 355 mm was expected.');
    expect(sentence('tiller', '40')).toBe('A tiller (top minus bottom) between −30 and 30 mm was expected.');
    // 50 and 250 cm: 19.69 and 98.42 in.
    expect(sentence('eyeAboveGround', '1 in')).toBe('An eye height above the ground between 20 and 98 in was expected.');
    // 1 and 120 m: 1.094 and 131.23 yd.
    expect(sentence('shootingDistance', '500', metric)).toBe('A distance between 1.1 and 131 yd was expected.');
    // 3 and 14 mm: 0.118 and 0.551 in.
    expect(sentence('shaftDiameter', '2', { ...units, setting: 'in' })).toBe(
      'A shaft diameter between 0.12 and 0.55 in was expected.',
    );
    expect(sentence('buttonTurns', '-1')).toBe('A button setting between 0 and 20 turns was expected.');
  });

  it('names the figure when the unit is of another kind', () =>
    expect(sentence('braceHeight', '8 lb')).toBe('A brace height is a length: in, cm or mm were expected, not lb.'));

  it('shows a believable figure of that very measure in place of nonsense', () =>
    expect(sentence('braceHeight', 'a fist')).toBe('A brace height such as 8 1/2 in or 216 mm was expected.'));

  it('takes a count that is whole, and says so of any other', () => {
    const counts = measures.filter((key) => limits[key].use === 'count');
    expect(counts).toContain('vaneCount');
    for (const key of counts)
      for (const text of ['2.5', '2 1/2'])
        expect(sentence(key, text), text).toBe(`${limits[key].name} is a whole number, such as ${suchAs[key]}.`);
    expect([value('vaneCount', '3'), value('vaneCount', '3.0'), value('strands', '16')]).toEqual([3, 3, 16]);
  });

  it('lets in the limits themselves however they are written', () => {
    const { min, max } = limits.braceHeight;
    for (const text of ['14 in', '35.56 cm', '1 ft 2 in', '355.6 mm', '1\'2"']) {
      expect(value('braceHeight', text), text).toBeCloseTo(0.3556, 14);
      expect(value('braceHeight', text), text).toBeLessThanOrEqual(max);
    }
    for (const text of ['3 in', '7.62 cm', '76.2 mm', '1/4 ft']) {
      expect(value('braceHeight', text), text).toBeCloseTo(0.0762, 14);
      expect(value('braceHeight', text), text).toBeGreaterThanOrEqual(min);
    }
  });

  it('lets in every range that its own sentence names', () => {
    for (const choice of [units, metric, { ...units, setting: 'in' as const }]) {
      for (const key of measures) {
        const [, low = '', high = '', unit = ''] =
          /between (\S+) and (\S+) ?(.*?) was expected/.exec(sentence(key, '999999', choice)) ?? [];
        for (const end of [low, high]) {
          const result = readMeasure(key, `${end} ${unit}`, choice);
          expect(result.ok, `${key}: ${end} ${unit}`).toBe(true);
        }
      }
    }
  });

  it('gives examples that are in range and agree with each other', () => {
    expect(measures.length).toBeGreaterThan(20);
    for (const key of measures) {
      // What is counted, turned or timed is written in one way only.
      const [first = '', second = ['count', 'turns', 'time', 'reading', 'humidity'].includes(limits[key].use) ? first : ''] =
        suchAs[key].split(' or ');
      const ratio = value(key, first) / value(key, second);
      expect(Math.abs(ratio - 1), suchAs[key]).toBeLessThan(0.07);
    }
  });
});
