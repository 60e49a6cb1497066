import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allowance,
  cosineGap,
  guessed,
  landing,
  launchBand,
  misjudged,
  slopeShot,
  windCaution,
  windDrift,
  windFrom,
  windSign,
  type Conditions,
  type Corners,
  type Landing,
  type Launch,
} from '../../../core/aim/index.ts';
import { standardGravity } from '../../../core/flight/index.ts';
import { inside } from '../inside.ts';

const rad = Math.PI / 180;
const alone = (launch: Launch): Corners<Launch> => ({ value: launch, corners: [] });
const plain: Conditions = { setFor: 50, distance: 50, slope: 0, wind: { x: 0, y: 0, z: 0 } };
const launches = fc.record({ speed: inside(40, 75), k: inside(0, 0.004), eyeHeight: inside(0, 0.16) });

function landed(launch: Launch, conditions: Partial<Conditions>): Landing {
  const found = landing(alone(launch), { ...plain, ...conditions });
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
}

describe('where a group lands', () => {
  it('is the middle when nothing is wrong, wherever the middle stands', () => {
    fc.assert(
      fc.property(launches, inside(10, 70), inside(-1, 1), (launch, distance, targetDrop) => {
        const { across, up } = landed({ ...launch, targetDrop }, { setFor: distance, distance });
        expect(across.value).toBe(0);
        expect(Math.abs(up.value)).toBeLessThan(1e-6);
      }),
    );
  });

  it('without air is where the tilted parabola has it: along the sight v cos δ t − ½ g sin φ t², across it v sin δ t − ½ g cos φ t² (any mechanics textbook)', () => {
    const v = 50;
    for (const slope of [-60, -30, 0, 20, 45])
      for (const setFor of [40, 50, 60]) {
        const delta = Math.asin((standardGravity * setFor) / v ** 2) / 2;
        const [along, square] = [standardGravity * Math.sin(slope * rad), standardGravity * Math.cos(slope * rad)];
        const forward = v * Math.cos(delta);
        // The earlier root of ½ a t² − b t + S = 0, in the form that holds for a of nought too.
        const time = (2 * 50) / (forward + Math.sqrt(forward ** 2 - 2 * along * 50));
        const { up, time: taken } = landed({ speed: v, k: 0, eyeHeight: 0 }, { setFor, slope: slope * rad });
        expect(up.value).toBeCloseTo(v * Math.sin(delta) * time - (square * time ** 2) / 2, 6);
        expect(taken.value).toBeCloseTo(time, 7);
      }
  });

  it('is where the misjudged distance alone, or the wind alone, has it', () => {
    fc.assert(
      fc.property(launches, inside(0.8, 1.2), inside(-8, 8), inside(-8, 8), (launch, share, x, z) => {
        const off = misjudged(launch, share * 50, 50);
        expect(off.ok && off.value).toBeCloseTo(landed(launch, { setFor: share * 50 }).up.value, 6);
        const wind = { x, y: 0, z };
        const drift = windDrift(launch, 50, wind);
        const { across, up } = landed(launch, { wind });
        expect(drift.ok && drift.value.across).toBeCloseTo(across.value, 6);
        expect(drift.ok && drift.value.up).toBeCloseTo(up.value, 6);
      }),
    );
  });

  it('on a slope is the middle again once the sight is set for what the full solution says', () => {
    fc.assert(
      fc.property(launches, inside(15, 60), inside(-0.8, 0.8), (launch, distance, slope) => {
        const shot = slopeShot(launch, distance, slope);
        if (!shot.ok || shot.value.setFor === null) return;
        expect(Math.abs(landed(launch, { setFor: shot.value.setFor, distance, slope }).up.value)).toBeLessThan(2e-6);
      }),
    );
  });

  it('is high up a slope and down it, to the left in a wind from the right, low against a wind and for a target that is farther than believed', () => {
    // Common practice, all of it.
    const launch: Launch = { speed: 55, k: 0.002, eyeHeight: 0.11, targetDrop: 0.3 };
    for (const slope of [-25 * rad, 25 * rad]) expect(landed(launch, { slope }).up.value).toBeGreaterThan(0.1);
    expect(landed(launch, { wind: windFrom(4, Math.PI / 2) }).across.value).toBeLessThan(-0.05);
    expect(landed(launch, { wind: windFrom(4, 0) }).up.value).toBeLessThan(0);
    expect(landed(launch, { wind: windFrom(4, Math.PI) }).up.value).toBeGreaterThan(0);
    expect(landed(launch, { setFor: 45 }).up.value).toBeLessThan(-0.2);
    expect(landed(launch, { setFor: 55 }).up.value).toBeGreaterThan(0.2);
  });

  it('carries the band of speed and drag, which closes on the middle when nothing is wrong', () => {
    const band = launchBand({ value: 55, low: 53, high: 57 }, { value: 0.002, low: 0.001, high: 0.003 }, 0.11, 0.3);
    const right = landing(band, plain);
    const wrong = landing(band, { ...plain, setFor: 45, wind: windFrom(5, 1) });
    if (!right.ok || !wrong.ok) throw new Error('a landing was expected');
    expect(right.value.up.high - right.value.up.low).toBeLessThan(1e-6);
    expect(wrong.value.up.low).toBeLessThan(wrong.value.up.value);
    expect(wrong.value.up.value).toBeLessThan(wrong.value.up.high);
    expect(wrong.value.across.low).toBeLessThan(wrong.value.across.value);
    expect(wrong.value.place.corners).toHaveLength(4);
  });
});

