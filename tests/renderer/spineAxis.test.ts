import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inch } from '../../core/units/exact.ts';
import { touches } from '../../renderer/plots/boxes.ts';
import type { Label } from '../../renderer/plots/labels.ts';
import { spineScale, type SpineScale } from '../../renderer/plots/spine/axis.ts';
import { spineMarks, type ShaftMark, type SpineView } from '../../renderer/plots/spine/marks.ts';
import { moveMarks } from '../../renderer/plots/spine/moves.ts';

const widths = [788, 752, 720];
const perUnit = { in: inch, mm: 0.001 } as const;

const shaftAt = (value: number, low = value, high = value): ShaftMark => ({
  value,
  low,
  high,
  text: low < high ? 'this shaft, 0.725 in, 0.710 in to 0.741 in' : 'this shaft, 18.29 mm',
  wood: '18.29 mm = 136 lb wood',
});
const views: readonly SpineView[] = [
  { name: 'Load on the shaft', needed: { low: 0.64 * inch, high: 0.74 * inch }, says: 'weak by 0.041 in', level: 'caution' },
  { name: 'Rule of thumb', needed: { low: 0.6 * inch, high: 0.7 * inch }, says: 'cannot tell', level: 'unknown' },
];

const touching = (labels: readonly Label[]): string[] =>
  labels.flatMap((a, i) => labels.slice(i + 1).flatMap((b) => (touches(a.box, b.box) ? [`${a.text} touches ${b.text}`] : [])));
const outside = (labels: readonly Label[], scale: SpineScale): string[] =>
  labels.filter(({ box }) => box.left < -0.01 || box.right > scale.width + 0.01).map(({ text }) => `${text} leaves the plot`);

const deflection = fc.double({ min: 0.15 * inch, max: 3 * inch, noNaN: true });

describe('the spine axis', () => {
  it('keeps every text inside and apart, wherever the shaft and the views lie', () => {
    fc.assert(
      fc.property(
        deflection,
        deflection,
        deflection,
        fc.constantFrom('in' as const, 'mm' as const),
        fc.constantFrom(...widths),
        (shaft, a, b, unit, width) => {
          const needed = { low: Math.min(a, b), high: Math.max(a, b) };
          const placed = views.map((view) => ({ ...view, needed }));
          const scale = spineScale([shaft, needed.low, needed.high], width, perUnit[unit], unit);
          const { labels, shaft: mark } = spineMarks(placed, shaftAt(shaft, shaft * 0.98, shaft * 1.02), scale);
          const all = [
            labels.shaft,
            labels.wood,
            ...labels.views.flatMap(({ name, says }) => [name, says]),
            ...labels.ticks,
            ...labels.ends,
          ];
          expect(all.length).toBeGreaterThan(9);
          expect([...touching(all), ...outside(all, scale)]).toEqual([]);
          expect(mark.at).toBeGreaterThanOrEqual(scale.left);
          expect(mark.at).toBeLessThanOrEqual(scale.right);
        },
      ),
      { numRuns: 400, seed: 20260701 },
    );
  });

  it('puts every view and the shaft on one scale, weaker to the right', () => {
    const scale = spineScale([0.6 * inch, 0.78 * inch], 788, inch, 'in');
    const { rows, shaft } = spineMarks(views, shaftAt(0.78 * inch), scale);
    const inchPx = scale.at(2 * inch) - scale.at(inch);
    expect((rows[0]?.to ?? 0) - (rows[0]?.from ?? 0)).toBeCloseTo(0.1 * inchPx, 6);
    expect(shaft.at - (rows[0]?.to ?? 0)).toBeCloseTo(0.04 * inchPx, 6);
  });
});

describe('a move on the axis', () => {
  it('keeps its texts inside and apart, whichever way and however far it goes', () => {
    fc.assert(
      fc.property(deflection, deflection, fc.constantFrom(...widths), (from, to, width) => {
        const scale = spineScale([from, to], width, inch, 'in');
        const { name, acts, ends } = moveMarks('bow 12.5 lb lighter', from, to, 'acts like 0.735 in', 'not far enough', scale);
        expect([...touching([name, acts, ends]), ...outside([name, acts, ends], scale)]).toEqual([]);
      }),
      { numRuns: 400, seed: 20260702 },
    );
  });

  it('draws its head where the shaft would act, pointing the way it goes', () => {
    const scale = spineScale([0.6 * inch, 0.8 * inch], 788, inch, 'in');
    const { head, to } = moveMarks('point 85 gr', 0.78 * inch, 0.7 * inch, 'acts like 0.700 in', 'to the middle', scale);
    expect(to).toBeCloseTo(scale.at(0.7 * inch), 9);
    expect(head).toContain(`M${to} `);
    expect(head).toContain('l7.5 ');
  });
});
