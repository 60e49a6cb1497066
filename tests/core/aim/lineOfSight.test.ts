import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Launch, setSight, type SetSight, sightDrop } from '../../../core/aim/index.ts';
import { inside } from '../inside.ts';

const launches = fc.record({
  speed: inside(45, 80),
  k: inside(0, 0.004),
  eyeHeight: inside(0.02, 0.2),
  targetDrop: inside(-0.5, 0.5),
});
const set = (launch: Launch, distance: number, farthest = distance): SetSight => {
  const sight = setSight(launch, distance, farthest);
  if (!sight.ok) throw new Error(sight.problem.sentence);
  return sight.value;
};

describe('a sight set for a distance', () => {
  it('lets the arrow pass through the line of sight there', () => {
    fc.assert(
      fc.property(launches, inside(5, 90), (launch, distance) => {
        expect(Math.abs(set(launch, distance).heightOverLine(distance)!)).toBeLessThan(2e-7);
      }),
    );
  });

  it('starts the arrow squarely below the eye, and the line of sight in it', () => {
    fc.assert(
      fc.property(launches, inside(5, 90), (launch, distance) => {
        const sight = set(launch, distance);
        const { start, elevation } = sight;
        expect(Math.hypot(start.x, start.y)).toBeCloseTo(launch.eyeHeight, 12);
        expect(start.x * Math.cos(elevation) + start.y * Math.sin(elevation)).toBeCloseTo(0, 12);
        const line = (-launch.targetDrop * start.x) / distance;
        expect(sight.heightOverLine(start.x)).toBeCloseTo(start.y - line, 9);
      }),
    );
  });

  it('has the arrow over the line inside the distance and under it beyond', () => {
    const sight = set({ speed: 55, k: 0.002, eyeHeight: 0.11 }, 50, 70);
    for (const x of [10, 20, 30, 49]) expect(sight.heightOverLine(x)).toBeGreaterThan(0);
    for (const x of [51, 60, 70]) expect(sight.heightOverLine(x)).toBeLessThan(0);
    expect(sight.heightOverLine(0)).toBeLessThan(-0.1);
  });

  it('continues along the arrow before it leaves, without a step, and ends in null', () => {
    const sight = set({ speed: 55, k: 0.002, eyeHeight: 0.11 }, 50);
    const hair = 1e-9;
    expect(sight.heightOverLine(sight.start.x - hair)!).toBeCloseTo(sight.heightOverLine(sight.start.x + hair)!, 8);
    expect(sight.heightOverLine(500)).toBeNull();
  });

  it('stands lower for a slower arrow, for more drag, and for a higher eye', () => {
    const drop = (launch: Launch) => {
      const found = sightDrop(launch, 0.85, 40);
      return found.ok ? found.value : NaN;
    };
    fc.assert(
      fc.property(launches, (launch) => {
        const usual = drop(launch);
        expect(drop({ ...launch, speed: launch.speed - 1 })).toBeGreaterThan(usual);
        expect(drop({ ...launch, k: launch.k + 2e-4 })).toBeGreaterThan(usual);
        expect(drop({ ...launch, eyeHeight: launch.eyeHeight + 0.01 })).toBeGreaterThan(usual);
      }),
    );
  });

  // Lengths times c with speeds times √c leaves g alone: the pin scales with the lengths.
  it('does not care for the unit of length', () => {
    fc.assert(
      fc.property(launches, inside(0.5, 2), (launch, c) => {
        const scaled = {
          speed: launch.speed * Math.sqrt(c),
          k: launch.k / c,
          eyeHeight: launch.eyeHeight * c,
          targetDrop: launch.targetDrop * c,
        };
        const [one, other] = [sightDrop(launch, 0.85, 40), sightDrop(scaled, 0.85 * c, 40 * c)];
        expect(one.ok && other.ok && Math.abs(other.value - c * one.value)).toBeLessThan(1e-7);
      }),
    );
  });

  it('is refused out of reach', () => {
    expect(setSight({ speed: 20, k: 0.002, eyeHeight: 0.1 }, 70, 70)).toMatchObject({
      ok: false,
      problem: { code: 'out-of-reach' },
    });
    expect(sightDrop({ speed: 20, k: 0.002, eyeHeight: 0.1 }, 0.85, 70)).toMatchObject({
      ok: false,
      problem: { code: 'out-of-reach' },
    });
  });
});
