import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ShiftPoint } from '../../core/trials/index.ts';
import { alongMarks, type AlongData, type AlongPoint } from '../../renderer/plots/trial/along.ts';
import { fromPad, onPad, padView } from '../../renderer/plots/trial/pad.ts';
import { shiftMarks } from '../../renderer/plots/trial/shifts.ts';
import { walkBackMarks } from '../../renderer/plots/trial/walkBack.ts';
import { expectApart, textsOf } from './labelsApart.ts';

const mm = { factor: 0.001, symbol: 'mm' };
const metres = { factor: 1, symbol: 'm' };
const place = fc.double({ min: -0.2, max: 0.2, noNaN: true });
const half = fc.double({ min: 0.002, max: 0.3, noNaN: true });
const width = fc.integer({ min: 300, max: 440 });

describe('the shift at every distance', () => {
  const shift = (distance: number): fc.Arbitrary<ShiftPoint> =>
    fc.record({ dx: place, dy: place, halfX: half, halfY: half }).map((at) => ({ ...at, distance, arrows: [6, 4] as const }));
  const shifts = fc
    .integer({ min: 1, max: 2 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => shift(10 + 8 * i))));

  it('keeps both centres inside their panel, right to the right and up upwards', () => {
    fc.assert(
      fc.property(shifts, width, (points, wide) => {
        const marks = shiftMarks(
          points,
          ['fletched', 'bare'],
          points.map(() => '18 m'),
          wide,
          mm,
        );
        expect(marks.panels).toHaveLength(points.length);
        marks.panels.forEach(({ left, size, middle, second }, i) => {
          for (const at of [middle, second]) {
            expect(at.x).toBeGreaterThanOrEqual(left);
            expect(at.x).toBeLessThanOrEqual(left + size);
            expect(at.y).toBeGreaterThanOrEqual(marks.top);
            expect(at.y).toBeLessThanOrEqual(marks.axisY);
          }
          const { dx = 0, dy = 0 } = points[i] ?? {};
          expect((second.x - middle.x) * dx).toBeGreaterThanOrEqual(0);
          expect((second.y - middle.y) * dy).toBeLessThanOrEqual(0);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('has one scale for all distances', () => {
    const at = (distance: number, dx: number): ShiftPoint => ({ distance, dx, dy: 0, halfX: 0.01, halfY: 0.01, arrows: [6, 4] });
    const marks = shiftMarks([at(10, 0.02), at(18, 0.04)], ['fletched', 'bare'], ['10 m', '18 m'], 380, mm);
    const lengths = marks.panels.map(({ middle, second }) => second.x - middle.x);
    expect(lengths[1]).toBeCloseTo(2 * (lengths[0] ?? 0), 6);
  });
});

describe('values against a setting', () => {
  const point = (at: number): fc.Arbitrary<AlongPoint> =>
    fc
      .record({ value: half, down: half, up: half, strong: fc.boolean() })
      .map(({ value, down, up, strong }) => ({ at, value, low: Math.max(0, value - down), high: value + up, strong }));
  const points = fc
    .integer({ min: 1, max: 7 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => point(0.21 + 0.003 * i))));
  const dataOf = (list: readonly AlongPoint[]): AlongData => ({
    axis: 'brace height',
    settings: list.map(({ at }, i) => ({ at, text: `${Math.round(at * 1000)}${i === list.length - 1 ? ' mm' : ''}` })),
    panels: ['spread of one axis', 'arrow speed'].map((title) => ({
      title,
      unit: mm,
      points: list,
      line: [],
      zero: false,
      place: null,
    })),
  });

  it('keep bars and dots in their panel and every text apart', () => {
    fc.assert(
      fc.property(points, width, (list, wide) => {
        const marks = alongMarks(dataOf(list), wide);
        for (const panel of marks.panels)
          for (const { y, from, to } of panel.points) {
            expect(from).toBeGreaterThanOrEqual(y - 1e-6);
            expect(to).toBeLessThanOrEqual(y + 1e-6);
            for (const edge of [y, from, to]) {
              expect(edge).toBeGreaterThanOrEqual(panel.top - 1e-6);
              expect(edge).toBeLessThanOrEqual(panel.bottom + 1e-6);
            }
          }
        const texts = [marks.axisName, ...textsOf(marks.across), ...marks.panels.map(({ title }) => title)];
        expectApart(texts, wide, marks.height, 'along');
      }),
      { numRuns: 60 },
    );
  });

  it('write the last setting with its unit, whatever gives way to it', () => {
    const list = Array.from({ length: 20 }, (_, i): AlongPoint => ({
      at: 0.21 + 0.001 * i,
      value: 0.02,
      low: 0.01,
      high: 0.03,
      strong: true,
    }));
    const texts = textsOf(alongMarks(dataOf(list), 300).across).map(({ text }) => text);
    expect(texts.at(-1)).toBe('229 mm');
    expect(texts.length).toBeLessThan(20);
  });
});

describe('the walk-back', () => {
  it('draws right to the right and the farther the lower, every shot inside', () => {
    const shots = [
      { distance: 10, offset: -0.02 },
      { distance: 20, offset: 0.01 },
      { distance: 30, offset: 0.05 },
    ];
    const line = shots.map(({ distance, offset }) => ({ distance, offset, half: 0.4 }));
    const marks = walkBackMarks({ kind: 'walk-back', shots, line, curve: [] }, 400, mm, metres);
    const [near, middle, far] = marks.shots;
    expect(near?.y).toBeLessThan(middle?.y ?? 0);
    expect(middle?.y).toBeLessThan(far?.y ?? 0);
    expect(near?.x).toBeLessThan(marks.plumb);
    expect(far?.x).toBeGreaterThan(marks.plumb);
    for (const { x } of marks.shots) {
      expect(x).toBeGreaterThan(marks.left);
      expect(x).toBeLessThan(marks.right);
    }
    expectApart([...marks.labels, ...textsOf(marks.across), ...textsOf(marks.down)], 400, marks.height, 'walk-back');
  });
});

describe('the paper', () => {
  it('gives back the place that was drawn, for any tear that can be', () => {
    const tear = fc.record({
      across: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
      up: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
    });
    fc.assert(
      fc.property(tear, (one) => {
        const view = padView([one], 340);
        const at = onPad(view, one);
        expect(at.x).toBeGreaterThanOrEqual(0);
        expect(at.x).toBeLessThanOrEqual(340);
        expect(at.y).toBeGreaterThanOrEqual(0);
        expect(at.y).toBeLessThanOrEqual(340);
        const back = fromPad(view, at);
        expect(back.across).toBeCloseTo(one.across, 9);
        expect(back.up).toBeCloseTo(one.up, 9);
      }),
    );
  });
});
