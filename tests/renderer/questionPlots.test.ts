import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { covarianceEllipse, face, groupMeasures } from '../../core/group/index.ts';
import { unmeasured, type Shot } from '../../core/model/index.ts';
import { boxAround, touches } from '../../renderer/plots/boxes.ts';
import { wholeFace } from '../../renderer/plots/face/geometry.ts';
import { faceMarks } from '../../renderer/plots/face/marks.ts';
import { axisMarks } from '../../renderer/plots/margins/marks.ts';
import { intervalMarks, type IntervalRow } from '../../renderer/plots/intervalRows/marks.ts';
import { placesMarks } from '../../renderer/plots/places/marks.ts';
import { textWidth } from '../../renderer/plots/textWidth.ts';
import { expectApart, textsOf } from './labelsApart.ts';

const mm = { factor: 0.001, symbol: 'mm' };
const length = fc.double({ min: 0.001, max: 0.2, noNaN: true });
const row = (name: string): fc.Arbitrary<IntervalRow> =>
  fc.record({ value: length, down: length, up: length, strong: fc.boolean() }).map(({ value, down, up, strong }) => ({
    name,
    value,
    interval: [value - down, value + up],
    strong,
  }));
const rows = fc
  .integer({ min: 1, max: 12 })
  .chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => row(`end ${i + 1}`))));

describe('values on rows with their intervals', () => {
  it('keep every value inside the panel and every text apart, one panel or two', () => {
    fc.assert(
      fc.property(rows, fc.boolean(), fc.integer({ min: 300, max: 580 }), (list, two, width) => {
        const panel = { title: 'across', rows: list, against: 0 };
        const marks = intervalMarks(two ? [panel, { ...panel, title: 'up' }] : [panel], width, mm);
        for (const { left, right, rows: drawn } of marks.panels) {
          for (const one of drawn) {
            expect(one.at).toBeGreaterThanOrEqual(left);
            expect(one.at).toBeLessThanOrEqual(right);
            expect(one.from).toBeLessThanOrEqual(one.at);
            expect(one.to).toBeGreaterThanOrEqual(one.at);
          }
        }
        const texts = [...marks.names, ...marks.panels.flatMap(({ title, ticks }) => [title, ...textsOf(ticks)])];
        expectApart(texts, width, marks.height, 'rows');
      }),
      { numRuns: 60 },
    );
  });

  it('let an interval that is out of all proportion run out of the panel, open at its end', () => {
    const usual = (name: string) => ({ name, value: 0.03, interval: [0.02, 0.04] as const, strong: false });
    const wild = { name: 'two shots', value: 0.03, interval: [0.01, 3] as const, strong: true };
    const marks = intervalMarks([{ title: 'size', rows: [usual('a'), usual('b'), wild], against: null }], 500, mm);
    expect(marks.panels[0]?.rows.map(({ open }) => open[1])).toEqual([false, false, true]);
  });
});

describe('places about their mean', () => {
  const place = fc.record({
    x: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
    y: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
    radius: length,
    strong: fc.boolean(),
  });

  it('keep their circles inside and round, and no name touches another', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 12 }), fc.integer({ min: 300, max: 580 }), (list, width) => {
        const places = list.map(({ x, y, radius, strong }, i) => ({ name: String(i + 1), at: { x, y }, radius, strong }));
        const marks = placesMarks(places, 'the others', width, mm);
        const scale = marks.places.map(({ r }, i) => r / (list[i]?.radius ?? 1));
        for (const one of scale) expect(one / (scale[0] ?? 1)).toBeCloseTo(1, 9);
        const boxes = marks.places.flatMap(({ name, label, dot, r }) => {
          expect(dot.y - r).toBeGreaterThanOrEqual(0);
          expect(dot.y + r).toBeLessThanOrEqual(marks.axisY);
          return label === null ? [] : [boxAround(label, textWidth(name, 13, 'name') / 2, 7)];
        });
        boxes.forEach((box, i) => {
          for (const other of boxes.slice(i + 1)) expect(touches(box, other)).toBe(false);
        });
        expectApart(textsOf(marks.ticks), width, marks.height, 'places');
      }),
      { numRuns: 60 },
    );
  });
});

describe('a shot that was left out', () => {
  const shot = (id: number, x: number, y: number, leftOut: string | null = null): Shot => ({
    ...unmeasured.shot,
    id,
    x,
    y,
    arrow: id,
    leftOut,
  });
  const shots = [shot(1, 0.02, 0.02), shot(2, -0.03, 0.01), shot(3, 0.01, -0.04), shot(4, 0.12, 0.1, 'a gust')];
  const measured = groupMeasures(shots.slice(0, 3));
  const measures = measured.ok ? measured.value : null;
  const view = { ...wholeFace(0.2), size: 420 };

  it('stays on the face, marked as out with a word, and has no tick in the margins', () => {
    const marks = faceMarks(face('40'), view, [{ name: 'fletched', shots, measures }], 0.003, false);
    const [group] = marks.groups;
    expect(group?.shots.map(({ out }) => out)).toEqual([false, false, false, true]);
    expect(group?.shots[3]?.label?.text).toBe('4 left out');
    const margin = axisMarks(view, [{ name: 'fletched', shots, measures }], 'x', { perMetre: 1000, name: 'mm' });
    expect(margin.rows[0]?.ticks).toHaveLength(3);
  });

  it('is a cross among very many dots', () => {
    const many = Array.from({ length: 1000 }, (_, i) => shot(i + 1, (i % 41) / 1000, (i % 37) / 1000, i === 7 ? 'a gust' : null));
    const [group] = faceMarks(face('40'), view, [{ name: 'fletched', shots: many, measures }], 0.003, false).groups;
    expect(group?.outDots?.match(/M/g)).toHaveLength(1);
  });

  it('leaves the oval to those that count, turned as they lie: up to the right on screen is a turn below nought', () => {
    const oval = covarianceEllipse({ xx: 4e-4, xy: 3e-4, yy: 4e-4 }, 1);
    const [group] = faceMarks(face('40'), view, [{ name: 'fletched', shots, measures, oval }], 0.003, false).groups;
    expect(group?.oval?.turn).toBeCloseTo(-45, 9);
    expect(group?.oval?.long).toBeGreaterThan(group?.oval?.short ?? Infinity);
  });
});
