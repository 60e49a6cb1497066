import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bow } from '../../core/model/bow.ts';
import type { Measure } from '../../core/model/limits.ts';
import type { Settings } from '../../core/model/setup.ts';
import { inch } from '../../core/units/exact.ts';
import { centreDetail, nockingDetail } from '../../renderer/drawing/bow/details.ts';
import { drawnBow } from '../../renderer/drawing/bow/drawn.ts';
import { bowShape } from '../../renderer/drawing/bow/geometry.ts';
import { lengthOf } from '../../renderer/drawing/bow/points.ts';
import type { FigureText } from '../../renderer/drawing/bow/standing.ts';
import { figureText } from '../../renderer/drawing/dimension/figureBox.ts';
import { touches } from '../../renderer/plots/boxes.ts';
import { anyFigures, bundleOf, unitsTried } from './bowDrawingRecords.ts';

describe('the details', () => {
  it('keep their figures on their little sheets, clear of the shaft, whatever is measured', () => {
    fc.assert(
      fc.property(anyFigures, fc.constantFrom(...unitsTried), fc.constantFrom(190, 212), (figures, units, width) => {
        const bow = drawnBow(bundleOf(figures));
        const written = (measure: Measure, value: number, name: string): FigureText => ({
          text: figureText(measure, value, units),
          name: [name],
          marked: true,
        });
        const a = nockingDetail(bow, written('nockingPoint', bow.nocking, 'nocking point'), width);
        const b = centreDetail(bow, bowShape(bow).rest[0], written('centreShot', bow.centre, 'centre shot'), width);
        for (const { figure, height } of [a, b]) {
          expect(figure.box.left).toBeGreaterThanOrEqual(-0.5);
          expect(figure.box.right).toBeLessThanOrEqual(width + 0.5);
          expect(figure.box.bottom).toBeLessThanOrEqual(height + 0.5);
        }
        expect(a.figure.box.top).toBeGreaterThanOrEqual(a.shaftBottom);
        expect(touches(a.figure.box, a.squareName.box)).toBe(false);
        expect(b.figure.box.top).toBeGreaterThanOrEqual(b.middle + b.radius - 0.5);
      }),
      { numRuns: 400 },
    );
  });

  it('are drawn at the scale that they state: the shaft and the distance measured agree with it', () => {
    const bow = drawnBow(bundleOf({ kind: 'take-down recurve', hand: 'right', lengthIn: 68, braceIn: 8.5, arrowIn: 28 }));
    const a = nockingDetail(bow, { text: '6 mm', name: ['nocking point'], marked: false }, 212);
    // Computed independently: 6 mm at 3 : 2 on a screen of 96 px to the inch are 6 / 25.4 * 96 * 1.5 = 34.0 px.
    expect(a.scale).toBe('3 : 2');
    expect(a.square - a.shaftBottom).toBeCloseTo(34.016, 2);
    expect(a.shaftBottom - a.shaftTop).toBeCloseTo((bow.shaft * 1000 * 96 * 1.5) / 25.4, 6);
  });
});

describe('the bow that is drawn', () => {
  it('has a string 3 in shorter than the bow is marked: AMO FP-3', () => {
    for (const lengthIn of [48, 58, 62, 66, 68, 70, 72]) {
      for (const kind of ['take-down recurve', 'one-piece recurve', 'longbow', 'flatbow', 'self bow'] as const) {
        const shape = bowShape(drawnBow(bundleOf({ kind, hand: 'right', lengthIn, braceIn: 7, arrowIn: 28 })));
        expect(Math.abs(lengthOf(shape.string) / inch - (lengthIn - 3)), `${kind} ${lengthIn} in`).toBeLessThan(0.2);
      }
    }
  });

  it('has its grip at the brace height and its limbs’ roots where they were measured', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Bow['bowKind']>('take-down recurve', 'one-piece recurve', 'longbow', 'flatbow', 'self bow'),
        fc.double({ min: 5, max: 10, noNaN: true }),
        fc.double({ min: -0.006, max: 0.012, noNaN: true }),
        (kind, braceIn, tiller) => {
          const drawn = drawnBow(bundleOf({ kind, hand: 'right', lengthIn: 66, braceIn, arrowIn: 28, settings: { tiller } }));
          const shape = bowShape(drawn);
          expect(shape.grip[0]).toBeCloseTo(braceIn * inch, 9);
          expect(shape.roots.upper[0] - shape.roots.lower[0]).toBeCloseTo(tiller, 9);
        },
      ),
    );
  });

  it('is the same height from the middle up as down, and nothing of a recurve or a longbow lies behind its string', () => {
    for (const kind of ['take-down recurve', 'one-piece recurve', 'longbow', 'flatbow', 'self bow'] as const) {
      const shape = bowShape(drawnBow(bundleOf({ kind, hand: 'right', lengthIn: 66, braceIn: 7, arrowIn: 28 })));
      expect(shape.top + shape.bottom).toBeCloseTo(2 * -1.25 * inch, 3);
      const behind = Math.min(...shape.parts.flatMap(({ line }) => line.map(([u]) => u)));
      expect(behind, kind).toBeGreaterThan(-0.35 * inch);
    }
  });

  it('gives the tiller to the two limbs in halves, and derives one limb from the other', () => {
    const of = (settings: Partial<Settings>) =>
      drawnBow(bundleOf({ kind: 'take-down recurve', hand: 'right', lengthIn: 68, braceIn: 8.5, arrowIn: 28, settings }));
    const alone = of({ tiller: 0.004 });
    expect(alone.upper - alone.lower).toBeCloseTo(0.004, 12);
    expect(of({ tiller: 0.004, tillerUpper: 0.19 }).lower).toBeCloseTo(0.186, 12);
    expect(of({ tiller: 0.004, tillerUpper: 0.19, tillerLower: 0.189 })).toMatchObject({ upper: 0.19, lower: 0.189 });
  });
});
