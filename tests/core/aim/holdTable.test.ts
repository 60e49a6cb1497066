import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  holdTable,
  launchBand,
  missWithTipOn,
  pointOfAim,
  pointOnDistance,
  type Corners,
  type HoldRow,
  type Launch,
} from '../../../core/aim/index.ts';
import { inside } from '../inside.ts';

const tip = 0.74;
const eye = 1.6;
const alone = (launch: Launch): Corners<Launch> => ({ value: launch, corners: [] });
const rowsOf = (launches: Corners<Launch>, distances: readonly number[], eyeAboveGround = eye): HoldRow[] => {
  const table = holdTable(launches, tip, distances, eyeAboveGround);
  if (!table.ok) throw new Error(table.problem.sentence);
  return table.value;
};

// An invented longbow and a learner's bow, of ordinary figures with their bands.
const longbow = launchBand({ value: 46, low: 44, high: 48 }, { value: 0.0022, low: 0.0016, high: 0.0029 }, 0.085, 0.3);
const learner = launchBand({ value: 34, low: 32, high: 36 }, { value: 0.002, low: 0.0012, high: 0.003 }, 0.06, 0.3);

describe('points of aim without drag', () => {
  // Computed independently from the parabola and the triangle of eye, nock and tip by bisection: 50 m/s, eye 0.12 m above the arrow,
  // 0.74 m to the tip, gold 0.3 m under the eye, eye 1.6 m above the ground.
  const expected: readonly [distance: number, hold: number, over: number, ground: number | null, crawl: number | null][] = [
    [10, -1.305076, 1.295288, 9.968376, 0.1043291],
    [18, -2.153146, 2.142994, 11.740029, 0.0927358],
    [30, -2.94739, 2.932332, 14.781099, 0.0752257],
    [50, -2.991065, 2.960114, 24.308237, 0.0456572],
    [70, -1.405255, 1.377728, 65.679326, 0.0153592],
    [90, 1.876099, -1.814931, null, null],
  ];
  const rows = rowsOf(
    alone({ speed: 50, k: 0, eyeHeight: 0.12, targetDrop: 0.3 }),
    expected.map(([distance]) => distance),
  );

  it.each(expected)('at %s m are where the triangle and the parabola put them', (distance, hold, over, ground, crawl) => {
    const row = rows.find((one) => one.distance === distance);
    expect(row?.hold.value).toBeCloseTo(hold, 5);
    expect(row?.over?.value).toBeCloseTo(over, 5);
    if (ground === null) expect(row?.ground).toBeNull();
    else expect(row?.ground?.value).toBeCloseTo(ground, 4);
    if (crawl === null) expect(row?.crawl).toBeNull();
    else expect(row?.crawl?.value).toBeCloseTo(crawl, 6);
  });
});

