import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawSentence, forceDrawOf } from '../../../core/bow/index.ts';
import { defaultPreferences, exampleBundle, type Bundle, type ForceReading } from '../../../core/model/index.ts';
import { bowRead, inch, pound, steadyRows, valueOf } from './readings.ts';

const drawn = (bundle: Bundle) => valueOf(forceDrawOf(bundle));
const withReadings = (forceDraw: readonly ForceReading[]): Bundle => {
  const bundle = bowRead([]);
  return { ...bundle, bow: { ...bundle.bow, forceDraw: [...forceDraw] } };
};

/** Any table that a person might type: in no order, rising or not, with draws twice over and below the brace height. */
const anyReadings = fc.array(
  fc.record<ForceReading>({
    draw: fc.integer({ min: 32, max: 128 }).map((quarters) => (quarters / 4) * inch),
    force: fc.integer({ min: 0, max: 600 }).map((tenths) => (tenths / 10) * pound),
    way: fc.constantFrom('draw', 'draw', 'draw', 'let-down'),
  }),
  { maxLength: 24 },
);
const risingReadings = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 11, max: 30 }), { minLength: 2, maxLength: 12 }),
    fc.array(fc.double({ min: 0.2, max: 4, noNaN: true }), { minLength: 12, maxLength: 12 }),
  )
  .map(([draws, steps]) => {
    let force = 0;
    return [...draws]
      .sort((a, b) => a - b)
      .map((drawIn, i): ForceReading => {
        force += (steps[i] ?? 1) * pound;
        return { draw: drawIn * inch, force, way: 'draw' };
      });
  });

