import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { launchElevation, trajectory } from '../../../core/flight/index.ts';
import { inside } from '../inside.ts';

describe('the launch angle for a place', () => {
  it('is one whose flight passes through it, in any wind, with the eye above the arrow or not', () => {
    fc.assert(
      fc.property(
        fc.record({ speed: inside(40, 80), k: inside(0, 0.004), x: inside(2, 90), y: inside(-3, 3), eyeHeight: inside(0, 0.25) }),
        fc.option(fc.record({ x: inside(-5, 5), y: inside(-1, 1), z: inside(-5, 5) }), { nil: undefined }),
        (aim, wind) => {
          const found = launchElevation(wind ? { ...aim, wind } : aim);
          if (!found.ok) throw new Error(found.problem.sentence);
          const elevation = found.value;
          const ahead = aim.x - aim.eyeHeight * Math.sin(elevation);
          const shot = { speed: aim.speed, k: aim.k, elevation, until: { x: ahead } };
          const y = trajectory(wind ? { ...shot, wind } : shot).at(ahead)!.y - aim.eyeHeight * Math.cos(elevation);
          expect(Math.abs(y - aim.y)).toBeLessThan(2e-7);
        },
      ),
    );
  });

  it('is the lower of the two: a little higher strikes higher', () => {
    fc.assert(
      fc.property(inside(25, 70), inside(0, 0.005), inside(5, 90), (speed, k, x) => {
        const found = launchElevation({ speed, k, x, y: 0 });
        if (!found.ok) return;
        const higher = trajectory({ speed, k, elevation: found.value + 1e-3, until: { x } }).at(x)!.y;
        // Right at the limit of the reach the two angles meet and neither strikes higher.
        expect(higher).toBeGreaterThan(found.value > 0.7 ? -1e-3 : 0);
      }),
    );
  });

  // Without air the two angles are known: sin 2θ = g R / v² (any textbook), the limit being R = v²/g.
  it.each([0.3, 0.9, 0.99, 0.9999])('without air, at %f of the greatest range, is half the angle whose sine that is', (share) => {
    const speed = 30;
    const found = launchElevation({ speed, k: 0, x: (share * speed ** 2) / 9.80665, y: 0 });
    expect(found.ok && Math.abs(found.value - Math.asin(share) / 2)).toBeLessThan(1e-5);
  });

  it.each([1.0001, 1.2, 5])('without air, at %f times the greatest range, is refused with a sentence', (share) => {
    const speed = 30;
    const found = launchElevation({ speed, k: 0, x: (share * speed ** 2) / 9.80665, y: 0 });
    expect(found.ok).toBe(false);
    expect(!found.ok && found.problem.code).toBe('out-of-reach');
    expect(!found.ok && found.problem.sentence).toContain('30 m/s (98 ft/s)');
  });

  it('with drag, is found right up to the greatest range of any angle, and refused just past it', () => {
    const [speed, k] = [30, 0.003];
    const carries = Array.from(
      { length: 500 },
      (_, i) => trajectory({ speed, k, elevation: 0.5 + i / 1000, until: { y: 0 } }).downTo(0)!.x,
    );
    const greatest = Math.max(...carries);
    const found = launchElevation({ speed, k, x: 0.9999 * greatest, y: 0 });
    expect(found.ok && found.value).toBeGreaterThan(0.7);
    expect(
      found.ok && Math.abs(trajectory({ speed, k, elevation: found.value, until: { y: 0 } }).downTo(0)!.x / greatest - 0.9999),
    ).toBeLessThan(1e-6);
    expect(launchElevation({ speed, k, x: 1.0001 * greatest, y: 0 }).ok).toBe(false);
  });

  it.each([
    { speed: NaN, k: 0, x: 10, y: 0 },
    { speed: 50, k: NaN, x: 10, y: 0 },
    { speed: 50, k: 0, x: 0, y: 0 },
    { speed: 50, k: 0, x: 10, y: NaN },
    { speed: 50, k: 0, x: Infinity, y: 0 },
    { speed: 50, k: 0, x: 0.1, y: 0, eyeHeight: 0.2 },
  ])('is refused for %j', (aim) => expect(launchElevation(aim)).toMatchObject({ ok: false, problem: { code: 'not-a-shot' } }));
});
