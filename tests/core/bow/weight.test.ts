import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  drawWeight,
  heavierWeight,
  isWeighed,
  weightAgainstMark,
  weightAgainstReadings,
  weightAtDraw,
} from '../../../core/bow/index.ts';
import type { Band } from '../../../core/model/band.ts';
import { exampleBundle, type Result } from '../../../core/model/index.ts';
import { bowRead, steadyRows } from './readings.ts';

const inch = 0.0254;
const pound = 4.4482216152605;

const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};
const inPounds = ({ value, low, high }: Band) => ({ value: value / pound, low: low / pound, high: high / pound });
const estimate = (lb: number, markedIn: number, drawIn: number) =>
  inPounds(valueOf(weightAtDraw(lb * pound, markedIn * inch, drawIn * inch)));

describe('weight at another draw', () => {
  it('is the marked weight at the marked draw', () => {
    const same = estimate(40, 28, 28);
    for (const end of ['low', 'value', 'high'] as const) expect(same[end]).toBeCloseTo(40, 9);
  });

  it('grows by 5 to 5.5 % of the marked weight for each inch between 26 and 30 in: about 2 lb on 40 [common practice]', () => {
    const longer = estimate(40, 28, 29);
    expect(longer.low).toBeCloseTo(42, 9);
    expect(longer.high).toBeCloseTo(42.2, 9);
    const shorter = estimate(40, 28, 26);
    expect(shorter.low).toBeCloseTo(35.6, 9);
    expect(shorter.high).toBeCloseTo(36, 9);
  });

  it('is less sure for each inch outside 26 to 30 in than inside [from memory: 4 to 7 %]', () => {
    const inside = estimate(40, 28, 30);
    const outside = estimate(40, 28, 32);
    expect(outside.high - outside.low).toBeGreaterThan(3 * (inside.high - inside.low));
    // Two inches inside at 5 and 5.5 %, two outside at 4 and 7 %: 18 and 25 % of 40 lb.
    expect(outside.low).toBeCloseTo(47.2, 9);
    expect(outside.high).toBeCloseTo(50, 9);
    const child = estimate(20, 24, 20);
    expect(child.low).toBeCloseTo(14.4, 9);
    expect(child.high).toBeCloseTo(16.8, 9);
  });

  it('keeps low below value below high, grows with the draw and scales with the marked weight', () => {
    const draws = fc.double({ min: 20, max: 34, noNaN: true });
    fc.assert(
      fc.property(draws, fc.double({ min: 10, max: 60, noNaN: true }), (drawIn, lb) => {
        const here = estimate(lb, 28, drawIn);
        expect(here.low).toBeLessThanOrEqual(here.value);
        expect(here.value).toBeLessThanOrEqual(here.high);
        expect(here.low).toBeGreaterThan(0);
        expect(estimate(lb, 28, drawIn + 0.25).value).toBeGreaterThan(here.value);
        expect(estimate(2 * lb, 28, drawIn).low / here.low).toBeCloseTo(2, 9);
      }),
    );
  });

  it('refuses to carry the estimate more than 10 in from the mark, and asks for a scale', () => {
    const far = weightAtDraw(20 * pound, 28 * inch, 17 * inch);
    expect(far.ok ? '' : far.problem.sentence).toContain('scale');
  });

  it.each([Number.NaN, 0, -5, 1e9])('refuses a marked weight or draw of %s', (bad) => {
    expect(weightAtDraw(bad, 28 * inch, 28 * inch).ok).toBe(false);
    expect(weightAtDraw(40 * pound, 28 * inch, bad).ok).toBe(false);
    expect(weightAtDraw(40 * pound, bad, 28 * inch).ok).toBe(false);
  });
});