describe('a force-draw curve through readings', () => {
  it('begins with nothing at the brace height and goes through every reading, without a band there', () => {
    let curves = 0;
    fc.assert(
      fc.property(risingReadings, (readings) => {
        const found = forceDrawOf(withReadings(readings));
        if (!found.ok || found.value.from !== 'readings') return;
        curves++;
        const { force, brace, used } = found.value;
        expect(force(brace + 1.75 * inch)).toEqual({ value: 0, low: 0, high: 0 });
        expect(used.length).toBe(readings.length);
        for (const reading of readings) {
          const there = force(reading.draw);
          for (const end of [there.value, there.low, there.high]) expect(end / reading.force).toBeCloseTo(1, 9);
        }
      }),
    );
    expect(curves).toBeGreaterThan(50);
  });

  it('rises wherever the readings rise, and its slope is never negative', () => {
    fc.assert(
      fc.property(risingReadings, (readings) => {
        const found = forceDrawOf(withReadings(readings));
        if (!found.ok) return;
        const { force, slope } = found.value;
        let before = 0;
        for (let drawIn = 10; drawIn <= 30; drawIn += 0.1) {
          const { value, low, high } = force(drawIn * inch);
          expect(value).toBeGreaterThanOrEqual(before - 1e-9);
          expect(low).toBeLessThanOrEqual(value + 1e-9);
          expect(high).toBeGreaterThanOrEqual(value - 1e-9);
          expect(slope(drawIn * inch)).toBeGreaterThanOrEqual(-1e-6);
          before = value;
        }
      }),
      { numRuns: 40 },
    );
  });

  it('stores energy that is never negative, inside its band, whatever is typed', () => {
    let curves = 0;
    fc.assert(
      fc.property(anyReadings, (readings) => {
        const found = forceDrawOf(withReadings(readings));
        if (!found.ok) {
          expect(found.problem.sentence).toMatch(/\.$/);
          return;
        }
        curves++;
        const { energy, weight, fullness, loss, perLength, smoothness } = found.value;
        for (const { low, value, high } of [energy, weight]) {
          expect(low).toBeGreaterThanOrEqual(0);
          expect(low).toBeLessThanOrEqual(value);
          expect(high).toBeGreaterThanOrEqual(value);
        }
        expect([fullness, perLength, smoothness].every(Number.isFinite)).toBe(true);
        expect(smoothness).toBeGreaterThanOrEqual(0);
        expect(smoothness).toBeLessThanOrEqual(1);
        if (loss !== null) expect(loss.energy).toBeGreaterThanOrEqual(0);
      }),
    );
    expect(curves).toBeGreaterThan(50);
  });

  it('does not depend on the order in which the readings were noted', () => {
    fc.assert(
      fc.property(
        anyReadings.chain((readings) =>
          fc.tuple(fc.constant(readings), fc.shuffledSubarray(readings, { minLength: readings.length })),
        ),
        ([readings, shuffled]) => {
          const [one, other] = [withReadings(readings), withReadings(shuffled)].map((bundle) => forceDrawOf(bundle));
          if (one?.ok !== true || other?.ok !== true) {
            expect(one?.ok).toBe(other?.ok);
            return;
          }
          expect(other.value.energy).toEqual(one.value.energy);
          expect(other.value.weight).toEqual(one.value.weight);
          expect(other.value.loss).toEqual(one.value.loss);
          expect(other.value.stacksFrom).toBe(one.value.stacksFrom);
          const told = (flags: typeof one.value.flags) => flags.map(({ code, sentence }) => `${code} ${sentence}`).sort();
          expect(told(other.value.flags)).toEqual(told(one.value.flags));
        },
      ),
    );
  });

  it('scales with the unit of force: twice the pull is twice the energy, and the shape stays', () => {
    fc.assert(
      fc.property(risingReadings, fc.double({ min: 0.3, max: 2, noNaN: true }), (readings, factor) => {
        const one = forceDrawOf(withReadings(readings));
        const other = forceDrawOf(withReadings(readings.map((reading) => ({ ...reading, force: reading.force * factor }))));
        if (!one.ok || !other.ok || one.value.from !== 'readings') return;
        expect(other.value.energy.value / one.value.energy.value).toBeCloseTo(factor, 9);
        expect(other.value.energy.high / one.value.energy.high).toBeCloseTo(factor, 9);
        expect(other.value.perLength).toBeCloseTo(one.value.perLength * factor, 6);
        expect(other.value.fullness).toBeCloseTo(one.value.fullness, 9);
        expect(other.value.smoothness).toBeCloseTo(one.value.smoothness, 9);
      }),
    );
  });

  it('is a straight line through readings on a line, which stores half of weight times stroke', () => {
    // Brace height 8.5 in is 10.25 in as a draw; 2 lb an inch from there.
    const line = drawn(bowRead([12, 15, 19, 24, 28].map((drawIn) => [drawIn, 2 * (drawIn - 10.25)] as const)));
    expect(line.fullness).toBeCloseTo(0.5, 9);
    expect((line.perLength * inch) / pound).toBeCloseTo(2, 9);
    expect(line.smoothness).toBeCloseTo(1, 9);
    expect(line.stacksFrom).toBeNull();
    expect([line.energy.low / line.energy.value, line.energy.high / line.energy.value]).toEqual([
      expect.closeTo(0.99, 9),
      expect.closeTo(1.01, 9),
    ]);
  });

  it('stacks from where every further inch adds half as much again as the easiest', () => {
    // 2 lb an inch to 25 in, 4 lb an inch from there.
    const rows = Array.from({ length: 18 }, (_, i) => {
      const drawIn = 11 + i;
      return [drawIn, 2 * (drawIn - 10.25) + 2 * Math.max(0, drawIn - 25)] as const;
    });
    const { stacksFrom, growth, smoothness } = drawn(bowRead(rows));
    expect((stacksFrom ?? 0) / inch).toBeGreaterThan(24.4);
    expect((stacksFrom ?? 0) / inch).toBeLessThan(25.6);
    expect((growth.least * inch) / pound).toBeCloseTo(2, 1);
    expect(Math.abs((growth.most * inch) / pound / 4 - 1)).toBeLessThan(0.03);
    expect(smoothness).toBeCloseTo(0.5, 1);
  });

  it('is told of this archer\u2019s own stroke: what a bow does beyond it is another archer\u2019s', () => {
    // An even 1.5 lb an inch to 26 in, and 4 lb an inch from there on.
    const rows = [12, 14, 16, 18, 20, 22, 24, 26, 28, 30].map(
      (drawIn) => [drawIn, 3 + 1.5 * (drawIn - 12) + 2.5 * Math.max(0, drawIn - 26)] as const,
    );
    const at = (drawIn: number) => {
      const bundle = bowRead(rows);
      return drawn({ ...bundle, archer: { ...bundle.archer, drawLength: drawIn * inch } });
    };
    expect(at(25).stacksFrom).toBeNull();
    expect((at(25).growth.most * inch) / pound).toBeCloseTo(1.5, 1);
    expect((at(30).stacksFrom ?? 0) / inch).toBeGreaterThan(25.5);
    expect((at(30).growth.most * inch) / pound).toBeGreaterThan(3.5);
  });

  it('is told in words, which keep readings from guesses', () => {
    const { units } = defaultPreferences;
    const read = drawn(bowRead(steadyRows));
    // By hand: 24.8 to 27.7 lb is the least that any 2 in from half-way on add, 30.7 to 34 lb the most.
    expect(drawSentence(read, units)).toBe('Over the later half of the draw the weight grows by 1.45 to 1.65 lb/in.');
    expect(drawSentence({ ...read, stacksFrom: 26.5 * inch }, units)).toMatch(/, and it stacks from 26 1\/2 in\.$/);
    expect(drawSentence(drawn(bowRead([])), units)).toContain('only readings on a scale tell');
  });
});

