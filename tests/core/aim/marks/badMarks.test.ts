import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  exampleMarks,
  examplePriors,
  exampleScale,
  fitMarks,
  movedMarks,
  nextMark,
  readingAt,
  strip,
  type KnownMark,
  type MarkPriors,
  type SightScale,
} from '../../../../core/aim/index.ts';
import { randomFrom } from '../../../../fixtures/random.ts';
import { inside } from '../../inside.ts';

const refused = (marks: readonly KnownMark[], scale: SightScale = exampleScale, priors: MarkPriors = examplePriors) => {
  const found = fitMarks(marks, scale, priors);
  return found.ok ? { code: 'none', sentence: '' } : found.problem;
};
const known = (...pairs: readonly (readonly [number, number])[]): KnownMark[] =>
  pairs.map(([distance, reading]) => ({ distance, reading }));

describe('Marks that cannot be', () => {
  it('at all are asked for', () => {
    expect(refused([]).code).toBe('no-marks');
    expect(refused(exampleMarks.map((mark) => ({ ...mark, leftOut: true }))).code).toBe('no-marks');
    expect(refused(Array.from({ length: 61 }, () => ({ distance: 30, reading: 50 }))).code).toBe('marks');
  });

  it('without numbers are refused with what was expected', () => {
    expect(refused(known([NaN, 50]))).toMatchObject({
      code: 'distance',
      sentence: expect.stringContaining('between 1 and 120 m'),
    });
    expect(refused(known([30, NaN]))).toMatchObject({ code: 'reading', sentence: expect.stringContaining('30 m (33 yd)') });
    expect(refused([{ distance: 30, reading: 50, shots: 0 }]).code).toBe('shots');
    expect(refused(known([500, 50])).code).toBe('distance');
  });

  it('off a bar of which one end is known are refused with that end', () => {
    const said = (ends: Partial<SightScale>) => {
      const fit = fitMarks([{ distance: 30, reading: 140 }], { unit: 0.001, grows: 'down', ...ends }, examplePriors);
      return fit.ok ? '' : fit.problem.sentence;
    };
    expect(said({ highest: 120 })).toMatch(/a reading of at most 120 was expected\.$/);
    expect(said({ lowest: 150 })).toMatch(/a reading of 150 or more was expected\.$/);
  });

  it('off the bar are refused with the ends of the bar', () => {
    expect(refused(known([70, 140])).sentence).toContain('from 0 to 130 was expected');
    expect(refused(known([10, -1])).code).toBe('off-bar');
  });

  it('for one distance with readings far apart are refused, and near together are taken', () => {
    expect(refused(known([30, 45], [30, 60])).sentence).toContain('45.0 and 60.0');
    expect(refused(known([30, 52.5], [30, 53.1])).code).toBe('none');
  });

  it('in the wrong order are refused with the two that show it', () => {
    const { code, sentence } = refused(known([30, 79], [50, 52.8]));
    expect(code).toBe('wrong-order');
    expect(sentence).toContain('79.0 for 30 m (33 yd) and 52.8 for 50 m (55 yd)');
    expect(refused(exampleMarks, { unit: 0.001, grows: 'up' }).code).toBe('wrong-order');
  });

  it('that fit no flight together are refused when nobody can be blamed', () => {
    const { code, sentence } = refused(known([18, 39.1], [30, 62.8], [50, 70], [70, 117.2]));
    expect(code).toBe('contradictory');
    expect(sentence).toContain('Check the unit of the scale');
  });

  it('out of the arrow’s reach are refused with its speed', () => {
    const slow = { ...examplePriors, speed: { value: 25, low: 24, high: 26 } };
    const { code, sentence } = refused(known([18, 39], [90, 120]), exampleScale, slow);
    expect(code).toBe('out-of-reach');
    expect(sentence).toContain('26 m/s');
  });

  it('rest on figures that can be', () => {
    const nothing = { value: NaN, low: NaN, high: NaN };
    const withFigure = (figure: Partial<MarkPriors>) => refused(exampleMarks, exampleScale, { ...examplePriors, ...figure }).code;
    expect(withFigure({ speed: nothing })).toBe('speed');
    expect(withFigure({ speed: { value: 56, low: 60, high: 70 } })).toBe('speed');
    expect(withFigure({ eyeHeight: { value: 2, low: 1, high: 3 } })).toBe('eye');
    expect(withFigure({ k: { value: 0, low: 0, high: 0 } })).toBe('drag');
    expect(withFigure({ sightRadius: { value: 10, low: 9, high: 11 } })).toBe('radius');
    expect(withFigure({ spreadPerMetre: NaN })).toBe('spread');
    expect(refused(exampleMarks, { unit: 0, grows: 'down' }).code).toBe('unit');
    expect(refused(exampleMarks, { ...exampleScale, lowest: 5, highest: 5 }).code).toBe('bar');
  });

  const anyNumber = fc.oneof(fc.double(), inside(-200, 200));
  const nearly = (value: number, by: number) => fc.oneof({ weight: 9, arbitrary: inside(value - by, value + by) }, anyNumber);
  const anyBand = (value: number) =>
    fc.tuple(nearly(value, value / 3), nearly(value / 10, value / 10)).map(([middle, half]) => ({
      value: middle,
      low: middle - half,
      high: middle + half,
    }));

  it('whatever they are come to a sentence or to numbers throughout', () => {
    let fitted = 0;
    fc.assert(
      fc.property(
        fc.array(fc.record({ distance: nearly(40, 39), reading: nearly(60, 60) }), { maxLength: 5 }),
        fc.record({ unit: fc.constantFrom(0.001, 0.005, 0, NaN), grows: fc.constantFrom('down' as const, 'up' as const) }),
        fc.record({
          speed: anyBand(55),
          eyeHeight: anyBand(0.1),
          k: anyBand(0.002),
          sightRadius: anyBand(0.8),
          spreadPerMetre: nearly(0.01, 0.01),
        }),
        (marks, scale, priors) => {
          const found = fitMarks(marks, scale, priors);
          if (!found.ok) {
            expect(found.problem.sentence).toMatch(/^[\p{Lu}\d].*\.$/u);
            expect(found.problem.sentence).not.toMatch(/NaN|Infinity|undefined/);
            return;
          }
          fitted++;
          const { figures, parameters, covariance, wider, judged, notes } = found.value;
          const numbers = [
            ...Object.values(figures).flatMap(({ value, sd }) => [value, sd]),
            ...parameters,
            ...covariance.flat(),
            wider,
            ...judged.flatMap(({ expected, p }) => [p, ...(expected === null ? [] : Object.values(expected))]),
          ];
          expect(numbers.every(Number.isFinite)).toBe(true);
          const rows = strip(found.value, 5, 85, 20, 100, randomFrom(1));
          const told = [
            ...(rows.ok ? rows.value.flatMap(({ reading }) => Object.values(reading ?? {})) : [NaN]),
            ...Object.values(readingAt(found.value, 40) ?? {}),
            ...Object.values(nextMark(found.value, [20, 60], [30, 70]) ?? {}),
            ...movedMarks(found.value, { speed: { value: 0.95, low: 0.9, high: 1 } }, [10, 60]).flatMap(({ moved, after }) => [
              after,
              ...Object.values(moved),
            ]),
          ];
          expect(told.every(Number.isFinite)).toBe(true);
          for (const { sentence } of notes) expect(sentence).not.toMatch(/NaN|Infinity|undefined/);
        },
      ),
    );
    expect(fitted).toBeGreaterThan(5);
  });
});