describe('weight on the fingers', () => {
  const bow = { ...exampleBundle.bow, markedWeight: 40 * pound, markedDraw: 28 * inch };
  const archer = { drawLength: 27 * inch };

  it('is the reading of the scale whenever there is one', () => {
    const read = valueOf(
      drawWeight(
        { ...bow, markedWeight: null },
        { drawLength: null },
        { weightOnFingers: 36 * pound, weightDraw: null, braceHeight: null },
      ),
    );
    expect(read.value / pound).toBeCloseTo(36, 9);
    expect(read.from).toBe('on the fingers');
    expect(read.high / read.low).toBeLessThan(1.021);
  });

  it('is else an estimate that is less sure than the growth alone, since the mark itself may be out', () => {
    const guess = valueOf(drawWeight(bow, archer, { weightOnFingers: null, weightDraw: null, braceHeight: null }));
    const grown = valueOf(weightAtDraw(bow.markedWeight, bow.markedDraw, archer.drawLength));
    expect(guess.from).toBe('marked weight');
    expect(guess.value).toBe(grown.value);
    expect(guess.low).toBeLessThan(grown.low);
    expect(guess.high).toBeGreaterThan(grown.high);
  });

  it('says what is missing', () => {
    const nothing = drawWeight({ ...bow, markedWeight: null }, archer, {
      weightOnFingers: null,
      weightDraw: null,
      braceHeight: null,
    });
    expect(nothing.ok ? '' : nothing.problem.sentence).toContain('marked weight');
    const noDraw = drawWeight(bow, { drawLength: null }, { weightOnFingers: null, weightDraw: null, braceHeight: null });
    expect(noDraw.ok ? '' : noDraw.problem.sentence).toContain('draw length');
  });

  it('takes a compound at its peak at most, whatever the draw', () => {
    const compound = { ...bow, bowKind: 'compound' } as const;
    const peak = valueOf(
      drawWeight(compound, { drawLength: 25 * inch }, { weightOnFingers: null, weightDraw: null, braceHeight: null }),
    );
    expect(peak.high).toBe(40 * pound);
    expect(peak.low).toBeLessThan(peak.high);
  });

  // 5 to 5.5 % per inch (common practice), 1 % for the scale (from memory); the products are computed independently.
  it('belongs to the draw it was read at: carried to another it is less sure', () => {
    const at = (readIn: number | null, drawIn: number | null) =>
      valueOf(
        drawWeight(
          bow,
          { drawLength: drawIn === null ? null : drawIn * inch },
          { weightOnFingers: 40 * pound, weightDraw: readIn === null ? null : readIn * inch, braceHeight: null },
        ),
      );
    expect([at(27, 27.25).from, at(27, 26.75).from, at(27, 27.3).from, at(null, 27).from, at(null, null).from]).toEqual([
      'on the fingers',
      'on the fingers',
      'at another draw',
      'at another draw',
      'on the fingers',
    ]);
    const carried = inPounds(at(27, 30));
    expect(carried.value).toBeCloseTo(46.3, 9);
    expect([carried.low, carried.high]).toEqual([expect.closeTo(46 * 0.99, 9), expect.closeTo(46.6 * 1.01, 9)]);
    const unnoted = inPounds(at(null, 27));
    expect([unnoted.low, unnoted.value, unnoted.high]).toEqual([
      expect.closeTo(37.4, 9),
      expect.closeTo(40, 9),
      expect.closeTo(42.6, 9),
    ]);
    const far = drawWeight(
      bow,
      { drawLength: 39 * inch },
      { weightOnFingers: 40 * pound, weightDraw: 27 * inch, braceHeight: null },
    );
    expect(far.ok ? '' : far.problem.sentence).toContain('more than 10 in from this draw');
  });

  // 40 lb marked at 28 in are 37.9 lb at 27 (common practice): a reading of half that is no scatter.
  it('contradicts the mark when it lies far outside what the mark lets expect, and then the heavier is the one to go by', () => {
    const read = (lb: number, kind: (typeof kinds)[number] = 'take-down recurve') =>
      [{ ...bow, bowKind: kind }, archer, { weightOnFingers: lb * pound, weightDraw: 27 * inch, braceHeight: null }] as const;
    const kinds = ['take-down recurve', 'compound'] as const;
    expect([20, 30, 31.5, 38, 44, 46].map((lb) => weightAgainstMark(...read(lb)) === null)).toEqual([
      false,
      false,
      true,
      true,
      true,
      false,
    ]);
    expect((weightAgainstMark(...read(20))?.value ?? 0) / pound).toBeCloseTo(37.9, 9);
    const heavier = (lb: number) => valueOf(heavierWeight(...read(lb))).value / pound;
    expect([heavier(20), heavier(36), heavier(60)]).toEqual([
      expect.closeTo(37.9, 9),
      expect.closeTo(36, 9),
      expect.closeTo(60, 9),
    ]);
    expect(weightAgainstMark(...read(20, 'compound'))).toBeNull();
  });

  it.each([Number.NaN, 0, -1, 1e6])('refuses a reading of %s', (bad) => {
    expect(drawWeight(bow, archer, { weightOnFingers: bad, weightDraw: null, braceHeight: null }).ok).toBe(false);
    expect(
      drawWeight({ ...bow, markedWeight: bad }, archer, { weightOnFingers: null, weightDraw: null, braceHeight: null }).ok,
    ).toBe(false);
    expect(
      drawWeight({ ...bow, bowKind: 'compound', markedWeight: bad }, archer, {
        weightOnFingers: null,
        weightDraw: null,
        braceHeight: null,
      }).ok,
    ).toBe(false);
  });
});

