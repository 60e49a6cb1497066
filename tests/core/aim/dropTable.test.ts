import { describe, expect, it } from 'vitest';
import { dropTable, setSight } from '../../../core/aim/index.ts';

const g = 9.80665;

describe('the drop table', () => {
  const sight = setSight({ speed: 50, k: 0, eyeHeight: 0.1 }, 30, 60);
  if (!sight.ok) throw new Error(sight.problem.sentence);
  const { elevation, start } = sight.value;

  // Without air every column has its closed form, that of the parabola in any textbook.
  it.each([10, 18, 30, 60])('without air at %i m is the parabola', (distance) => {
    const table = dropTable({ value: sight.value, corners: [] }, [distance]);
    if (!table.ok) throw new Error(table.problem.sentence);
    const row = table.value[0]!;
    const x = distance - start.x;
    const drop = (g * x * x) / (2 * (50 * Math.cos(elevation)) ** 2);
    const y = x * Math.tan(elevation) - drop;
    expect(row.drop.value).toBeCloseTo(drop, 6);
    expect(row.height.value).toBeCloseTo(start.y + y, 6);
    expect(row.time.value).toBeCloseTo(x / (50 * Math.cos(elevation)), 8);
    expect(row.speed.value).toBeCloseTo(Math.sqrt(50 ** 2 - 2 * g * y), 6);
    expect(Math.tan(row.angle.value)).toBeCloseTo(Math.tan(elevation) - (2 * drop) / x, 7);
  });

  it('refuses a distance that the flight does not reach, and one that is no number', () => {
    for (const distance of [30_000, -1, NaN])
      expect(dropTable({ value: sight.value, corners: [] }, [18, distance])).toMatchObject({
        ok: false,
        problem: { code: 'past-the-flight' },
      });
  });

  it('is empty for no distances', () => {
    expect(dropTable({ value: sight.value, corners: [] }, [])).toEqual({ ok: true, value: [] });
  });
});