describe('a landing that cannot be had', () => {
  const launch: Launch = { speed: 55, k: 0.002, eyeHeight: 0.11 };
  it.each([
    [{ slope: 89 * rad }, 'slope'],
    [{ slope: NaN }, 'slope'],
    [{ wind: { x: 40, y: 0, z: 0 } }, 'wind'],
    [{ wind: { x: 0, y: NaN, z: 0 } }, 'wind'],
    [{ setFor: 900 }, 'out-of-reach'],
    [{ setFor: NaN }, 'not-a-shot'],
    [{ distance: NaN }, 'not-a-shot'],
    [{ distance: 0 }, 'not-a-shot'],
    // With the sight for 10 m it falls a hundred metres down before it has gone 200 m uphill.
    [{ setFor: 10, distance: 200, slope: 55 * rad }, 'out-of-reach'],
  ])('is refused in words for %j: %s', (wrong, code) => {
    expect(landing(alone(launch), { ...plain, ...wrong })).toMatchObject({ ok: false, problem: { code } });
  });
});

describe('a distance that is only guessed', () => {
  const launch: Launch = { speed: 55, k: 0.002, eyeHeight: 0.11, targetDrop: 0.3 };

  it('strikes low by as much as a target that is farther, and high by as much as one that is nearer', () => {
    const found = guessed(alone(launch), 50, 5);
    if (!found.ok) throw new Error(found.problem.sentence);
    expect(found.value.farther.value).toBe(landed(launch, { setFor: 45 }).up.value);
    expect(found.value.nearer.value).toBe(landed(launch, { setFor: 55 }).up.value);
  });

  it('without air spreads as the parabolas of both settings lie apart at the target (any mechanics textbook)', () => {
    const v = 50;
    const height = (setFor: number) => {
      const delta = Math.asin((standardGravity * setFor) / v ** 2) / 2;
      return 50 * Math.tan(delta) - (standardGravity * 50 ** 2) / (2 * v ** 2 * Math.cos(delta) ** 2);
    };
    const found = guessed(alone({ speed: v, k: 0, eyeHeight: 0 }), 50, 4);
    // 1.96 standard deviations hold 95 % of a normal law (any table).
    expect(found.ok && found.value.spread).toBeCloseTo((height(54) - height(46)) / 2 / 1.959964, 6);
  });

  it('grows with how far out the guess may be, and with the distance', () => {
    const spread = (distance: number, within: number) => {
      const found = guessed(alone(launch), distance, within);
      return found.ok ? found.value.spread : NaN;
    };
    expect(spread(50, 0)).toBeCloseTo(0, 7);
    expect(spread(50, 5)).toBeGreaterThan(spread(50, 2));
    expect(spread(60, 5)).toBeGreaterThan(spread(30, 5));
  });

  it('is refused in words when it is as wide as the distance, or no number', () => {
    for (const within of [49, -1, NaN])
      expect(guessed(alone(launch), 50, within)).toMatchObject({
        ok: false,
        problem: { code: 'too-near', field: 'distanceOff' },
      });
  });
});

describe('what the cosine rule leaves out', () => {
  it('without drag and with the eye at the arrow is gravity along the path alone: v² sin 2δ/g − S cos φ, from the closed solution of a slope', () => {
    const [v, s] = [50, 60];
    for (const slope of [-40, -15, 15, 40]) {
      const phi = slope * rad;
      // S = v² (sin(2θ − φ) − sin φ)/(g cos² φ), the other form of the closed solution.
      const theta = (Math.asin((standardGravity * s * Math.cos(phi) ** 2) / v ** 2 + Math.sin(phi)) + phi) / 2;
      const level = (v ** 2 * Math.sin(2 * (theta - phi))) / standardGravity;
      const gap = cosineGap({ speed: v, k: 0, eyeHeight: 0 }, s, phi);
      if (!gap.ok) throw new Error(gap.problem.sentence);
      expect(gap.value.gravity).toBeCloseTo(level - s * Math.cos(phi), 5);
      expect(gap.value.drag).toBeCloseTo(0, 9);
      expect(gap.value.eye).toBeCloseTo(0, 9);
    }
  });

  it('adds up to the difference of the two settings, more uphill and less downhill by gravity', () => {
    fc.assert(
      fc.property(launches, inside(20, 60), inside(0.1, 0.7), fc.boolean(), (launch, distance, steep, up) => {
        const slope = up ? steep : -steep;
        const [gap, shot] = [cosineGap(launch, distance, slope), slopeShot(launch, distance, slope)];
        if (!gap.ok || !shot.ok || shot.value.setFor === null) return;
        const { gravity, drag, eye } = gap.value;
        expect(gravity + drag + eye).toBeCloseTo(shot.value.setFor - shot.value.cosineRule, 9);
        expect(Math.sign(gravity)).toBe(up ? 1 : -1);
      }),
    );
  });

  it('is refused in words on a cliff, and so near that no distance gives the setting', () => {
    const launch: Launch = { speed: 55, k: 0.002, eyeHeight: 0.11 };
    expect(cosineGap(launch, 30, 1.5)).toMatchObject({ ok: false, problem: { code: 'slope' } });
    expect(cosineGap(launch, 3, 0.78)).toMatchObject({ ok: false, problem: { code: 'no-setting' } });
  });
});

