import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { offAim } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, group, moved, place300, turned } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

const aim = { x: 0, y: 0 };
/** Round, centre at the middle: S = 200/3 mm² on both axes. */
const cross = millimetres([
  [10, 0],
  [0, 10],
  [-10, 0],
  [0, -10],
]);

describe('how far a group lies from the aim', () => {
  it('is not made sure by a centre that happens to hit the aim: the interval runs from 0 to about two standard errors and more', () => {
    const { distance, interval, told, freed } = valueOf(offAim(cross, aim));
    expect(distance).toBeCloseTo(0, 15);
    expect(told).toBe(false);
    expect(interval[0]).toBe(0);
    expect(interval[1]).toBeGreaterThan(2 * Math.sqrt(200 / 3 / 4) * 1e-3);
    expect(freed).toBe(0);
  });

  it('is told exactly where the F test says so: F(2, 6) at 5 % is 5.14 (printed tables)', () => {
    // n d²/(2 s²) = F, n = 4, s² = 200/3.
    const at = (f: number): number => Math.sqrt((f * 2 * (200 / 3)) / 4) / 1000;
    const off = (f: number) => valueOf(offAim(moved(cross, { x: at(f), y: 0 }), aim));
    expect(off(5.13).told).toBe(false);
    expect(off(5.13).interval[0]).toBe(0);
    expect(off(5.15).told).toBe(true);
    expect(off(5.15).interval[0]).toBeGreaterThan(0);
    expect(off(5.15).ovalInterval[0]).toBeGreaterThan(0);
  });

  it('far off, has the interval of a straight line: t with 6 degrees of freedom, 2.447 standard errors (printed tables)', () => {
    const error = Math.sqrt(200 / 3 / 4) / 1000;
    const { interval, distance } = valueOf(offAim(moved(cross, { x: 0.9, y: 0 }), aim));
    expect(Math.abs((distance - interval[0]) / error - 2.447)).toBeLessThan(0.05);
    expect(Math.abs((interval[1] - distance) / error - 2.447)).toBeLessThan(0.05);
  });

  it('does not depend on which way it lies, or on where the face hangs', () => {
    fc.assert(
      fc.property(group(3, 60), angle, place300, (points, by, shift) => {
        const before = valueOf(offAim(points, aim));
        for (const [shots, target] of [[turned(points, by), aim] as const, [moved(points, shift), shift] as const]) {
          const after = valueOf(offAim(shots, target));
          expect(after.distance).toBeCloseTo(before.distance, 10);
          expect(after.p).toBeCloseTo(before.p, 5);
          expect(after.interval[1]).toBeCloseTo(before.interval[1], 5);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('lies inside its intervals, which include 0 when and only when it cannot be told', () => {
    fc.assert(
      fc.property(group(3, 60), (points) => {
        const { distance, interval, ovalInterval, told, freed } = valueOf(offAim(points, aim));
        for (const [low, high] of [interval, ovalInterval]) {
          expect(low).toBeLessThanOrEqual(distance);
          expect(high).toBeGreaterThan(distance);
        }
        expect(ovalInterval[0] > 1e-12).toBe(told);
        if (!told) expect(interval[0]).toBe(0);
        expect(freed).toBeLessThanOrEqual(distance);
      }),
      { numRuns: 40 },
    );
  });

  it.each([0, 1, 3])('lies in its interval 95 times in 100 of round groups of six, %s standard errors off', (errors) => {
    const random = randomFrom(11 + errors);
    const off = (0.02 * errors) / Math.sqrt(6);
    const draws = 300;
    const held = Array.from({ length: draws }, () => {
      const [low, high] = valueOf(offAim(normalShots(random, 6, [0.02, 0.02], { x: off, y: 0 }), aim)).interval;
      return low <= off && off <= high;
    }).filter(Boolean).length;
    // Four standard errors of 300 draws about 95 in 100, and a little room above: it may hold more often than that.
    expect(held / draws).toBeGreaterThan(0.9);
    expect(held / draws).toBeLessThan(0.998);
  });

  it('is refused with a sentence, and is never not a number', () => {
    expect(refusalOf(offAim(cross.slice(0, 2), aim))).toBe('too-few');
    expect(refusalOf(offAim(cross, { x: NaN, y: 0 }))).toBe('bad-aim');
    fc.assert(
      fc.property(anyShots(), place300, (points, target) => {
        const result = offAim(points, target);
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(result.problem.sentence).toMatch(/\.$/);
      }),
    );
  });
});
