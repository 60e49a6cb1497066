import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noseAt, settledPath, vaneCentre, vaneLift, yawRates, type Vanes, type YawRates } from '../../../core/flight/index.ts';
import { inside } from '../inside.ts';

const rates: fc.Arbitrary<YawRates> = fc.record({
  turning: inside(0.001, 0.4),
  damping: inside(0, 0.1),
  lift: inside(0, 0.05),
});
const start = fc.record({ angle: inside(-0.06, 0.06), rate: inside(-0.02, 0.02) });
const expectNear = (value: number, expected: number, share = 1e-9, floor = 1e-12) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(share * Math.abs(expected) + floor);

describe('the nose of an arrow in flight', () => {
  it('stays on its path when it leaves on it and at rest', () => {
    fc.assert(
      fc.property(rates, inside(0, 100), (one, s) => {
        const { angle, path, aside } = noseAt(one, { angle: 0 }, s);
        expect([angle, path, aside].map(Math.abs)).toEqual([0, 0, 0]);
        const settled = settledPath(one, { angle: 0 });
        expect(settled === null || settled === 0).toBe(true);
      }),
    );
  });

  it('does the mirror image of a mirrored start, and twice as much of twice as much', () => {
    fc.assert(
      fc.property(rates, start, inside(0, 100), (one, begin, s) => {
        const here = noseAt(one, begin, s);
        const there = noseAt(one, { angle: -begin.angle, rate: -begin.rate }, s);
        const more = noseAt(one, { angle: 2 * begin.angle, rate: 2 * begin.rate }, s);
        for (const key of ['angle', 'path', 'aside'] as const) {
          expectNear(there[key], -here[key]);
          expectNear(more[key], 2 * here[key], 1e-9, 1e-11);
        }
      }),
    );
  });

  it('begins where it was loosed, and goes on from anywhere as if it had begun there', () => {
    fc.assert(
      fc.property(rates, start, inside(0, 60), inside(0, 60), (one, begin, first, then) => {
        expect(noseAt(one, begin, 0)).toEqual({ angle: begin.angle + 0, path: 0, aside: 0 });
        const [half, whole] = [noseAt(one, begin, first), noseAt(one, begin, first + then)];
        // θ′ at the first place out of the equation of motion, integrated once: θ′ = θ′₀ − d (θ − θ₀) − κ² ∫α.
        const turned = half.angle + half.path - begin.angle;
        const integral = one.lift > 1e-6 ? half.path / one.lift : null;
        fc.pre(integral !== null);
        const rate = begin.rate - one.damping * turned - one.turning * (integral ?? 0);
        const rest = noseAt(one, { angle: half.angle, rate }, then);
        expectNear(rest.angle, whole.angle, 1e-6, 1e-9);
        expectNear(half.path + rest.path, whole.path, 1e-6, 1e-9);
        expectNear(half.aside + half.path * then + rest.aside, whole.aside, 1e-6, 1e-8);
      }),
    );
  });

  it('keeps its angle where nothing turns it, and is carried aside by a α s²/2', () => {
    const { angle, path, aside } = noseAt({ turning: 0, damping: 0, lift: 0 }, { angle: 0.02 }, 30);
    expect([angle, path, aside]).toEqual([0.02, 0, 0]);
    // Lift so weak that the nose hardly turns with the path: the parabola of a constant push.
    const weak = noseAt({ turning: 0, damping: 0, lift: 1e-9 }, { angle: 0.02 }, 30);
    expectNear(weak.aside, (1e-9 * 0.02 * 900) / 2, 1e-6);
  });

  it('swings for ever without damping and without lift: α₀ cos κ s, as any textbook on vibrations has it', () => {
    fc.assert(
      fc.property(inside(0.001, 0.5), inside(-0.05, 0.05), inside(0, 120), (turning, angle, s) => {
        expectNear(
          noseAt({ turning, damping: 0, lift: 0 }, { angle }, s).angle,
          angle * Math.cos(Math.sqrt(turning) * s),
          1e-9,
          1e-12,
        );
      }),
    );
  });

  it('has settled on its deflection after a long way, with more of it the less the vanes turn it', () => {
    fc.assert(
      fc.property(inside(0.01, 0.4), inside(0.03, 0.1), inside(0.005, 0.05), start, (turning, damping, lift, begin) => {
        const one = { turning, damping, lift };
        const settled = settledPath(one, begin)!;
        const far = noseAt(one, begin, 900);
        expectNear(far.path, settled, 1e-3, 1e-7);
        expectNear(far.angle, 0, 1e-3, 1e-6);
        expect(Math.abs(settledPath({ ...one, turning: 2 * turning }, begin)!)).toBeLessThanOrEqual(Math.abs(settled));
      }),
    );
  });

  it('never settles when it is not stable, and says so', () => {
    expect(settledPath({ turning: -0.01, damping: 0.01, lift: 0.001 }, { angle: 0.02 })).toBeNull();
    expect(settledPath({ turning: 0.04, damping: 0, lift: 0 }, { angle: 0.02 })).toBeNull();
    const grown = noseAt({ turning: -0.01, damping: 0.001, lift: 0.001 }, { angle: 0.02 }, 40);
    expect(grown.angle).toBeGreaterThan(0.02);
  });

  it('is one smooth function over the places where its formula changes', () => {
    // Around no turning back at all, around critical damping, and around the end of the series.
    for (const [turning, damping] of [
      [0, 0.02],
      [1e-12, 0.02],
      [0.01, 0.2],
      [0.01, 0.2000001],
      [0.04, 0.02],
    ] as const)
      for (const s of [2.4999, 2.5001, 12.4999, 12.5001, 24.9999, 25.0001, 80]) {
        const one = { turning, damping, lift: 0.004 };
        const [before, after] = [
          noseAt(one, { angle: 0.02, rate: 0.001 }, s - 1e-7),
          noseAt(one, { angle: 0.02, rate: 0.001 }, s),
        ];
        expectNear(after.angle, before.angle, 1e-5, 1e-9);
        expectNear(after.aside, before.aside, 1e-5, 1e-9);
      }
  });

  it('is refused for what is no figure', () => {
    expect(() => noseAt({ turning: NaN, damping: 0, lift: 0 }, { angle: 0.01 }, 10)).toThrow(RangeError);
    expect(() => noseAt({ turning: 0.1, damping: 0, lift: 0 }, { angle: 0.01 }, -1)).toThrow(RangeError);
    expect(() => noseAt({ turning: -1e6, damping: 0, lift: 0 }, { angle: 0.01 }, 1000)).toThrow(RangeError);
  });
});

