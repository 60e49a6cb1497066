import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  groundMark,
  type Launch,
  missWithTipOn,
  pointOfAim,
  pointOnDistance,
  tipHeldElevation,
  widestGap,
} from '../../../core/aim/index.ts';
import { inside } from '../inside.ts';

const launches = fc.record({
  speed: inside(35, 65),
  k: inside(0, 0.004),
  eyeHeight: inside(0.03, 0.14),
  targetDrop: inside(0, 0.3),
});
const tip = 0.74;
const pointOn = (launch: Launch) => {
  const found = pointOnDistance(launch, tip);
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
};

describe('the tip held on the middle', () => {
  it('lies on the line from the eye to the middle', () => {
    fc.assert(
      fc.property(launches, inside(5, 90), (launch, distance) => {
        const angle = tipHeldElevation(launch, tip, distance);
        const x = launch.eyeHeight * Math.sin(angle) + tip * Math.cos(angle);
        const y = -launch.eyeHeight * Math.cos(angle) + tip * Math.sin(angle);
        expect(y / x).toBeCloseTo(-launch.targetDrop / distance, 12);
      }),
    );
  });

  it('is refused on a target nearer than the tip', () => {
    expect(() => missWithTipOn({ speed: 50, k: 0, eyeHeight: 0.1 }, tip, 0.5)).toThrow(RangeError);
    expect(() => missWithTipOn({ speed: 50, k: 0, eyeHeight: 0.1 }, tip, NaN)).toThrow(RangeError);
  });
});

describe('the point-on distance', () => {
  it('is where miss and hold are both nought', () => {
    fc.assert(
      fc.property(launches, (launch) => {
        const distance = pointOn(launch);
        const hold = pointOfAim(launch, tip, distance);
        expect(Math.abs(missWithTipOn(launch, tip, distance))).toBeLessThan(2e-6);
        expect(hold.ok && Math.abs(hold.value)).toBeLessThan(1e-5);
      }),
    );
  });

  it('grows with speed and with the eye above the arrow, and shrinks with drag and with a longer arrow', () => {
    fc.assert(
      fc.property(launches, (launch) => {
        const usual = pointOn(launch);
        expect(pointOn({ ...launch, speed: launch.speed + 1 })).toBeGreaterThan(usual);
        expect(pointOn({ ...launch, eyeHeight: launch.eyeHeight + 0.005 })).toBeGreaterThan(usual);
        expect(pointOn({ ...launch, k: launch.k + 3e-4 })).toBeLessThan(usual);
        const longer = pointOnDistance(launch, tip + 0.03);
        expect(longer.ok && longer.value).toBeLessThan(usual);
      }),
    );
  });

  it('does not care for the unit of length', () => {
    fc.assert(
      fc.property(launches, inside(0.5, 2), ({ speed, k, eyeHeight, targetDrop }, c) => {
        const scaled = { speed: speed * Math.sqrt(c), k: k / c, eyeHeight: eyeHeight * c, targetDrop: targetDrop * c };
        const [one, other] = [pointOn({ speed, k, eyeHeight, targetDrop }), pointOnDistance(scaled, tip * c)];
        expect(other.ok && Math.abs(other.value / (c * one) - 1)).toBeLessThan(1e-5);
      }),
    );
  });

  it('is found between over and under for an arrow so light and thick that it never flies as far as the search looks', () => {
    const launch = { speed: 52, k: 0.02, eyeHeight: 0.147 };
    const found = pointOnDistance(launch, 0.3756);
    expect(found.ok).toBe(true);
    if (!found.ok) return;
    expect(missWithTipOn(launch, 0.3756, found.value - 0.1)).toBeGreaterThan(0);
    expect(missWithTipOn(launch, 0.3756, found.value + 0.1)).toBeLessThan(0);
  });

  it('is refused with a sentence when the eye is at the arrow, or the arrow never comes back to the line', () => {
    expect(pointOnDistance({ speed: 50, k: 0, eyeHeight: 0 }, tip)).toMatchObject({
      ok: false,
      problem: { code: 'no-point-on', field: 'eyeHeight' },
    });
    expect(pointOnDistance({ speed: 120, k: 0, eyeHeight: 0.6 }, tip)).toMatchObject({
      ok: false,
      problem: { code: 'no-point-on' },
    });
    expect(widestGap({ speed: 50, k: 0, eyeHeight: 0 }, tip)).toMatchObject({ ok: false, problem: { code: 'no-point-on' } });
  });
});

describe('the point of aim', () => {
  it('is refused nearer than the tip and out of reach', () => {
    const launch = { speed: 25, k: 0.002, eyeHeight: 0.1 };
    expect(pointOfAim(launch, tip, 0.7)).toMatchObject({ ok: false, problem: { code: 'too-near' } });
    expect(pointOfAim(launch, tip, NaN)).toMatchObject({ ok: false, problem: { code: 'too-near' } });
    expect(pointOfAim(launch, tip, 90)).toMatchObject({ ok: false, problem: { code: 'out-of-reach' } });
  });

  // Similar triangles: from an eye 1.6 m up to a point 2.4 m below its level at 30 m, the line meets the ground two thirds of the way.
  it('that lies below the ground is held on the ground nearer by', () => {
    expect(groundMark(-2.1, 30, 0.3, 1.6)).toBeCloseTo(20, 12);
    expect(groundMark(-1.3, 30, 0.3, 1.6)).toBeNull();
    expect(groundMark(0.5, 30, 0.3, 1.6)).toBeNull();
  });
});
