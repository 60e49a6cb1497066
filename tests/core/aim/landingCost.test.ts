import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { landingCost } from '../../../core/aim/index.ts';
import { face, type Point } from '../../../core/group/index.ts';
import { inside } from '../inside.ts';

/** A shaft of 6 mm counts the line that it touches. */
const SHAFT = 0.003;

/** Rings of a ten-ring face by the rule book: zone n out to D (11 − n)/20. */
const ringsOf = (diameter: number, lowest: number) =>
  Array.from({ length: 11 - lowest }, (_, i) => ({ points: lowest + i, radius: (diameter * (11 - lowest - i)) / 20 }));

const scoreOf = (radius: number, rings: ReturnType<typeof ringsOf>): number =>
  rings.reduce((best, ring) => (radius - SHAFT <= ring.radius ? ring.points : best), 0);

const alone = (value: Point) => ({ value, corners: [] });

/** I₀(z) e^(−z) by its integral (1/π) ∫ e^(z (cos t − 1)) dt, from 0 to π (any handbook of functions). */
function besselScaled(z: number): number {
  const steps = 400;
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += Math.exp(z * (Math.cos((Math.PI * (i + 0.5)) / steps) - 1));
  return sum / steps;
}

/** Expected score by Rice's law of the distance from the middle, r/σ² exp(−(r² + d²)/2σ²) I₀(r d/σ²), summed over fine rings. */
function byRice(sigma: number, off: number, rings: ReturnType<typeof ringsOf>): number {
  const steps = 6000;
  const farthest = off + 9 * sigma;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const r = (farthest * (i + 0.5)) / steps;
    const density = (r / sigma ** 2) * Math.exp(-((r - off) ** 2) / (2 * sigma ** 2)) * besselScaled((r * off) / sigma ** 2);
    sum += scoreOf(r, rings) * density * (farthest / steps);
  }
  return sum;
}

describe('what an arrow scores with its group on the middle', () => {
  it('is Rayleigh’s closed form, Σ (step of points)(1 − exp(−r²/2σ²))', () => {
    const rings = ringsOf(0.8, 1);
    for (const sigma of [0.03, 0.08, 0.15, 0.3]) {
      const closed = rings.reduce((sum, { radius }) => sum + 1 - Math.exp(-((radius + SHAFT) ** 2) / (2 * sigma ** 2)), 0);
      const { atMiddle } = landingCost(alone({ x: 0.1, y: 0.2 }), [sigma, sigma], SHAFT, face('80'));
      expect(atMiddle.points).toBeCloseTo(closed, 9);
    }
  });
});

describe('what it scores where the group lands', () => {
  it('is what Rice’s law gives, by summing over fine rings (computed independently)', () => {
    for (const [id, diameter, lowest] of [
      ['122', 1.22, 1],
      ['80-six', 0.8, 5],
    ] as const)
      for (const off of [0.05, 0.3, 0.6])
        for (const sigma of [0.06, 0.15]) {
          const { there } = landingCost(alone({ x: 0.6 * off, y: -0.8 * off }), [sigma, sigma], SHAFT, face(id));
          expect(there.points).toBeCloseTo(byRice(sigma, off, ringsOf(diameter, lowest)), 2);
        }
  });

  it('of arrows that a guessed distance spreads up and down is what the exact sum over upright strips gives (computed independently, by the normal law’s integral)', () => {
    // Σ ∫ density of x (Φ(top) − Φ(bottom)) dx over the ten circles, with 20,000 strips each, in another language.
    const { there } = landingCost(alone({ x: 0.05, y: 0.12 }), [0.09, 0.2], SHAFT, face('80'));
    expect(there.points).toBeCloseTo(5.244684922819, 9);
  });

  it('falls the farther off it lands, down to nought and a certain miss', () => {
    fc.assert(
      fc.property(inside(0.02, 0.3), inside(0, 1), inside(0.001, 0.5), (sigma, off, more) => {
        const cost = (y: number) => landingCost(alone({ x: 0, y: -y }), [sigma, sigma], SHAFT, face('122')).there;
        expect(cost(off + more).points).toBeLessThanOrEqual(cost(off).points + 1e-9);
        expect(cost(off + more).missChance).toBeGreaterThanOrEqual(cost(off).missChance - 1e-9);
      }),
    );
    const lost = landingCost(alone({ x: 0, y: -9 }), [0.1, 0.1], SHAFT, face('122')).there;
    expect(lost.points).toBe(0);
    expect(lost.missChance).toBe(1);
  });

  it('carries the band of where it may land', () => {
    const place = {
      value: { x: 0, y: -0.3 },
      corners: [
        { x: 0, y: -0.25 },
        { x: 0, y: -0.35 },
      ],
    };
    const { points, there } = landingCost(place, [0.1, 0.1], SHAFT, face('122'));
    expect(points.value).toBe(there.points);
    expect(points.low).toBeLessThan(points.value);
    expect(points.high).toBeGreaterThan(points.value);
  });
});
