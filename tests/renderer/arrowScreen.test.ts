import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setStatistics } from '../../core/dozen/index.ts';
import type { ArrowSet } from '../../core/model/arrowSet.ts';
import { allFindings } from '../../core/findings/index.ts';
import { exampleBundle, exampleNow } from '../../core/model/example.ts';
import type { NumberedArrow } from '../../core/model/numberedArrow.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import { whatWouldCentre } from '../../core/suitability/index.ts';
import { grain, inch } from '../../core/units/exact.ts';
import { arrowFollows, nothingEntered, spineFacts, suitabilityOf } from '../../renderer/features/arrow/derive.ts';
import { atTarget, dozenTitle, matchedLine, restOfSet, stripsOf } from '../../renderer/features/arrow/dozen/derive.ts';
import { fieldLevels } from '../../renderer/features/arrow/useArrowFields.ts';
import {
  axisOf,
  moveName,
  movesInReach,
  outOfReach,
  reachText,
  shaftMark,
  spineViews,
  viewsTitle,
} from '../../renderer/features/arrow/wants.ts';
import { stripMarks, type StripData } from '../../renderer/plots/strip/marks.ts';
import { touches } from '../../renderer/plots/boxes.ts';

const { units } = defaultPreferences;
const textOf = (facts: readonly { name: string; text: string }[], name: string) => facts.find((fact) => fact.name === name)?.text;

const arrow = (number: number, massGr: number, deflectionIn: number): NumberedArrow => ({
  number,
  mass: massGr * grain,
  spines: [deflectionIn * inch],
  straightness: null,
  lookOver: null,
  lookedOver: null,
  setAside: false,
  note: '',
});
const six: ArrowSet = {
  ...exampleBundle.arrowSet,
  arrows: [
    arrow(1, 326, 0.72),
    arrow(2, 327, 0.721),
    arrow(3, 326, 0.722),
    arrow(4, 333, 0.719),
    arrow(5, 326.5, 0.72),
    arrow(6, 325.5, 0.74),
  ],
};
const weak = { ...exampleBundle, arrowSet: { ...exampleBundle.arrowSet, deflection: 0.95 * inch } };

