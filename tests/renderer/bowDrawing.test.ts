import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bundle } from '../../core/model/bundle.ts';
import type { Measure } from '../../core/model/limits.ts';
import type { UnitChoice } from '../../core/model/preferences.ts';
import { inch } from '../../core/units/exact.ts';
import { drawnBow } from '../../renderer/drawing/bow/drawn.ts';
import { bowLayout } from '../../renderer/drawing/bow/layout.ts';
import { onDrawing, type BowLayout, type BowTexts, type FigureText } from '../../renderer/drawing/bow/standing.ts';
import { figureText } from '../../renderer/drawing/dimension/figureBox.ts';
import { touches, type Box } from '../../renderer/plots/boxes.ts';
import { anyFigures, bundleOf, inches, unitsTried, type Figures } from './bowDrawingRecords.ts';

/** The drawing's own width and height in the two windows, and some about them [px]. */
const sheets = [
  [533, 620],
  [497, 560],
  [548, 700],
  [505, 575],
] as const;

const measures: Readonly<Record<(typeof onDrawing)[number], readonly [Measure, readonly string[]]>> = {
  upper: ['limbToString', ['upper limb', 'to string']],
  brace: ['braceHeight', ['brace height']],
  lower: ['limbToString', ['lower limb', 'to string']],
  tiller: ['tiller', ['tiller']],
  string: ['stringLength', ['string length']],
  length: ['bowLength', ['length', 'as marked']],
  arrow: ['arrowLength', ['arrow length']],
};

/** The texts as the screen makes them; every figure that a finding can call for marked by it, which is when they are widest. */
const textsOf = (bundle: Bundle, units: UnitChoice, marked = true): BowTexts => {
  const drawn = drawnBow(bundle);
  const values = { ...drawn, tiller: bundle.setup.settings.tiller };
  const figures = Object.fromEntries(
    onDrawing.map((which) => {
      const [measure, name] = measures[which];
      return [
        which,
        { text: figureText(measure, values[which], units), name, marked: marked && which !== 'length' && which !== 'string' },
      ];
    }),
  );
  return { figures: figures as Record<(typeof onDrawing)[number], FigureText> };
};

const layoutOf = (bundle: Bundle, units: UnitChoice, sheet: readonly [number, number], marked = true): BowLayout =>
  bowLayout(drawnBow(bundle), textsOf(bundle, units, marked), sheet[0], sheet[1]);

/** The plates over the two views, as wide as their texts stand in the browser. */
const plates = (hand: 'right' | 'left', width: number): Record<string, Box> => {
  const side = { left: 0, right: 176, top: 0, bottom: 40 };
  const behind = { left: width - 132, right: width, top: 0, bottom: 40 };
  const over = ({ left, right, ...rest }: Box): Box => ({ ...rest, left: width - right, right: width - left });
  return hand === 'right' ? { side, behind } : { side: over(side), behind: over(behind) };
};

/** Five rows and their title stand in the corner [px]. */
const CORNER_ROWS = 182;

function labels(layout: BowLayout, hand: 'right' | 'left'): [string, Box][] {
  const { corner } = layout;
  return [
    ...onDrawing.map((which): [string, Box] => [which, layout.figures[which].box]),
    ...(['A', 'B'] as const).map((key): [string, Box] => [key, layout.keys[key].box]),
    ...Object.entries(plates(hand, layout.width)),
    ...(corner === null ? [] : [['corner', { ...corner, top: corner.bottom - CORNER_ROWS }] as [string, Box]]),
  ];
}