describe('a table of points of aim', () => {
  it.each([
    ['a longbow', longbow],
    ['a learner’s bow', learner],
  ])(
    'for %s holds under and shoots over inside the point-on distance, and the other way beyond it (common practice)',
    (_name, bow) => {
      const pointOn = [bow.value, ...bow.corners].map((launch) => {
        const found = pointOnDistance(launch, tip);
        return found.ok ? found.value : NaN;
      });
      const [nearest, farthest] = [Math.min(...pointOn), Math.max(...pointOn)];
      const inside = rowsOf(bow, [nearest * 0.3, nearest * 0.6, nearest * 0.95]);
      const beyond = rowsOf(bow, [farthest * 1.05, farthest * 1.2]);
      expect(inside.length * beyond.length).toBe(6);
      for (const row of inside) {
        expect(row.hold.high).toBeLessThan(0);
        expect(row.over?.low).toBeGreaterThan(0);
        expect(row.crawl?.low).toBeGreaterThan(0);
      }
      for (const row of beyond) {
        expect(row.hold.low).toBeGreaterThan(0);
        expect(row.over?.high).toBeLessThan(0);
        expect(row.crawl).toBeNull();
        expect(row.ground).toBeNull();
      }
    },
  );

  it('wants the longer crawl the nearer the target (common practice)', () => {
    const crawls = rowsOf(longbow, [10, 18, 25, 30]).map((row) => row.crawl?.value ?? NaN);
    expect(crawls).toEqual(crawls.toSorted((a, b) => b - a));
    expect(Math.min(...crawls)).toBeGreaterThan(0);
  });

  it('keeps the value inside its band, which holds every corner', () => {
    fc.assert(
      fc.property(inside(8, 40), (distance) => {
        const [row] = rowsOf(longbow, [distance]);
        if (row === undefined) throw new Error('a row was expected');
        for (const band of [row.hold, row.over, row.ground, row.crawl]) {
          if (band === null) continue;
          expect(band.low).toBeLessThanOrEqual(band.value);
          expect(band.value).toBeLessThanOrEqual(band.high);
        }
        for (const launch of longbow.corners) {
          const hold = pointOfAim(launch, tip, distance);
          expect(hold.ok && hold.value >= row.hold.low - 1e-12 && hold.value <= row.hold.high + 1e-12).toBe(true);
          const over = missWithTipOn(launch, tip, distance);
          expect(row.over !== null && over >= row.over.low - 1e-12 && over <= row.over.high + 1e-12).toBe(true);
        }
      }),
    );
  });

  it('puts the marker on the line from the eye to the point of aim: similar triangles, nearer for a lower eye', () => {
    fc.assert(
      fc.property(inside(8, 30), inside(1.2, 1.9), (distance, height) => {
        const [low] = rowsOf(alone(longbow.value), [distance], height);
        if (low?.ground == null) return;
        const fall = 0.3 - low.hold.value;
        expect(low.ground.value / height).toBeCloseTo(distance / fall, 9);
        expect(low.ground.value).toBeLessThan(distance);
      }),
    );
  });

  it('lets a marker stand no farther than the foot of the target where the band reaches above the ground', () => {
    const higher = launchBand({ value: 46, low: 44, high: 48 }, { value: 0.0022, low: 0.0016, high: 0.0029 }, 0.11, 0.3);
    const straddling = Array.from({ length: 40 }, (_, i) => 30 + i).flatMap((distance) => {
      const [row] = rowsOf(higher, [distance]);
      return row?.ground != null && 0.3 - row.hold.high < eye ? [row] : [];
    });
    expect(straddling.length).toBeGreaterThan(0);
    for (const row of straddling) expect(row.ground?.high).toBe(row.distance);
  });

  it('has no row past the reach of the slowest flight, and keeps the order it was given', () => {
    const slow = launchBand({ value: 26, low: 24, high: 28 }, { value: 0.002, low: 0.001, high: 0.003 }, 0.06, 0.3);
    expect(rowsOf(slow, [30, 18, 90, 10]).map(({ distance }) => distance)).toEqual([30, 18, 10]);
  });

  it('says nothing of an arrow that falls short with the tip on the middle, rather than a figure that is none', () => {
    const light = alone({ speed: 60, k: 0.05, eyeHeight: 0.005, targetDrop: 0.3 });
    const rows = rowsOf(light, [10, 60]);
    for (const row of rows) expect(JSON.stringify(row)).not.toMatch(/NaN|Infinity/);
  });

  it('is refused in words for a target nearer than the tip, and for a distance that is no number', () => {
    for (const distance of [0.5, NaN, -20])
      expect(holdTable(longbow, tip, [30, distance], eye)).toMatchObject({ ok: false, problem: { code: 'too-near' } });
    expect(holdTable(longbow, NaN, [30], eye)).toMatchObject({ ok: false, problem: { code: 'too-near' } });
    expect(holdTable(longbow, tip, [], eye)).toEqual({ ok: true, value: [] });
  });
});
