import { describe, expect, it } from 'vitest';
import { commonestDistance, radiusSeries, sameDistance } from '../../../core/group/index.ts';
import { exampleBare, exampleFletched, type ShotGroup } from '../../../core/model/index.ts';

const id = (last: number) => `20000000-0000-4000-8000-${String(last).padStart(12, '0')}`;
const at = (group: ShotGroup, last: number, day: string, distance: number): ShotGroup => ({
  ...group,
  id: id(last),
  context: { ...group.context, distance, shotAt: { at: `${day}T10:00:00Z`, offsetMinutes: 60 } },
});
const [first, bare, far, paced, single] = [
  at(exampleFletched, 11, '2026-05-01', 18),
  at(exampleBare, 12, '2026-05-01', 18),
  at(exampleFletched, 13, '2026-06-01', 30),
  at(exampleFletched, 14, '2026-07-01', 18.1),
  at({ ...exampleFletched, shots: exampleFletched.shots.slice(0, 1) }, 15, '2026-07-02', 18),
] as const;
const history = [first, bare, far, paced, single];

describe('the distance of a series of groups', () => {
  it('is where most groups were shot, paced distances within a hundredth counting as one', () => {
    expect(commonestDistance(history)).toBe(18);
    expect(commonestDistance([])).toBeNull();
  });

  it('is the one that was shot last when two are equally common', () => {
    expect(commonestDistance([first, far])).toBe(30);
    expect(commonestDistance([far, first])).toBe(30);
  });

  it('takes two distances for one up to a hundredth of the farther, whichever comes first', () => {
    const against = (distance: number) => at(exampleFletched, 16, '2026-07-01', distance);
    for (const [distance, same] of [
      [18.18, true],
      [17.82, true],
      [18.19, false],
      [17.81, false],
    ] as const) {
      expect(sameDistance(first, against(distance)), `${distance} m`).toBe(same);
      expect(sameDistance(against(distance), first), `${distance} m`).toBe(same);
    }
  });
});

describe('the series of mean radii', () => {
  it('has one point for each fletched group there whose size can be told, in their order', () => {
    const series = radiusSeries(history);
    expect(series.distance).toBe(18);
    expect(series.points.map((point) => point.id)).toEqual([first.id, paced.id]);
    expect(series.untold).toBe(1);
  });

  // √(π/2) s/c4(10) of six shots, c4 of ten degrees of freedom 0.9754 (Montgomery, appendix VI, n = 11); s worked out here shot by shot.
  it('holds what the spread says of very many such shots, inside its interval', () => {
    const { shots } = exampleFletched;
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const [x, y] = [mean(shots.map((shot) => shot.x)), mean(shots.map((shot) => shot.y))];
    const [point] = radiusSeries([first]).points;
    const squares = shots.reduce((sum, shot) => sum + (shot.x - x) ** 2 + (shot.y - y) ** 2, 0);
    expect(point?.radius).toBeCloseTo((Math.sqrt(Math.PI / 2) * Math.sqrt(squares / 10)) / 0.97535, 6);
    expect(point?.low).toBeLessThan(point?.radius ?? 0);
    expect(point?.high).toBeGreaterThan(point?.radius ?? 0);
    expect(point?.shots).toBe(6);
  });

  it('stands at the clock on the wall of the place, not at ours', () => {
    expect(radiusSeries([exampleFletched]).points[0]?.at).toBe(Date.parse('2026-05-02T11:30:00Z'));
  });

  it('is empty without fletched groups', () => {
    expect(radiusSeries([bare])).toEqual({ distance: null, points: [], untold: 0 });
  });
});
