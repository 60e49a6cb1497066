import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import { grain, inch } from '../../core/units/exact.ts';
import { arrowLayout } from '../../renderer/drawing/arrow/layout.ts';
import { bendsOf } from '../../renderer/features/arrow/derive.ts';
import { touches } from '../../renderer/plots/boxes.ts';
import { bendMarks } from '../../renderer/plots/modes/marks.ts';
import { anyUnits } from '../core/anyEquipment.ts';

const { units } = defaultPreferences;
const unmarked = new Set<string>();

describe('the drawn bends', () => {
  it('share the arrow’s own length with the drawing above them', () => {
    const { scale } = arrowLayout(exampleBundle.arrowSet, units, 788, unmarked);
    const bends = bendsOf(exampleBundle.arrowSet, units);
    expect(bends.ok).toBe(true);
    if (!bends.ok) return;
    const marks = bendMarks(bends.value, { throat: scale.throat, perMetre: scale.perMetre, width: 788 });
    expect(marks).toHaveLength(3);
    marks.forEach((mark, i) => {
      // Blevins 1979: the nth bending mode of a free bar has n + 1 places that stand still.
      expect(mark.nodes).toHaveLength(i + 2);
      mark.nodes.forEach((node, j) => expect(node.x).toBeCloseTo(scale.at(bends.value[i]?.nodes[j] ?? 0), 6));
    });
  });

  it('keep every text inside and apart, whatever the arrow', () => {
    const arrow = fc.record({
      length: fc.double({ min: 20 * inch, max: 34 * inch, noNaN: true }),
      pointMass: fc.double({ min: 40 * grain, max: 300 * grain, noNaN: true }),
      nockMass: fc.double({ min: 0, max: 40 * grain, noNaN: true }),
      linearDensity: fc.double({ min: (4 * grain) / inch, max: (14 * grain) / inch, noNaN: true }),
    });
    fc.assert(
      fc.property(arrow, anyUnits, fc.constantFrom(788, 752, 737), (figures, chosen, width) => {
        const arrowSet = { ...exampleBundle.arrowSet, ...figures, weighed: null };
        const { scale } = arrowLayout(arrowSet, chosen, width, unmarked);
        const bends = bendsOf(arrowSet, chosen);
        expect(bends.ok).toBe(true);
        if (!bends.ok) return;
        const marks = bendMarks(bends.value, { throat: scale.throat, perMetre: scale.perMetre, width });
        const labels = marks.flatMap(({ nodes, name }) => [...nodes.map(({ label }) => label), ...(name === null ? [] : [name])]);
        expect(marks.filter(({ name }) => name === null)).toEqual([]);
        const pairs = labels.flatMap((a, i) => labels.slice(i + 1).map((b) => [a, b] as const));
        expect(pairs.filter(([a, b]) => touches(a.box, b.box)).map(([a, b]) => `${a.text} touches ${b.text}`)).toEqual([]);
        expect(labels.filter(({ box }) => box.left < -0.01 || box.right > width + 0.01).map(({ text }) => text)).toEqual([]);
      }),
      { numRuns: 150, seed: 20260703 },
    );
  });
});
