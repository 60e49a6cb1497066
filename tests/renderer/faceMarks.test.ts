import { unmeasured } from '../../core/model/unmeasured.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { face, groupMeasures } from '../../core/group/index.ts';
import type { Shot } from '../../core/model/group.ts';
import { closeIn, toFace, toPixel, wholeFace } from '../../renderer/plots/face/geometry.ts';
import { boxAround, touches } from '../../renderer/plots/boxes.ts';
import { axisMarks } from '../../renderer/plots/margins/marks.ts';
import { textWidth } from '../../renderer/plots/textWidth.ts';
import { faceMarks, type DrawnGroup } from '../../renderer/plots/face/marks.ts';

const mm = { perMetre: 1000, name: 'mm' };

const place = fc.double({ min: -0.18, max: 0.18, noNaN: true });
const group = (name: string, least: number) =>
  fc.array(fc.record({ x: place, y: place }), { minLength: least, maxLength: 12 }).map((points): DrawnGroup => {
    const shots: Shot[] = points.map((point, i) => ({ ...unmeasured.shot, id: i + 1, ...point, arrow: i + 1 }));
    const measured = groupMeasures(shots);
    return { name, shots, measures: measured.ok ? measured.value : null };
  });

describe('the margins of the face', () => {
  it('keep the words under the axis apart and inside it, and always write the last with its unit', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.9, noNaN: true }), fc.integer({ min: 240, max: 640 }), (half, size) => {
        const { ticks } = axisMarks({ middle: { x: 0, y: 0 }, half, size }, [], 'x', mm);
        const words = ticks.flatMap(({ label }) => (label === null ? [] : [label]));
        expect(words.at(-1)?.text).toMatch(/ mm$/);
        expect(ticks.at(-1)?.label).not.toBeNull();
        const spans = words.map(({ x, text }) => {
          const wide = textWidth(text, 12, 'text');
          return { from: x - wide / 2, to: x + wide / 2 };
        });
        spans.forEach(({ from, to }, i) => {
          expect(from).toBeGreaterThanOrEqual(-0.01);
          expect(to).toBeLessThanOrEqual(size + 0.01);
          if (i > 0) expect(from - (spans[i - 1]?.to ?? 0)).toBeGreaterThanOrEqual(6);
        });
      }),
    );
  });
});

describe('the face on screen', () => {
  it('turns a place on the face into a pixel and back', () => {
    fc.assert(
      fc.property(
        place,
        place,
        fc.double({ min: 0.02, max: 0.7, noNaN: true }),
        fc.integer({ min: 100, max: 900 }),
        (x, y, half, size) => {
          const view = { middle: { x: 0, y: 0 }, half, size };
          const back = toFace(view, toPixel(view, { x, y }));
          expect(back.x).toBeCloseTo(x, 9);
          expect(back.y).toBeCloseTo(y, 9);
        },
      ),
    );
  });

  it('puts up and right where the archer sees them', () => {
    const view = { ...wholeFace(0.2), size: 400 };
    const at = toPixel(view, { x: 0.1, y: 0.1 });
    expect(at.x).toBeGreaterThan(200);
    expect(at.y).toBeLessThan(200);
  });

  it('closes in on the shots but keeps every one of them, and the aim, in sight', () => {
    fc.assert(
      fc.property(fc.array(fc.record({ x: place, y: place }), { minLength: 1, maxLength: 12 }), (points) => {
        const view = { ...closeIn(points, 0.2), size: 400 };
        for (const point of [...points, { x: 0, y: 0 }]) {
          const at = toPixel(view, point);
          expect(at.x).toBeGreaterThan(0);
          expect(at.x).toBeLessThan(400);
          expect(at.y).toBeGreaterThan(0);
          expect(at.y).toBeLessThan(400);
        }
      }),
    );
  });

  it('lets no label touch another label, a shot or the edge', () => {
    fc.assert(
      fc.property(group('fletched', 0), group('bare', 0), fc.constantFrom(300, 420, 600), (first, second, size) => {
        const target = face('40');
        const view = { ...closeIn([...first.shots, ...second.shots], 0.2), size };
        const marks = faceMarks(target, view, [first, second], 0.00275, true);
        const shots = marks.groups.flatMap((one) =>
          one.shots.map((shot) => boxAround(shot.at, marks.shotRadius, marks.shotRadius)),
        );
        const labels = marks.groups.flatMap((one) => [
          ...one.shots.flatMap((shot) =>
            shot.label === null ? [] : [boxAround(shot.label.at, (shot.label.text.length * 8 + 2) / 2, 7)],
          ),
          ...(one.nameAt === null ? [] : [boxAround(one.nameAt, (one.name.length * 6.6 + 6) / 2, 8)]),
        ]);
        labels.forEach((label, i) => {
          expect(label.left).toBeGreaterThanOrEqual(0);
          expect(label.right).toBeLessThanOrEqual(size);
          expect(label.top).toBeGreaterThanOrEqual(0);
          expect(label.bottom).toBeLessThanOrEqual(size);
          for (const shot of shots) expect(touches(label, shot)).toBe(false);
          for (const other of labels.slice(i + 1)) expect(touches(label, other)).toBe(false);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('leaves out the numbers for which a crowd has no room, and no label hides a dot of a group too large for numbers', () => {
    const crowd = Array.from({ length: 60 }, (_, i): Shot => ({
      ...unmeasured.shot,
      id: i + 1,
      x: ((i % 8) - 3.5) / 60,
      y: (Math.floor(i / 8) - 3.5) / 60,
    }));
    const few = crowd.slice(0, 12).map((shot, i) => ({ ...shot, x: shot.x / 2, y: shot.y / 2 + 0.06, arrow: i + 1 }));
    const drawn = [crowd, few].map((shots, i): DrawnGroup => ({ name: String(i), shots, measures: null }));
    const marks = faceMarks(face('40'), { ...wholeFace(0.2), size: 420 }, drawn, 0.00275, false);
    const dots = marks.groups.flatMap(({ shots }) => shots.map(({ at }) => boxAround(at, marks.shotRadius, marks.shotRadius)));
    const numbered = marks.groups[1]?.shots ?? [];
    expect(dots).toHaveLength(72);
    expect(numbered.map(({ number }) => number)).toEqual(few.map(({ arrow }) => String(arrow)));
    expect(numbered.some(({ label }) => label === null)).toBe(true);
    for (const { label } of numbered) {
      if (label === null) continue;
      const box = boxAround(label.at, (label.text.length * 8 + 2) / 2, 7);
      for (const dot of dots) expect(touches(box, dot)).toBe(false);
    }
  });

  it('draws very many shots as one path, so that the page stays quick', () => {
    const shots = Array.from({ length: 5000 }, (_, i): Shot => ({
      ...unmeasured.shot,
      id: i,
      x: (i % 71) / 1000,
      y: (i % 97) / 1000,
    }));
    const measured = groupMeasures(shots);
    const marks = faceMarks(
      face('122'),
      { ...wholeFace(0.61), size: 400 },
      [{ name: 'fletched', shots, measures: measured.ok ? measured.value : null }],
      0.003,
      false,
    );
    expect(marks.groups[0]?.shots).toEqual([]);
    expect(
      marks.groups[0]?.dots
        ?.map(({ path }) => path)
        .join('')
        .match(/M/g)?.length,
    ).toBe(5000);
  });
});
