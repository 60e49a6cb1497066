import { describe, expect, it } from 'vitest';
import { runStroke } from '../../core/bow/index.ts';
import { randomBows, strokeByOdex } from './strokeByOdex.ts';

// Source: odex 2.0.4, a port of Hairer and Wanner's extrapolation code ODEX, at a tolerance of 1e-11.
describe('the stroke beside a general-purpose library', () => {
  it('leaves 60 random bows at the same time, place and speed, to a few parts in ten million', () => {
    let compared = 0;
    const worst = { time: 0, u: 0, speed: 0 };
    for (const bow of randomBows(60, 20260701)) {
      const run = runStroke(bow);
      if (!run.ok) continue;
      const left = strokeByOdex(bow, 1e-11);
      const { time, u, speed } = run.value.exit;
      compared++;
      worst.time = Math.max(worst.time, Math.abs(time - left.time));
      worst.u = Math.max(worst.u, Math.abs(u - left.u));
      worst.speed = Math.max(worst.speed, Math.abs(speed / left.speed - 1));
    }
    expect(compared).toBeGreaterThan(55);
    expect(worst.time).toBeLessThan(1e-8);
    expect(worst.u).toBeLessThan(1e-6);
    expect(worst.speed).toBeLessThan(1e-6);
    expect(worst.speed).toBeGreaterThan(0);
  });

  it('has a reference that is itself settled: a tolerance a hundred times looser moves it less than that', () => {
    for (const bow of randomBows(10, 7)) {
      const [tight, loose] = [strokeByOdex(bow, 1e-11), strokeByOdex(bow, 1e-9)];
      expect(Math.abs(tight.time - loose.time)).toBeLessThan(1e-8);
      expect(Math.abs(tight.speed / loose.speed - 1)).toBeLessThan(1e-7);
    }
  });
});
