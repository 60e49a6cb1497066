import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FittedMarks, fitMarks, type KnownMark, readingAt, turningDistance } from '../../../../core/aim/index.ts';
import { valueOf } from '../../group/shots.ts';
import { distances, millimetreScale, targetPriors, type Truth, trueReading, truths } from './anyMarks.ts';
import { inside } from '../../inside.ts';

const marksOf = (truth: Truth, at: readonly number[]): KnownMark[] =>
  at.map((distance) => ({ distance, reading: trueReading(truth, distance) }));
const fitOf = (marks: readonly KnownMark[], scale = millimetreScale): FittedMarks =>
  valueOf(fitMarks(marks, scale, targetPriors));
const at = (fit: FittedMarks, distance: number) => readingAt(fit, distance) ?? { value: NaN, low: NaN, high: NaN };

describe('A fit of sight marks', () => {
  it('gives exact marks back nearer than they could be shot in', () => {
    fc.assert(
      fc.property(truths, distances, (truth, chosen) => {
        const fit = fitOf(marksOf(truth, chosen));
        for (const distance of chosen) {
          const { value, low, high } = at(fit, distance);
          expect(Math.abs(value - trueReading(truth, distance))).toBeLessThan(0.6 * (high - low) * 0.5);
        }
      }),
    );
  });

  it('comes to the truth with many arrows at many distances', () => {
    const truth = { speed: 54, eyeHeight: 0.13, k: 0.0027, sightRadius: 0.86, zero: 7 };
    const marks = marksOf(truth, [6, 10, 15, 20, 30, 40, 50, 60, 70, 80, 90]).map((mark) => ({ ...mark, shots: 10_000 }));
    const fit = fitOf(marks);
    for (const distance of [8, 25, 45, 65, 85]) {
      const { value, high } = at(fit, distance);
      expect(Math.abs(value - trueReading(truth, distance))).toBeLessThan(0.05);
      expect(high - value).toBeLessThan(2);
    }
    expect(Math.abs(fit.figures.speed.value - 54)).toBeLessThan(2 * fit.figures.speed.sd);
  });

  it('does not care for the order of the marks', () => {
    fc.assert(
      fc.property(truths, distances, (truth, chosen) => {
        const marks = marksOf(truth, chosen);
        const [one, other] = [fitOf(marks), fitOf(marks.toReversed())];
        expect(Math.abs(at(one, 45).value - at(other, 45).value)).toBeLessThan(1e-3);
        expect(Math.abs(at(one, 45).high - at(other, 45).high)).toBeLessThan(1e-3);
        expect(other.judged.map(({ verdict }) => verdict)).toEqual(one.judged.map(({ verdict }) => verdict).toReversed());
      }),
    );
  });

  it('is mirrored on a scale that grows upward', () => {
    fc.assert(
      fc.property(truths, distances, (truth, chosen) => {
        const marks = marksOf(truth, chosen);
        const up = marks.map((mark) => ({ ...mark, reading: -mark.reading }));
        const [one, other] = [at(fitOf(marks), 45), at(fitOf(up, { ...millimetreScale, grows: 'up' }), 45)];
        expect(other.value).toBeCloseTo(-one.value, 6);
        expect([other.low, other.high]).toEqual([-one.high, -one.low].map((end) => expect.closeTo(end, 6)));
      }),
    );
  });

  it('does not care for the unit of the scale, and a scale set otherwise moves only the zero', () => {
    fc.assert(
      fc.property(truths, distances, inside(0.2, 20), inside(-50, 50), (truth, chosen, unit, by) => {
        const marks = marksOf(truth, chosen);
        const other = marks.map((mark) => ({ ...mark, reading: (mark.reading + by) / unit }));
        const [plain, changed] = [fitOf(marks), fitOf(other, { ...millimetreScale, unit: 0.001 * unit })];
        const [one, two] = [at(plain, 45), at(changed, 45)];
        expect(Math.abs(two.value * unit - by - one.value)).toBeLessThan(1e-3);
        expect(Math.abs(two.low * unit - by - one.low)).toBeLessThan(1e-3);
        expect(changed.figures.speed.value / plain.figures.speed.value).toBeCloseTo(1, 5);
      }),
    );
  });

  it('reads farther down for every metre beyond the distance where readings turn, and turns back before it', () => {
    fc.assert(
      fc.property(truths, distances, (truth, chosen) => {
        const fit = fitOf(marksOf(truth, chosen));
        const { speed, k, eyeHeight } = fit.figures;
        const turns = turningDistance(speed.value, k.value, eyeHeight.value);
        for (let distance = Math.ceil(turns); distance < 90; distance++)
          expect(at(fit, distance + 1).value).toBeGreaterThan(at(fit, distance).value);
        for (let distance = Math.floor(turns); distance > 2; distance--)
          expect(at(fit, distance - 1).value).toBeGreaterThan(at(fit, distance).value);
      }),
    );
  });

  it('takes marks nearer than the turning distance, and says what they tell', () => {
    const truth = { speed: 56, eyeHeight: 0.12, k: 0.0022, sightRadius: 0.85, zero: 10 };
    const fit = fitOf(marksOf(truth, [5, 30]));
    expect(at(fit, 5).value).toBeGreaterThan(at(fit, 9).value);
    expect(fit.notes.map(({ code }) => code)).toEqual(['turning']);
    expect(fit.notes[0]?.sentence).toContain('9 m (10 yd)');
  });

  it('knows less beyond the marks than between them, and less of two marks than of four', () => {
    const truth = { speed: 56, eyeHeight: 0.12, k: 0.0022, sightRadius: 0.85, zero: 10 };
    const half = (marks: readonly number[], distance: number) => {
      const { value, high } = at(fitOf(marksOf(truth, marks)), distance);
      return high - value;
    };
    expect(half([18, 50], 90)).toBeGreaterThan(2 * half([18, 50], 30));
    expect(half([18, 50], 70)).toBeGreaterThan(half([18, 30, 50, 70], 70));
    expect(half([18], 50)).toBeGreaterThan(half([18, 50], 40));
  });

  it('widens every interval by as much as the marks miss one another', () => {
    const truth = { speed: 56, eyeHeight: 0.12, k: 0.0022, sightRadius: 0.85, zero: 10 };
    const marks = marksOf(truth, [18, 25, 30, 40, 50, 60]);
    const rough = marks.map((mark, i) => ({ ...mark, reading: mark.reading + (i % 2 === 0 ? 1.6 : -1.6) }));
    const [even, torn] = [fitOf(marks), fitOf(rough)];
    expect(even.wider).toBe(1);
    expect(torn.wider).toBeGreaterThan(2);
    expect(torn.notes.map(({ code }) => code)).toContain('wider');
    const [narrow, wide] = [even, torn].map((fit) => at(fit, 90).high - at(fit, 90).value) as [number, number];
    expect(wide / narrow / torn.wider).toBeGreaterThan(0.9);
    expect(wide / narrow / torn.wider).toBeLessThan(1.1);
  });

  it('says which figure the marks speak against, and widens with it', () => {
    const slow = marksOf({ speed: 44, eyeHeight: 0.12, k: 0.0022, sightRadius: 0.85, zero: 10 }, [18, 30, 50, 70]);
    const { notes, wider, judged } = fitOf(slow);
    expect(judged.map(({ verdict }) => verdict)).toEqual(['fits', 'fits', 'fits', 'fits']);
    expect(wider).toBeGreaterThan(1.5);
    expect(notes.map(({ code }) => code)).toEqual(['against-figures', 'wider']);
    expect(notes[0]?.sentence).toMatch(
      /^The marks ask for an arrow speed of 4\d\.\d m\/s, where 52\.0 m\/s to 60\.3 m\/s was held: /,
    );
  });

  it('says that one mark leaves the figures to lead, and so do two at one distance', () => {
    const truth = { speed: 56, eyeHeight: 0.12, k: 0.0022, sightRadius: 0.85, zero: 10 };
    const one = fitOf(marksOf(truth, [30]));
    expect(one.notes.map(({ code }) => code)).toEqual(['one-mark']);
    expect(one.judged[0]).toMatchObject({ verdict: 'alone', expected: null });
    expect(at(one, 30).value).toBeCloseTo(trueReading(truth, 30), 3);
    expect(fitOf(marksOf(truth, [30, 30])).notes.map(({ code }) => code)).toEqual(['one-distance']);
  });

  it('reads null out of reach, and refuses fewer arrows than one', () => {
    const fit = fitOf(marksOf({ speed: 56, eyeHeight: 0.12, k: 0.0022, sightRadius: 0.85, zero: 10 }, [18, 50]));
    expect(readingAt(fit, 400)).toBeNull();
    expect(readingAt(fit, NaN)).toBeNull();
    expect(() => readingAt(fit, 30, 0)).toThrow(RangeError);
    const { high, value } = readingAt(fit, 30, Infinity) ?? { high: NaN, value: NaN };
    expect(high - value).toBeLessThan(at(fit, 30).high - value);
  });
});
