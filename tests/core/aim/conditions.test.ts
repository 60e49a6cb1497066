import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crawlFor, misjudged, pointOnDistance, slopeShot, windDrift, type Launch } from '../../../core/aim/index.ts';
import { standardGravity } from '../../../core/flight/index.ts';
import { inside } from '../inside.ts';

/** science.md's launch of a strong recurve, invented figures. */
const strong: Launch = { speed: 57, k: 0.0011, eyeHeight: 0.12 };
const inVacuum: Launch = { speed: 50, k: 0, eyeHeight: 0 };
const rad = Math.PI / 180;

const launches = fc.record({
  speed: inside(35, 75),
  k: inside(0, 0.004),
  eyeHeight: inside(0.05, 0.16),
});

describe('a shot up or down a slope', () => {
  it('meets the closed solution of a slope in vacuum: S = 2 v² cos θ sin δ / (g cos² φ), and R = v² sin 2δ / g on the level', () => {
    for (const slope of [-50, -30, -10, 10, 30, 50]) {
      const found = slopeShot(inVacuum, 60, slope * rad);
      if (!found.ok) throw new Error(found.problem.sentence);
      const { elevation, above, setFor, cosineRule } = found.value;
      const reach = (2 * 50 ** 2 * Math.cos(elevation) * Math.sin(above)) / (standardGravity * Math.cos(slope * rad) ** 2);
      expect(reach).toBeCloseTo(60, 5);
      expect(setFor).toBeCloseTo((50 ** 2 * Math.sin(2 * above)) / standardGravity, 5);
      expect(cosineRule).toBeCloseTo(60 * Math.cos(slope * rad), 12);
    }
  });

  it('on the level is set for its own distance', () => {
    fc.assert(
      fc.property(launches, inside(15, 70), (launch, distance) => {
        const found = slopeShot(launch, distance, 0);
        expect(found.ok && found.value.setFor).toBeCloseTo(distance, 4);
      }),
    );
  });

  it('wants a cut of the distance both ways, downhill the larger one with the eye over the arrow, and not that of the cosine', () => {
    // At 30 degrees and 50 m the cosine is one to two metres out (computed independently for such a launch).
    const [up, down] = [slopeShot(strong, 50, 30 * rad), slopeShot(strong, 50, -30 * rad)];
    if (!up.ok || !down.ok) throw new Error('a shot was expected');
    const [above, below] = [up.value.setFor ?? NaN, down.value.setFor ?? NaN];
    expect(above).toBeLessThan(50);
    expect(below).toBeLessThan(above);
    for (const set of [above, below]) {
      expect(Math.abs(set - up.value.cosineRule)).toBeGreaterThan(1);
      expect(Math.abs(set - up.value.cosineRule)).toBeLessThan(2.5);
    }
  });

  it('steeper than 60 degrees is refused in words, and so is a place out of reach', () => {
    expect(slopeShot(strong, 30, 89 * rad)).toMatchObject({ ok: false, problem: { code: 'slope' } });
    expect(slopeShot(strong, 30, NaN)).toMatchObject({ ok: false, problem: { code: 'slope' } });
    expect(slopeShot(strong, 2000, 0)).toMatchObject({ ok: false });
  });

  it('so near that the sight is past its turning gives no distance to set, and no NaN', () => {
    const near = slopeShot(strong, 3, 45 * rad);
    expect(near.ok && near.value.setFor).toBeNull();
  });
});