describe('what the arrow’s page says', () => {
  it('gives a wooden shaft’s pounds as 26 over its deflection on the 26 in tester', () => {
    // ASTM F2031 and the trade: 26 in over the deflection in inches; 26 / 0.65 = 40.
    const { facts } = spineFacts({ ...exampleBundle.arrowSet, deflection: 0.65 * inch, convention: '26 in, 2 lb' }, units);
    expect(textOf(facts, 'wood pounds')).toBe('40 lb');
    expect(textOf(facts, 'known from')).toBe('the tester');
  });

  it('says that a spine from a tube is between two figures', () => {
    // Computed independently, from I = pi (D^4 - d^4)/64: a tube of 18/64 in by .016 in deflects 0.72 to 0.75 in at 72 to 69 GPa.
    const { facts } = spineFacts(
      { ...exampleBundle.arrowSet, material: 'aluminium', deflection: null, diameter: (18 / 64) * inch, wall: 0.016 * inch },
      units,
    );
    const [low = 0, high = 0] = (facts.find(({ name }) => name === 'standard spine')?.note ?? '')
      .split(' to ')
      .map(Number.parseFloat);
    expect(low).toBeCloseTo(0.72, 2);
    expect(high).toBeCloseTo(0.75, 2);
    expect(textOf(facts, 'known from')).toBe('the tube');
  });

  it('weighs the arrow against its parts and against the draw weight', () => {
    // By hand: 28 in at 7 gr/in, 100, 12, 8 and 9 gr are 325 gr; 326 gr weighed over 33 lb are 9.9 gr/lb.
    const { facts } = arrowFollows(exampleBundle, units);
    expect(textOf(facts, 'parts together')).toBe('325 gr');
    expect(textOf(facts, 'mass for the weight')).toBe('9.9 gr/lb');
  });

  it('names what is missing where nothing follows', () => {
    const { facts, missing } = arrowFollows({ ...exampleBundle, arrowSet: { ...exampleBundle.arrowSet, length: null } }, units);
    expect(textOf(facts, 'whole length')).toBeUndefined();
    expect(missing).toMatch(/length/);
  });

  it('puts every view, the shaft and every move on one axis', () => {
    const answer = suitabilityOf(weak);
    const moves = whatWouldCentre(weak, units);
    expect(answer.ok && moves.ok).toBe(true);
    if (!answer.ok || !moves.ok) return;
    const scale = axisOf(answer.value, moves.value, 788, units);
    const places = [answer.value.margin.measured, ...moves.value.map(({ actsLike }) => actsLike)].map(scale.at);
    expect(places.length).toBeGreaterThan(2);
    for (const at of places) {
      expect(at).toBeGreaterThanOrEqual(scale.left);
      expect(at).toBeLessThanOrEqual(scale.right);
    }
    expect(spineViews(answer.value, units)[0]).toMatchObject({ name: 'Load on the shaft', level: 'caution' });
    expect(spineViews(answer.value, units)[0]?.says).toMatch(/^weak by 0\.\d{3} in$/);
    expect(shaftMark(answer.value, units).text).toBe('this shaft, 0.950 in');
    expect(viewsTitle(2)).toBe('Two views of what this bow wants');
  });

  it('names a move by what is done, and does not offer one that is stopped', () => {
    const move = { cost: '', actsLike: 0.018, stopped: null, reaches: 'middle' } as const;
    expect(moveName({ ...move, what: 'point', from: 100 * grain, to: 85 * grain, use: 'mass' }, units)).toBe('point 85 gr');
    expect(moveName({ ...move, what: 'length', from: 28 * inch, to: 27.5 * inch, use: 'length' }, units)).toBe('1/2 in shorter');
    expect(reachText({ ...move, what: 'point', from: 1, to: 1, use: 'mass', stopped: 'Too light.' })).toBe('not to be done');
  });

  it('draws no move that nobody would make, and says so in words', () => {
    const refused = { cost: '', actsLike: 0.018, stopped: 'Not that.', reaches: 'middle' } as const;
    const length = (byIn: number) =>
      ({ ...refused, what: 'length', from: 28 * inch, to: (28 + byIn) * inch, use: 'length' }) as const;
    const weight = (byLb: number) => ({ ...refused, what: 'weight', from: 36, to: 36 + byLb, use: 'weight' }) as const;
    const shaft = { ...refused, what: 'shaft', from: 0.018, to: 0.02, use: 'deflection', stopped: null } as const;
    expect(movesInReach([length(7.5), weight(21), shaft])).toEqual([shaft]);
    expect(outOfReach([length(7.5), weight(21), shaft])).toBe('No arrow length and no draw weight within reach would centre it.');
    // 2 in and a tenth are still thought of; what may be done is never left out.
    expect(movesInReach([length(-2), length(2), weight(-3.6)])).toHaveLength(3);
    expect(movesInReach([{ ...weight(5), stopped: null }])).toHaveLength(1);
    expect(outOfReach([length(2), weight(3), shaft])).toBeNull();
    // Far too stiff on the example’s bow: it would have to grow by more than anybody thinks of.
    const stiff = whatWouldCentre({ ...exampleBundle, arrowSet: { ...exampleBundle.arrowSet, deflection: 0.42 * inch } }, units);
    if (!stiff.ok) throw new Error(stiff.problem.sentence);
    const asked = stiff.value.find(({ what }) => what === 'length');
    expect(Math.abs((asked?.to ?? 0) - (asked?.from ?? 0)) / inch).toBeGreaterThan(2);
    expect(movesInReach(stiff.value)).not.toContain(asked);
    expect(outOfReach(stiff.value)).toMatch(/no arrow length/i);
  });

  it('colours the figure that a finding asks for', () => {
    const levels = fieldLevels(allFindings(weak, { units, now: exampleNow, screen: 'arrow' }));
    expect(levels.deflection).toBe('caution');
    expect(fieldLevels(allFindings(exampleBundle, { units, now: exampleNow, screen: 'arrow' })).deflection).toBeUndefined();
  });
});