describe('without readings', () => {
  it('follows from the weight on the fingers, else from the mark, with the kind’s fullness', () => {
    expect(drawn(exampleBundle).from).toBe('weight on the fingers');
    const marked = drawn(bowRead([]));
    expect([marked.from, marked.fullness]).toEqual(['marked weight', expect.closeTo(0.581, 9)]);
    expect(marked.weight.high / marked.weight.low).toBeGreaterThan(1.05);
    expect(marked.stacksFrom).toBeNull();
  });

  it('rises all the way for every kind of finger bow, from the shortest to the longest stroke, and grows as the trade says', () => {
    const kinds = ['take-down recurve', 'one-piece recurve', 'longbow', 'flatbow', 'self bow'] as const;
    for (const bowKind of kinds)
      for (let drawIn = 18; drawIn <= 34; drawIn += 2) {
        const bundle = bowRead(
          [],
          { bowKind, braceLow: null, braceHigh: null, markedDraw: drawIn * inch },
          { braceHeight: 7 * inch },
        );
        const { force, slope, weight, energy } = drawn({ ...bundle, archer: { ...bundle.archer, drawLength: drawIn * inch } });
        for (let at = 8.75; at <= drawIn; at += 0.25) {
          expect(slope(at * inch)).toBeGreaterThan(0);
          const { low, value, high } = force(at * inch);
          expect(low).toBeLessThanOrEqual(value + 1e-9);
          expect(high).toBeGreaterThanOrEqual(value - 1e-9);
        }
        expect(energy.value).toBeGreaterThan(0.45 * weight.value * (drawIn - 8.75) * inch);
        // About 5 to 5.5 % of the weight for each inch, common practice; the shortest strokes are no grown bow's.
        if (drawIn >= 24) expect((slope(drawIn * inch) * inch) / weight.value).toBeCloseTo(0.0525, 2);
      }
  });

  it('goes through a single reading in the shape of the kind', () => {
    const one = drawn(bowRead([[24, 27.7]]));
    expect([one.from, one.used]).toEqual(['readings', [0]]);
    expect(one.force(24 * inch).value / pound).toBeCloseTo(27.7, 9);
    expect(one.fullness).toBeCloseTo(0.581, 2);
    expect(one.weight.low / pound).toBeLessThan(34);
    expect(one.weight.high / pound).toBeGreaterThan(33);
  });

  it('ends readings that stop short on a weight that was read on the fingers farther out', () => {
    const { weight, notes } = drawn(bowRead(steadyRows.slice(0, 7), {}, { weightOnFingers: 34 * pound, weightDraw: 28 * inch }));
    expect(weight.value / pound).toBeCloseTo(34, 9);
    expect(notes.join(' ')).toContain('on the fingers at 28 in');
  });

  it('says what is missing, and takes a brace height in the middle of its range only with a word', () => {
    const undrawn = { ...exampleBundle, archer: { ...exampleBundle.archer, drawLength: null } };
    const refused = forceDrawOf(undrawn);
    expect(refused.ok ? '' : refused.problem.sentence).toContain('draw length');
    expect(drawn(bowRead(steadyRows, {}, { braceHeight: null })).notes.join(' ')).toContain('middle of its range');
  });
});

describe('a compound', () => {
  const cams = [
    [10, 20],
    [14, 48],
    [18, 50],
    [22, 50],
    [26, 30],
    [28, 14],
  ] as const;
  const compound = { bowKind: 'compound', markedWeight: null, braceLow: null, braceHigh: null } as const;

  it('has a curve and an energy from its readings, which may fall, and none without', () => {
    const read = drawn(bowRead(cams, compound, { braceHeight: 7 * inch }));
    expect(read.flags).toEqual([]);
    expect(read.weight.value / pound).toBeCloseTo(14, 9);
    expect(read.fullness).toBeGreaterThan(1);
    expect(read.stacksFrom).toBeNull();
    const refused = forceDrawOf(bowRead([], compound, { braceHeight: 7 * inch }));
    expect(refused.ok ? '' : refused.problem.sentence).toContain('three draws');
    expect(forceDrawOf(bowRead(cams.slice(0, 4), compound, { braceHeight: 7 * inch })).ok).toBe(false);
  });
});
