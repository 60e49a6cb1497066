import { describe, expect, it } from 'vitest';
import { exampleBundle, type ArrowSet, type ForceReading } from '../../../core/model/index.ts';
import { agreed, opposed, suitability, type Suitability } from '../../../core/suitability/index.ts';

const inch = 0.0254;
const pound = 4.4482216152605;
const { bow, archer, setup } = exampleBundle;

const suits = (arrowSet: Partial<ArrowSet>, lb: number | null = 33, forceDraw: ForceReading[] = []): Suitability => {
  const settings = { ...setup.settings, weightOnFingers: lb === null ? null : lb * pound };
  const found = suitability({
    bow: { ...bow, forceDraw, forceDrawBrace: settings.braceHeight },
    archer,
    arrowSet: { ...exampleBundle.arrowSet, ...arrowSet },
    settings,
  });
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
};
// 18/64 in by .016 in of aluminium, 69 to 72 GPa: .72 to .75 in on the 28 in tester, by geometry (computed independently).
const tube = (outerIn: number, wallIn: number): Partial<ArrowSet> => ({
  material: 'aluminium',
  deflection: null,
  linearDensity: null,
  diameter: outerIn * inch,
  wall: wallIn * inch,
});

describe('a shaft that nobody has put on a tester', () => {
  it('is judged by its tube, which leaves a band', () => {
    const { margin, spine, verdict } = suits(tube(18 / 64, 0.016));
    expect(spine.from).toBe('tube');
    expect([margin.low, margin.high].map((si) => Number((si / inch).toFixed(2)))).toEqual([0.72, 0.75]);
    expect([margin.low < margin.measured, margin.measured < margin.high]).toEqual([true, true]);
    expect(verdict).toBe('in range');
  });

  it('cannot be told where the ends of that band read differently, and goes on a tester', () => {
    // The weight at which the shaft stands on the very limit: half of its band lies on either side.
    const at33 = suits(tube(18 / 64, 0.016));
    const limit = (33 * at33.column.band.high) / at33.column.figure;
    const found = suits(tube(18 / 64, 0.016), limit);
    expect(found.verdict).toBe('cannot tell');
    expect(found.why).toBe(
      'The spine was reckoned from the tube, and at its low and high end this shaft reads differently. Put the shaft on a spine tester.',
    );
    const measured = suits({ ...tube(18 / 64, 0.016), deflection: found.margin.measured }, limit);
    expect([measured.spine.from, measured.verdict]).toEqual(['measured', 'in range']);
  });

  it('asks for the spine of any other material', () => {
    const arrowSet = { ...exampleBundle.arrowSet, deflection: null };
    const found = suitability({ bow, archer, arrowSet, settings: setup.settings });
    expect(found.ok ? '' : found.problem.sentence).toContain('spine deflection');
  });
});

describe('a weight off the table of readings', () => {
  it('counts as read, as a weight on the fingers does', () => {
    // The same with every inch from the brace height, and 33 lb at 27 1/2 in.
    const readings = [12, 15, 18, 21, 24, 26, 27.5].map((drawIn): ForceReading => ({
      draw: drawIn * inch,
      force: ((33 * (drawIn - 10.25)) / 17.25) * pound,
      way: 'draw',
    }));
    const needed = suits({}).margin.needed.low;
    const edge = { deflection: needed * 1.005 };
    const marked = suits(edge, null);
    const table = suits(edge, null, readings);
    expect([marked.weight.from, marked.verdict]).toEqual(['marked weight', 'cannot tell']);
    expect([table.weight.from, table.verdict]).toEqual(['read on the scale', 'in range']);
    expect(table.weight.value / pound).toBeCloseTo(33, 6);
  });
});

describe('the views', () => {
  it('stand in one list, each with what it needs and what it says, and only while it holds', () => {
    const found = suits({});
    expect(found.views).toEqual([{ name: 'Load on the shaft', needed: found.column.needed, verdict: found.column.verdict }]);
  });

  it('agree or oppose each other whatever their number', () => {
    const said = (...verdicts: ('stiff' | 'in range' | 'weak' | 'cannot tell')[]) => verdicts.map((verdict) => ({ verdict }));
    expect(
      [said('weak'), said('weak', 'weak', 'weak'), said('weak', 'in range'), said('weak', 'cannot tell')].map(agreed),
    ).toEqual([null, true, false, null]);
    expect([said('stiff', 'in range', 'weak'), said('stiff', 'cannot tell'), said()].map(opposed)).toEqual([true, false, false]);
  });
});