/** What is wrong with where the labels stand; a line a fault. */
function faults(layout: BowLayout, hand: 'right' | 'left'): string[] {
  const found: string[] = [];
  const all = labels(layout, hand);
  const rounded = (box: Box) => JSON.stringify(Object.values(box).map(Math.round));
  all.forEach(([name, box], i) => {
    if (box.left < -0.5 || box.right > layout.width + 0.5 || box.top < -0.5 || box.bottom > layout.height + 0.5)
      found.push(`${name} leaves the sheet: ${rounded(box)}`);
    for (const [other, that] of all.slice(i + 1))
      if (touches(box, that)) found.push(`${name} touches ${other}: ${rounded(box)} ${rounded(that)}`);
  });
  // No upright line runs through a figure that is not its own, and the figures keep off the limbs.
  const string = layout.x(0);
  for (const [name, box] of all.filter(([name]) => name !== 'side' && name !== 'behind')) {
    for (const which of ['string', 'length'] as const) {
      const { line, from, to } = layout.dimensions[which];
      if (
        name !== which &&
        box.left < line &&
        line < box.right &&
        box.top < Math.max(from, to) &&
        box.bottom > Math.min(from, to)
      )
        found.push(`the line of ${which} runs through ${name}: ${rounded(box)}`);
    }
    if (name !== 'arrow' && box.left < string && string < box.right) found.push(`the string runs through ${name}`);
    const on = layout.shape.parts
      .flatMap(({ line }) => line)
      .find(([u, v]) => {
        const [x, y] = [layout.x(u), layout.y(v)];
        return x > box.left && x < box.right && y > box.top && y < box.bottom;
      });
    if (on !== undefined) found.push(`${name} lies on the bow: ${rounded(box)}`);
  }
  // A figure lies on neither end of its own dimension: the arrowheads there stay to be seen.
  for (const which of ['string', 'length'] as const) {
    const { box } = layout.figures[which];
    const { from, to } = layout.dimensions[which];
    for (const end of [from, to])
      if (box.top < end + 8 && box.bottom > end - 8) found.push(`${which} lies on the end of its own line: ${rounded(box)}`);
  }
  const behind = [layout.xBehind(-1 * inch), layout.xBehind(1 * inch)].toSorted((a, b) => a - b) as [number, number];
  for (const which of onDrawing) {
    const { box } = layout.figures[which];
    if (box.right > behind[0] && box.left < behind[1]) found.push(`${which} lies on the view from behind: ${rounded(box)}`);
  }
  const tip = layout.x(layout.arrow.tip);
  if (tip < 0 || tip > layout.width) found.push(`the point leaves the sheet: ${tip}`);
  return found;
}

const extremes: readonly Figures[] = (['right', 'left'] as const).flatMap((hand) => [
  { kind: 'flatbow', hand, lengthIn: 48, braceIn: 5, arrowIn: 20 },
  { kind: 'flatbow', hand, lengthIn: 48, braceIn: 5, arrowIn: 34 },
  { kind: 'take-down recurve', hand, lengthIn: 72, braceIn: 10, arrowIn: 20 },
  { kind: 'take-down recurve', hand, lengthIn: 72, braceIn: 10, arrowIn: 34 },
  { kind: 'take-down recurve', hand, lengthIn: 48, braceIn: 10, arrowIn: 20 },
  { kind: 'longbow', hand, lengthIn: 78, braceIn: 5, arrowIn: 34 },
  { kind: 'one-piece recurve', hand, lengthIn: 52, braceIn: 9, arrowIn: 26 },
  { kind: 'self bow', hand, lengthIn: 48, braceIn: 5, arrowIn: 20 },
  { kind: 'compound', hand, lengthIn: 36, braceIn: 5, arrowIn: 34 },
]);

describe('the labels of the bow’s drawing', () => {
  it('touch nothing and stay on the sheet at the extremes of either hand, in every unit and window', () => {
    expect(extremes.length).toBeGreaterThan(10);
    for (const figures of extremes) {
      for (const units of unitsTried)
        for (const sheet of sheets)
          expect(
            faults(layoutOf(bundleOf(figures), units, sheet), figures.hand),
            `${figures.hand} ${figures.kind} ${figures.lengthIn} in, brace ${figures.braceIn}, arrow ${figures.arrowIn}, ${units.length}, ${sheet.join(' x ')}`,
          ).toEqual([]);
    }
  });

  it('touch nothing and stay on the sheet whatever is measured', () => {
    fc.assert(
      fc.property(
        anyFigures,
        fc.constantFrom(...unitsTried),
        fc.constantFrom(...sheets),
        fc.boolean(),
        (figures, units, sheet, marked) => {
          expect(faults(layoutOf(bundleOf(figures), units, sheet, marked), figures.hand)).toEqual([]);
        },
      ),
      { numRuns: 600 },
    );
  });

  it('are found to touch when one is put on another: the check itself can fail', () => {
    const layout = layoutOf(bundleOf(extremes[0] as Figures), inches, sheets[0]);
    const spoiled = { ...layout, figures: { ...layout.figures, tiller: layout.figures.lower } };
    expect(faults(spoiled, 'right')).toContainEqual(expect.stringMatching(/^lower touches tiller/));
  });

  it('stand the other way round for a left-hander, at the same heights', () => {
    fc.assert(
      fc.property(anyFigures, (figures) => {
        const of = (hand: 'right' | 'left') => layoutOf(bundleOf({ ...figures, hand }), inches, sheets[0]);
        const [right, left] = [of('right'), of('left')];
        for (const which of onDrawing) {
          const [a, b] = [right.figures[which].box, left.figures[which].box];
          expect([b.top, b.bottom]).toEqual([a.top, a.bottom]);
          expect(b.left).toBeCloseTo(right.width - a.right, 9);
          expect(b.right).toBeCloseTo(right.width - a.left, 9);
        }
        expect(right.x(0.5)).toBeLessThan(right.x(0));
        expect(left.x(0.5)).toBeGreaterThan(left.x(0));
      }),
      { numRuns: 50 },
    );
  });
});