describe('an arrow in the wind', () => {
  it('drifts as the exact solution has it: 60 m/s at 6 degrees, k 0.001, 4 m/s from the side, 0.168843259 m at 70 m', () => {
    // Computed independently with a general-purpose integrator at 1e-12.
    const launch: Launch = { speed: 60, k: 0.001, eyeHeight: 0, targetDrop: -0.282600702 };
    const found = windDrift(launch, 70, { x: 0, y: 0, z: 4 });
    if (!found.ok) throw new Error(found.problem.sentence);
    expect(found.value.across).toBeCloseTo(0.168843259, 5);
    // In still air it takes 1.215207412 s.
    expect(found.value.time).toBeGreaterThan(1.215207412);
    expect(found.value.time).toBeLessThan(1.2155);
  });

  it('drifts by the lag rule to a few parts in a hundred, the same to either side, and not at all in vacuum', () => {
    fc.assert(
      fc.property(launches, inside(0.5, 8), (launch, z) => {
        const [right, left] = [windDrift(launch, 50, { x: 0, y: 0, z }), windDrift(launch, 50, { x: 0, y: 0, z: -z })];
        if (!right.ok || !left.ok) return;
        expect(left.value.across).toBeCloseTo(-right.value.across, 9);
        expect(Math.abs(right.value.across - right.value.lagRule)).toBeLessThanOrEqual(0.03 * right.value.lagRule + 1e-6);
      }),
    );
    expect(windDrift(inVacuum, 50, { x: 3, y: 0, z: 5 })).toMatchObject({ ok: true, value: { up: 0 } });
  });

  it('strikes low against a headwind and high with the wind behind', () => {
    const [head, tail] = [-6, 6].map((x) => windDrift(strong, 70, { x, y: 0, z: 0 }));
    expect(head?.ok && head.value.up).toBeLessThan(0);
    expect(tail?.ok && tail.value.up).toBeGreaterThan(0);
  });

  it('in a hurricane, or one that is no number, is refused in words', () => {
    expect(windDrift(strong, 70, { x: 0, y: 0, z: 40 })).toMatchObject({ ok: false, problem: { code: 'wind' } });
    expect(windDrift(strong, 70, { x: 0, y: NaN, z: 0 })).toMatchObject({ ok: false, problem: { code: 'wind' } });
  });
});

describe('a misjudged distance', () => {
  it('strikes where the parabola does in vacuum', () => {
    const angle = Math.asin((standardGravity * 30) / 50 ** 2) / 2;
    for (const actual of [20, 30, 35]) {
      const y = actual * Math.tan(angle) - (standardGravity * actual ** 2) / (2 * 50 ** 2 * Math.cos(angle) ** 2);
      const found = misjudged(inVacuum, 30, actual);
      expect(found.ok && found.value).toBeCloseTo(y, 6);
    }
  });

  it('strikes low when the target stands farther than believed and high when nearer, wherever its middle is', () => {
    fc.assert(
      fc.property(launches, inside(-1, 1), (launch, targetDrop) => {
        const off = [45, 50, 55].map((actual) => misjudged({ ...launch, targetDrop }, 50, actual));
        const [high, none, low] = off.map((found) => (found.ok ? found.value : NaN));
        expect(high).toBeGreaterThan(0);
        expect(none).toBeCloseTo(0, 5);
        expect(low).toBeLessThan(0);
      }),
    );
  });
});

describe('a crawl down the string', () => {
  it('leaves the eye height whose point-on distance is the one asked for', () => {
    fc.assert(
      fc.property(launches, inside(8, 25), (launch, distance) => {
        const found = crawlFor(launch, 0.72, distance);
        if (!found.ok) return;
        const { eyeHeight, down } = found.value;
        expect(eyeHeight + down).toBeCloseTo(launch.eyeHeight, 12);
        const on = pointOnDistance({ ...launch, eyeHeight }, 0.72);
        expect(on.ok && on.value).toBeCloseTo(distance, 2);
      }),
    );
  });

  it('is the longer the nearer the target (common practice), and nothing at the point-on distance', () => {
    const on = pointOnDistance({ ...strong, speed: 50 }, 0.72);
    if (!on.ok) throw new Error(on.problem.sentence);
    const downs = [10, 20, 30, 40].map((distance) => crawlFor({ ...strong, speed: 50 }, 0.72, distance));
    const lengths = downs.map((found) => (found.ok ? found.value.down : NaN));
    expect(lengths).toEqual(lengths.toSorted((a, b) => b - a));
    expect(lengths[0]).toBeGreaterThan(0.05);
    const there = crawlFor({ ...strong, speed: 50 }, 0.72, on.value - 1e-4);
    expect(there.ok && there.value.down).toBeCloseTo(0, 4);
    expect(crawlFor({ ...strong, speed: 50 }, 0.72, on.value + 1)).toMatchObject({ problem: { code: 'beyond-point-on' } });
  });
});
