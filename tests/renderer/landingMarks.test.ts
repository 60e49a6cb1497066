import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { face } from '../../core/group/index.ts';
import { FaceId } from '../../core/model/group.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import { touches } from '../../renderer/plots/boxes.ts';
import { toFace, toPixel } from '../../renderer/plots/face/geometry.ts';
import { landingMarks, type LandingData } from '../../renderer/plots/landing/marks.ts';
import { landingTable } from '../../renderer/plots/landing/table.ts';

/** Evenly over the range: numbers drawn as doubles would crowd about nought. */
const inside = (min: number, max: number) => fc.integer({ min: 0, max: 1e6 }).map((n) => min + ((max - min) * n) / 1e6);
const anyLanding = fc.record({
  id: fc.constantFrom(...FaceId.options),
  x: inside(-4, 4),
  y: inside(-4, 4),
  band: inside(0, 0.4),
  across: inside(0.01, 0.5),
  up: inside(0.01, 0.9),
});
type Drawn = typeof anyLanding extends fc.Arbitrary<infer T> ? T : never;

const dataOf = ({ id, x, y, band, across, up }: Drawn): LandingData => ({
  face: face(id),
  centre: { x, y },
  low: { x: x - band / 3, y: y - band },
  high: { x: x + band / 3, y: y + band },
  spread: [across, up],
  names: [`${Math.abs(100 * y).toFixed(0)} cm ${y > 0 ? 'high' : 'low'}`, `${Math.abs(100 * x).toFixed(0)} cm left`],
});

describe('the face with where a group will land', () => {
  it('keeps all of the face in its window, and the oval too while it lies near', () => {
    fc.assert(
      fc.property(anyLanding, inside(200, 320), (drawn, size) => {
        const data = dataOf(drawn);
        const { view, oval } = landingMarks(data, size);
        const radius = data.face.rings[0]?.radius ?? NaN;
        for (const corner of [
          { x: radius, y: radius },
          { x: -radius, y: -radius },
        ]) {
          const { x, y } = toPixel(view, corner);
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-6);
          expect(Math.max(x, y)).toBeLessThanOrEqual(size + 1e-6);
        }
        if (view.half < 3.2 * radius - 1e-9) {
          expect(oval.at.x - oval.rx).toBeGreaterThanOrEqual(0);
          expect(oval.at.x + oval.rx).toBeLessThanOrEqual(size);
          expect(oval.at.y - oval.ry).toBeGreaterThanOrEqual(0);
          expect(oval.at.y + oval.ry).toBeLessThanOrEqual(size);
        }
      }),
    );
  });

  it('names nothing over another name, over a ring’s number, or out of the window', () => {
    fc.assert(
      fc.property(anyLanding, inside(200, 320), (drawn, size) => {
        const { labels, face: rings } = landingMarks(dataOf(drawn), size);
        for (const [i, { box }] of labels.entries()) {
          expect(box.left >= 0 && box.top >= 0 && box.right <= size && box.bottom <= size).toBe(true);
          for (const other of labels.slice(i + 1)) expect(touches(box, other.box)).toBe(false);
          for (const { at } of rings.figures)
            expect(box.left < at.x && at.x < box.right && box.top < at.y && at.y < box.bottom).toBe(false);
        }
      }),
    );
  });

  it('draws the centre where it lies, and an oval that holds 95 of 100 arrows', () => {
    // √(−2 ln 0.05) = 2.44775 standard deviations (Rayleigh, any textbook).
    const { view, oval } = landingMarks(dataOf({ id: '122', x: -0.12, y: -0.3, band: 0.05, across: 0.1, up: 0.14 }), 300);
    const there = toFace(view, oval.at);
    expect(there.x).toBeCloseTo(-0.12, 9);
    expect(there.y).toBeCloseTo(-0.3, 9);
    const metre = 300 / (2 * view.half);
    expect(oval.rx / metre / 0.1).toBeCloseTo(2.44775, 3);
    expect(oval.ry / metre / 0.14).toBeCloseTo(2.44775, 3);
  });

  it('draws bars as long as the band, and none that nobody could see', () => {
    const wide = landingMarks(dataOf({ id: '122', x: 0, y: -0.3, band: 0.1, across: 0.1, up: 0.1 }), 300);
    const [from, to] = wide.bars.up ?? [];
    expect(toFace(wide.view, from ?? { x: 0, y: 0 }).y).toBeCloseTo(-0.4, 9);
    expect(toFace(wide.view, to ?? { x: 0, y: 0 }).y).toBeCloseTo(-0.2, 9);
    const fine = landingMarks(dataOf({ id: '122', x: 0, y: -0.3, band: 0.001, across: 0.1, up: 0.1 }), 300);
    expect(fine.bars).toEqual({ across: null, up: null });
  });

  it('leads no line to a centre that lies on the middle, and stops at the edge for one far off', () => {
    const on = landingMarks({ ...dataOf({ id: '80', x: 0, y: 0, band: 0, across: 0.1, up: 0.1 }), names: [] }, 300);
    expect(on.shift).toBeNull();
    expect(on.labels.map(({ text }) => text)).toEqual(['95 % of arrows']);
    const off = landingMarks(dataOf({ id: '40', x: 0, y: -4, band: 0, across: 0.1, up: 0.1 }), 300);
    const end = off.shift?.[1] ?? { x: NaN, y: NaN };
    expect(end.y).toBeLessThanOrEqual(300 - 10);
    expect(end.y).toBeGreaterThan(250);
    expect(off.labels.map(({ text }) => text)[0]).toContain('400 cm low');
  });

  it('hands its figures on in the unit of heights', () => {
    const table = landingTable(
      dataOf({ id: '80', x: 0.12, y: -0.48, band: 0.06, across: 0.1, up: 0.2 }),
      defaultPreferences.units,
    );
    expect(table.columns).toEqual(['what', 'right of the middle (cm)', 'above it (cm)']);
    expect(table.rows.map((row) => Number(row[2]))).toEqual([-48, -54, -42, 20]);
  });
});
