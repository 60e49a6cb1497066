import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type OpenShot, solveShot, type SolvedShot, standardGravity } from '../../../core/flight/index.ts';
import { inside } from '../inside.ts';

const rad = Math.PI / 180;
const shots = fc.record({
  speed: inside(45, 80),
  k: inside(0, 0.004),
  distance: inside(5, 70),
  slope: inside(-0.7, 0.7),
  eyeHeight: inside(0, 0.16),
});
const winds = fc.record({ x: inside(-8, 8), y: inside(-2, 2), z: inside(-8, 8) });

function solved(shot: OpenShot): SolvedShot {
  const found = solveShot(shot);
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
}

describe('a shot solved in three dimensions', () => {
  it('meets the closed solution of a slope without air, S = 2 v² cos θ sin(θ − φ) / (g cos² φ) (any mechanics textbook)', () => {
    for (const slope of [-60, -45, -20, -5, 0, 5, 20, 45, 60]) {
      const phi = slope * rad;
      const { elevation, above, windage, time } = solved({ speed: 50, k: 0, distance: 60, slope: phi });
      const reach = (2 * 50 ** 2 * Math.cos(elevation) * Math.sin(elevation - phi)) / (standardGravity * Math.cos(phi) ** 2);
      expect(reach).toBeCloseTo(60, 5);
      expect(above).toBe(elevation - phi);
      expect(windage).toBe(0);
      expect(time).toBeCloseTo((60 * Math.cos(phi)) / (50 * Math.cos(elevation)), 6);
    }
  });

  it('takes no windage and no other elevation for a wind when there is no drag', () => {
    fc.assert(
      fc.property(shots, winds, (shot, wind) => {
        const [still, blown] = [solved({ ...shot, k: 0 }), solved({ ...shot, k: 0, wind })];
        expect(blown.windage).toBe(0);
        expect(blown.elevation).toBeCloseTo(still.elevation, 12);
      }),
    );
  });

  it('points into the wind: to the right for one from the right, as far to the left for one from the left', () => {
    fc.assert(
      fc.property(shots, inside(0.3, 10), (shot, strength) => {
        const dragged = { ...shot, k: shot.k + 0.0005 };
        const fromRight = solved({ ...dragged, wind: { x: 0, y: 0, z: -strength } });
        const fromLeft = solved({ ...dragged, wind: { x: 0, y: 0, z: strength } });
        expect(fromRight.windage).toBeGreaterThan(0);
        expect(fromLeft.windage).toBeCloseTo(-fromRight.windage, 9);
        expect(fromLeft.elevation).toBeCloseTo(fromRight.elevation, 9);
      }),
    );
  });

  it('wants more elevation against the wind and less with it', () => {
    const shot = { speed: 55, k: 0.002, distance: 50, eyeHeight: 0.11 };
    const [head, still, tail] = [-6, 0, 6].map((x) => solved({ ...shot, wind: { x, y: 0, z: 0 } }).elevation);
    expect(head).toBeGreaterThan(still ?? NaN);
    expect(still).toBeGreaterThan(tail ?? NaN);
  });
});

describe('a shot that cannot be solved', () => {
  const shot = { speed: 55, k: 0.002, distance: 50 };

  it.each([89 * rad, -61 * rad, NaN, Infinity])('on a slope of %f is refused with a sentence', (slope) => {
    expect(solveShot({ ...shot, slope })).toMatchObject({ ok: false, problem: { code: 'slope', field: 'slope' } });
  });

  it('in a hurricane, or a wind that is no number, is refused with a sentence', () => {
    // A hurricane blows from 32.7 m/s on: force 12 of the scale of Beaufort.
    for (const wind of [
      { x: -32.7, y: 0, z: 0 },
      { x: 0, y: 0, z: 21 },
      { x: NaN, y: 0, z: 0 },
    ])
      expect(solveShot({ ...shot, wind })).toMatchObject({
        ok: false,
        problem: { code: 'wind', sentence: 'A wind of at most 20 m/s (45 mph) was expected: in more than that nobody shoots.' },
      });
  });

  it('out of reach is refused with a sentence, and against a wind sooner than in still air', () => {
    const far = { speed: 30, k: 0.003 };
    expect(solveShot({ ...far, distance: 200 })).toMatchObject({ ok: false, problem: { code: 'out-of-reach' } });
    expect(solveShot({ ...far, distance: 70 }).ok).toBe(true);
    expect(solveShot({ ...far, distance: 70, wind: { x: -20, y: 0, z: 0 } })).toMatchObject({
      ok: false,
      problem: { code: 'out-of-reach' },
    });
  });

  it.each([
    { speed: NaN },
    { speed: 0 },
    { k: -1 },
    { k: NaN },
    { distance: 0 },
    { distance: NaN },
    { distance: Infinity },
    { eyeHeight: NaN },
  ])('is refused for %j', (wrong) =>
    expect(solveShot({ ...shot, ...wrong })).toMatchObject({ ok: false, problem: { code: 'not-a-shot' } }),
  );
});
