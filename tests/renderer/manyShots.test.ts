import { unmeasured } from '../../core/model/unmeasured.ts';
import { describe, expect, it } from 'vitest';
import { face, groupMeasures } from '../../core/group/index.ts';
import type { Shot } from '../../core/model/group.ts';
import { faceMarks, type DrawnGroup } from '../../renderer/plots/face/marks.ts';
import type { FaceDots } from '../../renderer/plots/face/faceDots.ts';
import { wholeFace } from '../../renderer/plots/face/geometry.ts';
import { overlayMarks, overlaySize } from '../../renderer/plots/groupsOverlay/marks.ts';
import { axisMarks } from '../../renderer/plots/margins/marks.ts';
import { timelineMarks } from '../../renderer/plots/timeline/marks.ts';

// The most that one group holds. A call with that many arguments throws, so nothing may be spread into one.
const COUNT = 100_000;
/** A sunflower's seeds fill a disc of 0.15 m evenly. */
const shots: readonly Shot[] = Array.from({ length: COUNT }, (_, i) => {
  const [radius, angle] = [0.15 * Math.sqrt(i / COUNT), i * Math.PI * (3 - Math.sqrt(5))];
  return { ...unmeasured.shot, id: i, x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
});
const measured = groupMeasures(shots);
const group: DrawnGroup = { name: 'fletched', shots, measures: measured.ok ? measured.value : null };
const dotsIn = (dots: string | FaceDots | null): number =>
  (typeof dots === 'string' ? dots : (dots ?? []).map(({ path }) => path).join('')).match(/M/g)?.length ?? 0;

describe('a group of 100,000 shots', () => {
  it('has its figures', () => {
    expect(group.measures).not.toBeNull();
  });

  it('is one path of dots on the face, none left out', () => {
    const marks = faceMarks(face('40'), { ...wholeFace(0.2), size: 400 }, [group, group], 0.00275, true);
    expect(marks.groups.map((one) => [one.shots.length, dotsIn(one.dots)])).toEqual([
      [0, COUNT],
      [0, COUNT],
    ]);
  });

  it('keeps its centre and its interval in the margins', () => {
    const view = { ...wholeFace(0.2), size: 400 };
    const { rows } = axisMarks(view, [group], 'x', { perMetre: 1000, name: 'mm' });
    expect(rows).toHaveLength(1);
    expect(rows[0]?.centre).toBeCloseTo(200, 1);
    expect(rows[0]?.from).toBeLessThan(rows[0]?.to ?? 0);
  });

  it('is laid over another as one path of dots, and its widest shots touch the inset of the window', () => {
    const centre = { x: 0, y: 0 };
    const entry = { centre, radius: 0.5, shots: shots.map(({ x, y }) => ({ x: 1000 * x, y: 1000 * y })) };
    const marks = overlayMarks(
      {
        origin: 'centre of the face',
        rings: [200],
        unit: 'mm',
        entries: [
          { ...entry, setup: 0, name: 'first' },
          { ...entry, setup: 1, name: 'second' },
        ],
      },
      380,
    );
    expect(marks.entries.map((one) => [one.shots.length, dotsIn(one.dots)])).toEqual([
      [0, COUNT],
      [0, COUNT],
    ]);
    const heights = [...(marks.entries[0]?.dots ?? '').matchAll(/M\S+ (\S+)h0/g)].map((match) => Number(match[1]));
    expect(heights).toHaveLength(COUNT);
    const [top, bottom] = heights.reduce(([a, b], y) => [Math.min(a, y), Math.max(b, y)] as const, [Infinity, -Infinity]);
    expect(top).toBeCloseTo(overlaySize.inset, 0);
    expect(bottom).toBeCloseTo(overlaySize.height - overlaySize.axis - overlaySize.inset, 0);
  });

  it('is a point of the time line, as are 100,000 groups with as many steps of a setting', () => {
    const day = 86_400_000;
    const at = (i: number) => Date.parse('2026-05-01T10:00:00Z') + (i * day) / 100;
    const marks = timelineMarks(
      {
        sizes: {
          name: 'Mean radius',
          small: 'mm at 18 m',
          points: Array.from({ length: COUNT }, (_, i) => ({
            at: at(i),
            shots: COUNT,
            value: 30,
            low: 29,
            high: 31,
            text: '30',
          })),
        },
        lanes: [
          {
            key: 'brace',
            name: 'brace height',
            unit: 'in',
            steps: Array.from({ length: COUNT }, (_, i) => ({ at: at(i), value: i % 2, text: String(i % 2) })),
            now: { value: 1, text: '1' },
          },
        ],
        flags: [],
      },
      780,
    );
    expect(marks.panel?.dots).toHaveLength(COUNT);
    expect(marks.panel?.dotNote).toEqual([]);
    expect(marks.lanes[0]?.path.match(/V/g)?.length).toBe(COUNT - 1);
    expect(marks.ticks.length).toBeGreaterThan(0);
  });
});
