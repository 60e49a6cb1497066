import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anchorMoved, launchBand, type AnchorMoved, type Corners, type Launch } from '../../../core/aim/index.ts';
import { inside } from '../inside.ts';

const tip = 0.74;
const alone = (launch: Launch): Corners<Launch> => ({ value: launch, corners: [] });
const movedOf = (launches: Corners<Launch>, other: number, distances: readonly number[]): AnchorMoved => {
  const found = anchorMoved(launches, tip, other, distances);
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
};

const bow = launchBand({ value: 46, low: 44, high: 48 }, { value: 0.0022, low: 0.0016, high: 0.0029 }, 0.085, 0.3);

describe('another anchor without drag', () => {
  // Computed independently from the parabola and the triangle of eye, nock and tip by bisection: 50 m/s, 0.74 m to the tip, gold 0.3 m
  // under the eye, the eye 0.12 m above the arrow and then 0.08 m, the tip held along the same line.
  const expected: readonly [distance: number, moved: number][] = [
    [10, -0.491979],
    [18, -0.915984],
    [30, -1.549298],
    [50, -2.59198],
    [70, -3.609091],
    [90, -4.588201],
  ];
  const found = movedOf(
    alone({ speed: 50, k: 0, eyeHeight: 0.12, targetDrop: 0.3 }),
    0.08,
    expected.map(([distance]) => distance),
  );

  it.each(expected)('moves the arrows at %s m as the triangle and the parabola do', (distance, moved) => {
    expect(found.rows.find((row) => row.distance === distance)?.moved.value).toBeCloseTo(moved, 5);
  });

  it('brings the point-on distance from 79.891 m in to 53.778 m', () => {
    expect(found.before.ok && found.before.value.value).toBeCloseTo(79.891382, 4);
    expect(found.after.ok && found.after.value.value).toBeCloseTo(53.777681, 4);
  });
});

describe('a change of anchor', () => {
  it('lets the arrows fall with the eye nearer to the arrow, and lifts them with the eye higher over it (common practice)', () => {
    const nearer = movedOf(bow, 0.06, [10, 20, 30]);
    const higher = movedOf(bow, 0.11, [10, 20, 30]);
    expect(nearer.rows).toHaveLength(3);
    expect(higher.rows).toHaveLength(3);
    for (const { moved } of nearer.rows) expect(moved.high).toBeLessThan(0);
    for (const { moved } of higher.rows) expect(moved.low).toBeGreaterThan(0);
    if (!nearer.before.ok || !nearer.after.ok || !higher.after.ok) throw new Error('a point-on distance was expected');
    expect(nearer.after.value.value).toBeLessThan(nearer.before.value.value);
    expect(higher.after.value.value).toBeGreaterThan(nearer.before.value.value);
  });

  it('moves nothing when the eye stays where it was', () => {
    fc.assert(
      fc.property(inside(8, 60), (distance) => {
        const { rows, before, after } = movedOf(bow, 0.085, [distance]);
        for (const { moved } of rows) expect(Math.max(Math.abs(moved.low), Math.abs(moved.high))).toBeLessThan(1e-5);
        if (!before.ok || !after.ok) throw new Error('a point-on distance was expected');
        for (const end of ['low', 'value', 'high'] as const) expect(after.value[end]).toBeCloseTo(before.value[end], 9);
      }),
    );
  });

  it('moves the arrows by about the distance over the arrow’s length for each bit of height: similar triangles, for a small change', () => {
    for (const { distance, moved } of movedOf(bow, 0.086, [10, 20, 30]).rows)
      expect(moved.value / 0.001).toBeCloseTo(distance / tip, -1);
  });

  it('says so when the other anchor leaves no point-on distance, and still tells where the arrows go', () => {
    const { after, rows } = movedOf(bow, 0, [20]);
    expect(after).toMatchObject({ ok: false, problem: { code: 'no-point-on' } });
    expect(rows[0]?.moved.high).toBeLessThan(-1);
  });

  it('is refused in words for an eye that cannot be there and a target nearer than the tip', () => {
    for (const other of [NaN, -0.01, 0.3])
      expect(anchorMoved(bow, tip, other, [20])).toMatchObject({ ok: false, problem: { field: 'eyeHeight' } });
    for (const distance of [NaN, 0.5])
      expect(anchorMoved(bow, tip, 0.1, [distance])).toMatchObject({ ok: false, problem: { code: 'too-near' } });
  });

  it('has no row for a distance out of reach', () => {
    const slow = alone({ speed: 24, k: 0.003, eyeHeight: 0.1, targetDrop: 0.3 });
    expect(movedOf(slow, 0.08, [20, 90]).rows.map(({ distance }) => distance)).toEqual([20]);
  });
});