describe('the numbered set on the arrow’s page', () => {
  const set = setStatistics(six, units);

  it('names the odd arrows in its title and marks their dots', () => {
    expect(set.ok).toBe(true);
    if (!set.ok) return;
    // By hand: the middle mass is 326.25 gr, so that 333 is more than 3 gr off; the middle spine .7205 in, so that .740 is more than .010 off.
    expect(dozenTitle(six, set.value)).toBe('The dozen: 6 shooting, arrows 4 and 6 odd');
    const strips = stripsOf(six, set.value, units);
    const odd = (name: string) =>
      strips.find((strip) => strip.name === name)?.data.points.flatMap((point) => (point.odd ? [point.number] : []));
    expect(odd('mass')).toEqual([4]);
    expect(odd('spine')).toEqual([6]);
    expect(strips[0]?.line).toMatch(/^Mass of 6: 32[56] gr to 333 gr/);
    expect(restOfSet(set.value, units)).toBe('');
  });

  it('calls no arrow alike that nobody weighed', () => {
    const numbered = { ...six, arrows: six.arrows.map((one) => ({ ...one, mass: null, spines: [] })) };
    const set = setStatistics(numbered, units);
    expect(set.ok && dozenTitle(numbered, set.value)).toBe('The dozen: 6 numbered, none weighed yet');
    expect(matchedLine(numbered, 4, 'club', units)).toMatch(/^Four arrows were asked for, and none of this set/);
  });

  it('knows an arrow of which nothing was entered, whatever its bow', () => {
    const blank = {
      ...exampleBundle.arrowSet,
      length: null,
      pointMass: null,
      deflection: null,
      linearDensity: null,
      diameter: null,
      weighed: null,
      balance: null,
      arrows: [],
    };
    expect(nothingEntered(blank)).toBe(true);
    expect(nothingEntered({ ...blank, length: 0.7 })).toBe(false);
  });

  it('names the arrows that match, or why so many cannot be matched', () => {
    expect(matchedLine(six, 4, 'club', units)).toMatch(/^Arrows 1, 2, 3 and 5 match best: within 1 gr and 0\.002 in of spine/);
    expect(matchedLine(six, 7, 'club', units)).toMatch(/^Seven arrows were asked for, and six/);
  });

  it('says what their masses do at a distance, the lightest the highest', () => {
    const { line } = atTarget({ ...exampleBundle, arrowSet: six }, 30, units);
    expect(line).toMatch(/^At 30 m arrow 6, the lightest, strikes [\d.]+ cm above arrow 4, the heaviest/);
  });
});

describe('a strip of dots', () => {
  const anyStrip: fc.Arbitrary<StripData> = fc
    .record({
      values: fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 60 }),
      tolerance: fc.integer({ min: 1, max: 20 }),
    })
    .map(({ values, tolerance }) => ({
      points: values.map((value, i) => ({ number: i + 1, value: 300 + value / 4, odd: value > 50 })),
      median: 307,
      tolerance: tolerance / 4,
      perUnit: 1,
      unit: 'gr',
    }));

  it('has a dot for every arrow at its figure, inside, and its ticks apart', () => {
    fc.assert(
      fc.property(anyStrip, fc.constantFrom(788, 752), (data, width) => {
        const marks = stripMarks(data, width);
        expect(marks.dots).toHaveLength(data.points.length);
        const perGrain = (marks.band.to - marks.band.from) / (2 * data.tolerance);
        for (const dot of marks.dots) {
          const value = data.points.find(({ number }) => number === dot.number)?.value ?? 0;
          expect(dot.x).toBeCloseTo(marks.median + (value - data.median) * perGrain, 6);
          expect(dot.x).toBeGreaterThan(0);
          expect(dot.x).toBeLessThan(width);
          expect(dot.y).toBeGreaterThan(0);
          expect(dot.y).toBeLessThan(marks.axisY);
        }
        const boxes = marks.ticks.map(({ label }) => label.box);
        expect(boxes.flatMap((a, i) => boxes.slice(i + 1).filter((b) => touches(a, b)))).toEqual([]);
      }),
      { numRuns: 200, seed: 20260704 },
    );
  });

  it('piles the dots of a dozen so that none lies over another', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 2, maxLength: 6 }), (values) => {
        const points = values.map((value, i) => ({ number: i + 1, value: 300 + value, odd: false }));
        const { dots, radius } = stripMarks({ points, median: 306, tolerance: 3, perUnit: 1, unit: 'gr' }, 752);
        const near = dots.flatMap((a, i) => dots.slice(i + 1).filter((b) => Math.hypot(a.x - b.x, a.y - b.y) < 2 * radius));
        expect(near).toEqual([]);
      }),
      { numRuns: 200, seed: 20260705 },
    );
  });
});
