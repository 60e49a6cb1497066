import { describe, expect, it } from 'vitest';
import { stiffnessOf } from '../../core/arrow/index.ts';
import { columnBands, columnFactor, columnFigure } from '../../core/suitability/index.ts';

const inch = 0.0254;
const pound = 4.4482216152605;
const grain = 6.479891e-5;

describe('the column under its own thrust', () => {
  it.each([
    { share: 1, factor: 9.8696, source: 'Euler' },
    { share: 0.5, factor: 13.062, source: 'computed independently, science notes' },
    { share: 0, factor: 18.569, source: 'Timoshenko and Gere' },
  ])('has the factor $factor at a front share of $share [$source]', ({ share, factor }) => {
    expect(Math.abs(columnFactor(share) - factor)).toBeLessThan(0.0006);
  });

  it.each([
    // Roots of the differential equation's own power series, forty digits: computed independently.
    { share: 0, factor: 18.56872484099 },
    { share: 0.1, factor: 17.20219835383 },
    { share: 0.25, factor: 15.4250838706 },
    { share: 0.37, factor: 14.20772220281 },
    { share: 0.5, factor: 13.06186464902 },
    { share: 0.75, factor: 11.26397324726 },
    { share: 1, factor: 9.869604401089 },
  ])('agrees with the power series of its equation at $share [computed independently]', ({ share, factor }) => {
    expect(Math.abs(columnFactor(share) / factor - 1)).toBeLessThan(1e-9);
  });

  // Ordinary matched set-ups, from memory and out of no chart; their column figures computed independently for the science notes.
  // The shaft masses are not stated there: carbon of 6 to 7.5 gr/in is assumed, which moves the figure by a thirtieth.
  const carbon = [
    { lb: 18, lengthIn: 27, deflectionIn: 1.4, pointGr: 60, figure: 1.33 },
    { lb: 20, lengthIn: 27.5, deflectionIn: 1.2, pointGr: 70, figure: 1.33 },
    { lb: 28, lengthIn: 28, deflectionIn: 0.85, pointGr: 90, figure: 1.46 },
    { lb: 34, lengthIn: 28.5, deflectionIn: 0.7, pointGr: 100, figure: 1.52 },
    { lb: 38, lengthIn: 28.5, deflectionIn: 0.62, pointGr: 110, figure: 1.53 },
    { lb: 40, lengthIn: 28.7, deflectionIn: 0.6, pointGr: 120, figure: 1.6 },
    { lb: 44, lengthIn: 29, deflectionIn: 0.52, pointGr: 120, figure: 1.54 },
    { lb: 48, lengthIn: 29.5, deflectionIn: 0.45, pointGr: 120, figure: 1.48 },
  ];
  const figureOf = (lb: number, lengthIn: number, stiffness: number, pointGr: number, shaftGr: number) =>
    columnFigure(lb * pound, lengthIn * inch, stiffness, (pointGr * grain) / ((pointGr + shaftGr) * grain));

  it('has rows to check', () => {
    expect(carbon.length).toBe(8);
  });

  it.each(carbon)('gives $figure for $lb lb, $lengthIn in, $deflectionIn in, $pointGr gr [from memory]', (row) => {
    for (const perInch of [6, 7.5]) {
      const figure = figureOf(
        row.lb,
        row.lengthIn,
        stiffnessOf(row.deflectionIn * inch, '28 in, 880 g'),
        row.pointGr,
        perInch * row.lengthIn,
      );
      expect(Math.abs(figure / row.figure - 1)).toBeLessThan(0.035);
      // Each is called matched, so each must fall in the band, but for the rounding of the shaft's mass.
      expect(figure).toBeGreaterThan(columnBands['rest and button'].low - 0.03);
      expect(figure).toBeLessThan(columnBands['rest and button'].high + 0.03);
    }
  });

  it.each([
    // Wood off the hand or shelf, 28 in, 125 gr, from memory; shafts of 11 to 12.5 gr/in (5/16 to 23/64 cedar, practice notes 4).
    { lb: 40, shaftLb: 40, figure: 1.86 },
    { lb: 50, shaftLb: 50, figure: 1.84 },
    { lb: 35, shaftLb: 35, figure: 1.82 },
  ])('gives $figure for a wooden shaft of $shaftLb lb on a $lb lb bow [from memory]', ({ lb, shaftLb, figure }) => {
    for (const perInch of [11, 12.5]) {
      const got = figureOf(lb, 28, stiffnessOf((26 / shaftLb) * inch, '26 in, 2 lb'), 125, perInch * 28);
      expect(Math.abs(got / figure - 1)).toBeLessThan(0.035);
      expect(got).toBeGreaterThan(columnBands.shelf.low);
      expect(got).toBeLessThan(columnBands.hand.high);
    }
  });
});
