import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stiffnessOf } from '../../../core/arrow/index.ts';
import { exampleBundle } from '../../../core/model/index.ts';
import {
  columnBands,
  columnFactor,
  columnFigure,
  fitOf,
  neededDeflection,
  settled,
  suitability,
} from '../../../core/suitability/index.ts';

const share = fc.double({ min: 0, max: 0.99, noNaN: true });
const force = fc.double({ min: 60, max: 260, noNaN: true });
const length = fc.double({ min: 0.55, max: 0.85, noNaN: true });

describe('column figure', () => {
  it('needs less thrust to buckle the more of it reaches the front', () => {
    fc.assert(
      fc.property(share, (r) => {
        expect(columnFactor(r + 0.01)).toBeLessThan(columnFactor(r));
        expect(columnFactor(r)).toBeLessThan(18.57);
      }),
      { numRuns: 50 },
    );
  });

  it('grows with draw force, length and front share and falls with stiffness: the directions that the shop agrees on [common practice]', () => {
    fc.assert(
      fc.property(force, length, fc.double({ min: 1.5, max: 9, noNaN: true }), share, (F, L, EI, r) => {
        const here = columnFigure(F, L, EI, r);
        expect(columnFigure(F * 1.01, L, EI, r)).toBeGreaterThan(here);
        expect(columnFigure(F, L * 1.01, EI, r)).toBeGreaterThan(here);
        expect(columnFigure(F, L, EI, r + 0.01)).toBeGreaterThan(here);
        expect(columnFigure(F, L, EI * 1.01, r)).toBeLessThan(here);
      }),
      { numRuns: 50 },
    );
  });

  it('is a pure number: it stays when lengths and forces are counted in other units', () => {
    const here = columnFigure(150, 0.72, 3.6, 0.35);
    const inPoundsAndInches = columnFigure(150 / 4.4482216152605, 0.72 / 0.0254, 3.6 / (4.4482216152605 * 0.0254 ** 2), 0.35);
    expect(inPoundsAndInches / here).toBeCloseTo(1, 12);
  });

  it('comes back from the deflection that it needs', () => {
    fc.assert(
      fc.property(force, length, share, fc.double({ min: 1, max: 2.5, noNaN: true }), (F, L, r, wanted) => {
        const deflection = neededDeflection(wanted, F, L, r);
        expect(columnFigure(F, L, stiffnessOf(deflection, '28 in, 880 g'), r) / wanted).toBeCloseTo(1, 10);
      }),
      { numRuns: 50 },
    );
  });

  it('is what the verdict of a set-up rests on, at the weight, at the ends of its band and for what is needed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 1.2, noNaN: true }), force, (deflectionIn, weightOnFingers) => {
        const deflection = deflectionIn * 0.0254;
        const suits = suitability({
          ...exampleBundle,
          arrowSet: { ...exampleBundle.arrowSet, deflection },
          settings: { ...exampleBundle.setup.settings, weightOnFingers },
        });
        expect(suits.ok).toBe(true);
        if (!suits.ok) return;
        const { column, weight } = suits.value;
        const [L, stiffness] = [exampleBundle.arrowSet.length ?? 0, stiffnessOf(deflection, '28 in, 880 g')];
        const at = (drawForce: number) => columnFigure(drawForce, L, stiffness, column.frontShare);
        expect(column.figure / at(weight.value)).toBeCloseTo(1, 12);
        expect(column.figureLow / at(weight.low)).toBeCloseTo(1, 12);
        expect(column.figureHigh / at(weight.high)).toBeCloseTo(1, 12);
        for (const end of ['low', 'high'] as const)
          expect(column.needed[end] / neededDeflection(column.band[end], weight.value, L, column.frontShare)).toBeCloseTo(1, 12);
      }),
      { numRuns: 30 },
    );
  });

  it('asks for a stiffer shaft when the bow is heavier, the arrow longer or its front heavier', () => {
    const here = neededDeflection(1.45, 150, 0.72, 0.35);
    expect(neededDeflection(1.45, 160, 0.72, 0.35)).toBeLessThan(here);
    expect(neededDeflection(1.45, 150, 0.74, 0.35)).toBeLessThan(here);
    expect(neededDeflection(1.45, 150, 0.72, 0.4)).toBeLessThan(here);
    expect(neededDeflection(1.55, 150, 0.72, 0.35)).toBeGreaterThan(here);
  });

  it('wants a weaker shaft off the hand or the shelf than on a rest and button [from memory]', () => {
    expect(columnBands.shelf.low).toBeGreaterThan(columnBands['rest and button'].high);
    expect(columnBands.hand).toEqual(columnBands.shelf);
  });

  it.each([Number.NaN, -0.1, 1.1, Number.POSITIVE_INFINITY])('throws a RangeError for a front share of %s', (bad) => {
    expect(() => columnFactor(bad)).toThrow(RangeError);
    expect(() => columnFigure(150, 0.7, 4, bad)).toThrow(RangeError);
  });

  it.each([Number.NaN, 0, -1, Number.POSITIVE_INFINITY])(
    'throws a RangeError for a force, length, stiffness or figure of %s',
    (bad) => {
      expect(() => columnFigure(bad, 0.7, 4, 0.3)).toThrow(RangeError);
      expect(() => columnFigure(150, bad, 4, 0.3)).toThrow(RangeError);
      expect(() => columnFigure(150, 0.7, bad, 0.3)).toThrow(RangeError);
      expect(() => neededDeflection(bad, 150, 0.7, 0.3)).toThrow(RangeError);
      expect(() => neededDeflection(1.4, bad, 0.7, 0.3)).toThrow(RangeError);
    },
  );
});

describe('verdict', () => {
  const band = { low: 1.3, high: 1.6 };

  it('counts both limits as in range', () => {
    expect(fitOf(1.3, band)).toBe('in range');
    expect(fitOf(1.6, band)).toBe('in range');
    expect(fitOf(1.29, band)).toBe('stiff');
    expect(fitOf(1.61, band)).toBe('weak');
    expect(() => fitOf(Number.NaN, band)).toThrow(RangeError);
  });

  it('cannot tell when the ends of an uncertain weight disagree', () => {
    expect(settled('stiff', 'in range')).toBe('cannot tell');
    expect(settled('in range', 'weak')).toBe('cannot tell');
    expect(settled('weak', 'weak')).toBe('weak');
  });
});