describe('the rates', () => {
  const arrow = { mass: 0.02, inertia: 0.0011, balance: 0.42, diameter: 0.0058 };
  const body = [{ slope: 3, at: 0.36, over: 0.72 }];
  const vanes = { slope: 12, at: 0.05 };

  it('of an arrow without vanes have no damping and no turning back from vanes', () => {
    const bare = yawRates(arrow, 1.22, body);
    const none = yawRates(arrow, 1.22, [...body, { ...vanes, slope: 0 }]);
    expect(none).toEqual(bare);
    const fletched = yawRates(arrow, 1.22, [...body, vanes]);
    expect(fletched.damping).toBeGreaterThan(bare.damping);
    expect(fletched.turning).toBeGreaterThan(bare.turning);
    expect(yawRates(arrow, 1.22, [])).toEqual({ turning: 0, damping: 0, lift: 0 });
  });

  it('are in proportion to the air, and turn the nose away from lift ahead of the balance point', () => {
    const [thick, thin] = [yawRates(arrow, 1.2, [...body, vanes]), yawRates(arrow, 0.9, [...body, vanes])];
    expectNear(thick.turning / thin.turning, 1.2 / 0.9);
    expectNear(thick.lift / thin.lift, 1.2 / 0.9);
    expect(yawRates(arrow, 1.22, [{ slope: 2, at: 0.7 }]).turning).toBeLessThan(0);
  });

  it('of lift that is spread along a length are those of many small pieces of it', () => {
    const pieces = Array.from({ length: 4000 }, (_, i) => ({ slope: 3 / 4000, at: ((i + 0.5) * 0.72) / 4000 }));
    const [spread, cut] = [yawRates(arrow, 1.22, body), yawRates(arrow, 1.22, pieces)];
    expectNear(spread.damping, cut.damping, 1e-6);
    expectNear(spread.turning, cut.turning, 1e-6);
  });
});

describe('the lift of vanes', () => {
  const vane: Vanes = { count: 3, height: 0.009, rootChord: 0.045, tipChord: 0.015, sweep: 0.02, diameter: 0.0058 };

  it('is none of no vanes or of vanes without height, and grows with number and height', () => {
    expect(vaneLift({ ...vane, count: 0 })).toBe(0);
    expect(vaneLift({ ...vane, height: 0 })).toBe(0);
    fc.assert(
      fc.property(inside(0.002, 0.02), inside(1.01, 2), (height, more) => {
        expect(vaneLift({ ...vane, height: height * more })).toBeGreaterThan(vaneLift({ ...vane, height }));
        expectNear(vaneLift({ ...vane, height, count: 4 }) / vaneLift({ ...vane, height }), 4 / 3);
      }),
    );
  });

  it('is the same for vane and shaft made larger alike', () => {
    fc.assert(
      fc.property(inside(0.1, 10), (scale) => {
        const larger = {
          ...vane,
          height: vane.height * scale,
          rootChord: vane.rootChord * scale,
          tipChord: vane.tipChord * scale,
          sweep: vane.sweep * scale,
          diameter: vane.diameter * scale,
        };
        expectNear(vaneLift(larger), vaneLift(vane));
        expectNear(vaneCentre(larger), vaneCentre(vane) * scale);
      }),
    );
  });

  it('acts within the vane, and is refused for a shaft of no size', () => {
    expect(vaneCentre(vane)).toBeGreaterThan(0);
    expect(vaneCentre(vane)).toBeLessThan(vane.sweep + vane.rootChord);
    expect(() => vaneLift({ ...vane, diameter: 0 })).toThrow(RangeError);
    expect(() => vaneLift({ ...vane, height: NaN })).toThrow(RangeError);
  });
});