describe('a wind', () => {
  it('from 3 o’clock comes from the archer’s right and pushes left, from 6 it comes from behind', () => {
    const [ahead, right, behind, left] = [0, 3, 6, 9].map((hour) => windFrom(5, (hour * Math.PI) / 6));
    expect(ahead).toEqual({ x: -5, y: 0, z: 0 });
    expect(right?.z).toBeCloseTo(-5, 12);
    expect(behind?.x).toBeCloseTo(5, 12);
    expect(left?.z).toBeCloseTo(5, 12);
  });

  it('has the force that v = 0.836 B^1.5 gives it, the rule that Beaufort’s steps were drawn from (WMO, from memory)', () => {
    for (let force = 0; force <= 8; force++) expect(windSign(0.836 * force ** 1.5).force).toBe(force);
  });

  it('is cautioned against from 10 m/s on', () => {
    expect(windCaution(9.9)).toBeNull();
    expect(windCaution(10)).toContain('Better not shot in');
    expect(windCaution(20)).toContain('range officer');
  });
});

describe('what has to be allowed', () => {
  const band = launchBand({ value: 55, low: 53, high: 57 }, { value: 0.002, low: 0.001, high: 0.003 }, 0.11, 0);

  it('for a slope alone is what the full solution sets, and for a wind alone about what the arrow drifts, to the other side', () => {
    fc.assert(
      fc.property(launches, inside(15, 60), inside(-0.6, 0.6), inside(-8, 8), (launch, distance, slope, z) => {
        const hill = allowance(alone(launch), distance, slope, plain.wind);
        const shot = slopeShot(launch, distance, slope);
        if (!hill.ok || !shot.ok || shot.value.setFor === null) return;
        expect(hill.value.setFor?.value).toBeCloseTo(shot.value.setFor, 4);
        expect(hill.value.hold.value).toBe(0);
        const wind = { x: 0, y: 0, z };
        const [held, drift] = [allowance(alone(launch), distance, 0, wind), landed(launch, { setFor: distance, distance, wind })];
        if (!held.ok) throw new Error(held.problem.sentence);
        expect(Math.abs(held.value.hold.value + drift.across.value)).toBeLessThan(0.01 * Math.abs(drift.across.value) + 1e-6);
      }),
    );
  });

  it('for both together brings the arrow to the middle', () => {
    fc.assert(
      fc.property(
        launches,
        inside(15, 60),
        inside(-0.6, 0.6),
        inside(0, 8),
        inside(0, 6.28),
        (launch, distance, slope, w, from) => {
          const wind = windFrom(w, from);
          const found = allowance(alone(launch), distance, slope, wind);
          if (!found.ok || found.value.setFor === null) return;
          const { across, up } = landed(launch, { setFor: found.value.setFor.value, distance, slope, wind });
          // Held beside the middle, the arrow flies turned by the hold over the distance, and the wind blows on it turned by as much:
          // what is left is that angle's share of what the whole wind would do from the side. Half as much again is for what is of the third order.
          const whole = Math.abs(across.value) / Math.max(Math.abs(Math.sin(from)), 1e-9);
          const left = 1.5 * (Math.abs(found.value.hold.value) / distance) * whole;
          expect(Math.abs(across.value + found.value.hold.value)).toBeLessThan(left + 2e-6);
          expect(Math.abs(up.value)).toBeLessThan(left + 1e-5);
        },
      ),
    );
  });

  it('carries the band of speed and drag, gives no setting so near that none is, and passes refusals on', () => {
    const found = allowance(band, 50, 0.3, windFrom(5, 1));
    if (!found.ok || found.value.setFor === null) throw new Error('an allowance was expected');
    expect(found.value.setFor.low).toBeLessThan(found.value.setFor.high);
    expect(found.value.hold.low).toBeLessThan(found.value.hold.high);
    const near = allowance(alone({ speed: 55, k: 0.002, eyeHeight: 0.11 }), 3, 0.78, plain.wind);
    expect(near.ok && near.value.setFor).toBeNull();
    expect(allowance(band, 50, 1.5, plain.wind)).toMatchObject({ ok: false, problem: { code: 'slope' } });
  });
});