describe('weight off the force-draw readings', () => {
  const nothing = { weightOnFingers: null, weightDraw: null, braceHeight: 8.5 * inch };
  const { bow } = bowRead(steadyRows);
  const at = (drawIn: number, settings = {}, rows = bow) =>
    valueOf(drawWeight(rows, { drawLength: drawIn * inch }, { ...nothing, ...settings }));

  it('is read on the scale at any draw that they reach, to 1 % at a reading, whatever the mark says', () => {
    const full = at(28);
    expect([full.value / pound, full.low / pound, full.high / pound]).toEqual([
      expect.closeTo(34, 9),
      expect.closeTo(33.66, 9),
      expect.closeTo(34.34, 9),
    ]);
    expect(full.from).toBe('read on the scale');
    const between = at(27);
    expect(between.value / pound).toBeGreaterThan(30.7);
    expect(between.value / pound).toBeLessThan(34);
    expect([at(28.25).from, at(28.5).from]).toEqual(['read on the scale', 'at another draw']);
    expect(at(30).high / at(30).low).toBeGreaterThan(1.05);
    expect([isWeighed(full.from), isWeighed(at(30).from)]).toEqual([true, false]);
  });

  it('gives way to a weight on the fingers at this draw only', () => {
    const read = { weightOnFingers: 33 * pound, weightDraw: 28 * inch };
    expect(at(28, read)).toMatchObject({ value: 33 * pound, from: 'on the fingers' });
    expect(at(26, read).from).toBe('read on the scale');
    expect(at(26, { weightOnFingers: 33 * pound }).from).toBe('read on the scale');
  });

  it('contradicts a weight on the fingers that lies more than 5 % beyond, at the draw that was read there [from memory]', () => {
    const against = (lb: number, drawIn: number | null) =>
      weightAgainstReadings(
        bow,
        { drawLength: 28 * inch },
        {
          ...nothing,
          weightOnFingers: lb * pound,
          weightDraw: drawIn === null ? null : drawIn * inch,
        },
      );
    expect([31, 33, 35, 37].map((lb) => against(lb, 28) === null)).toEqual([false, true, true, false]);
    const found = against(24, 26);
    expect([found?.draw, (found?.onScale.value ?? 0) / pound, (found?.onFingers.value ?? 0) / pound]).toEqual([
      26 * inch,
      expect.closeTo(30.7, 9),
      expect.closeTo(24, 9),
    ]);
    // Beyond the readings, and at a draw that nobody noted, there is more room.
    expect(against(60, 32)).toBeNull();
    expect([against(36.5, null), against(45, null) === null]).toEqual([null, false]);
    expect(
      weightAgainstReadings(
        { ...bow, bowKind: 'compound' },
        { drawLength: 28 * inch },
        { ...nothing, weightOnFingers: 9 * pound, weightDraw: 28 * inch },
      ),
    ).toBeNull();
  });

  it('lets the arrow be judged by the heaviest of fingers, readings and mark where they contradict each other', () => {
    const heaviest = (lb: number, rows = bow) =>
      valueOf(heavierWeight(rows, { drawLength: 28 * inch }, { ...nothing, weightOnFingers: lb * pound, weightDraw: 28 * inch }))
        .value / pound;
    expect(heaviest(25)).toBeCloseTo(34, 9);
    expect(heaviest(33.5)).toBeCloseTo(33.5, 9);
    expect(heaviest(45)).toBeCloseTo(45, 9);
    expect(heaviest(33, { ...bow, markedWeight: 60 * pound })).toBeCloseTo(60, 9);
  });

  it('contradicts the mark as a weight on the fingers does', () => {
    const { drawLength } = { drawLength: 28 * inch };
    expect(weightAgainstMark(bow, { drawLength }, nothing)).toBeNull();
    expect((weightAgainstMark({ ...bow, markedWeight: 50 * pound }, { drawLength }, nothing)?.value ?? 0) / pound).toBeCloseTo(
      50,
      9,
    );
  });

  it('of a compound is its peak, never what it holds', () => {
    const cams = bowRead(
      [
        [12, 30],
        [18, 50],
        [24, 49],
        [28, 14],
      ],
      { bowKind: 'compound', markedWeight: null },
    ).bow;
    expect(at(28, {}, cams)).toMatchObject({ value: 50 * pound, from: 'read on the scale' });
    expect(at(28, { weightOnFingers: 14 * pound }, cams).value / pound).toBeCloseTo(50, 9);
    expect(at(28, {}, { ...cams, markedWeight: 55 * pound })).toMatchObject({ value: 55 * pound, from: 'marked weight' });
  });
});
