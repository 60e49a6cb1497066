import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import { noseAt, settledPath, type NoseStart, type YawRates } from '../../core/flight/index.ts';
import { seeded } from './flightByOdex.ts';

/** θ, θ′, ψ and z against the distance, as they are written before anything is eliminated. */
function byOdex({ turning, damping, lift }: YawRates, { angle, rate = 0 }: NoseStart, distance: number) {
  const solver = new Solver(4);
  solver.absoluteTolerance = 1e-13;
  solver.relativeTolerance = 1e-13;
  const rates = (_s: number, [nose = 0, turn = 0, path = 0]: number[]) => {
    const attack = nose - path;
    return [turn, -damping * turn - turning * attack, lift * attack, path];
  };
  const [nose = 0, , path = 0, aside = 0] = solver.solve(rates, 0, [angle, rate, 0, 0], distance).y;
  return { angle: nose - path, path, aside };
}

// Source: odex 2.0.4, a port of Hairer and Wanner's extrapolation code ODEX, at a tolerance of 1e-13.
describe('the nose in flight beside a general-purpose library', () => {
  it('agrees on 300 random arrows, stable and not, out to 90 m: angles to 1e-9 rad and places to 0.0001 mm', () => {
    const next = seeded(20260601);
    const between = (low: number, high: number) => low + (high - low) * next();
    let [worstAngle, worstPlace, unstable] = [0, 0, 0];
    for (let shot = 0; shot < 300; shot++) {
      const rates = { turning: between(-0.002, 0.3), damping: between(0, 0.06), lift: between(0, 0.03) };
      if (rates.turning < 0) unstable += 1;
      const start = { angle: between(-0.05, 0.05), rate: between(-0.01, 0.01) };
      const distance = between(1, 90);
      const [ours, reference] = [noseAt(rates, start, distance), byOdex(rates, start, distance)];
      worstAngle = Math.max(worstAngle, Math.abs(ours.angle - reference.angle), Math.abs(ours.path - reference.path));
      worstPlace = Math.max(worstPlace, Math.abs(ours.aside - reference.aside));
    }
    expect(unstable).toBeGreaterThan(0);
    expect(worstAngle).toBeGreaterThan(0);
    expect(worstAngle).toBeLessThan(1e-9);
    expect(worstPlace).toBeLessThan(1e-7);
  });

  it('agrees where nothing turns the nose back, where it is damped to death, and where it just does not swing', () => {
    for (const [turning, damping, lift] of [
      [0, 0.02, 0.004],
      [1e-9, 0.5, 0.004],
      [0.0025, 0.1, 0],
      [-0.004, 0.01, 0.01],
      [0.05, 1.5, 0.01],
    ] as const)
      for (const distance of [3, 18, 70]) {
        const [rates, start] = [
          { turning, damping, lift },
          { angle: 0.017, rate: -0.002 },
        ];
        const [ours, reference] = [noseAt(rates, start, distance), byOdex(rates, start, distance)];
        for (const key of ['angle', 'path', 'aside'] as const)
          expect(Math.abs(ours[key] - reference[key]), `${turning} ${damping} ${distance} ${key}`).toBeLessThan(
            1e-9 * Math.max(1, Math.abs(reference[key])),
          );
      }
  });

  it('settles where the library has it after 2 km of a wind tunnel that never ends', () => {
    const next = seeded(7);
    const between = (low: number, high: number) => low + (high - low) * next();
    for (let shot = 0; shot < 20; shot++) {
      const rates = { turning: between(0.01, 0.2), damping: between(0.02, 0.06), lift: between(0.002, 0.02) };
      const start = { angle: between(-0.05, 0.05), rate: between(-0.01, 0.01) };
      expect(Math.abs((settledPath(rates, start) ?? NaN) - byOdex(rates, start, 2000).path)).toBeLessThan(1e-9);
    }
  });
});
