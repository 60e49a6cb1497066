import { describe, expect, it } from 'vitest';
import { trajectory } from '../../core/flight/index.ts';
import { flightByOdex, randomShots } from './flightByOdex.ts';

// Source: odex 2.0.4, a port of Hairer and Wanner's extrapolation code ODEX, at a tolerance of 1e-12.
describe('the trajectory beside a general-purpose library', () => {
  it('agrees on 300 random shots in wind, every 7.5 m out to 90 m, within 0.001 mm', () => {
    const distances = Array.from({ length: 12 }, (_, index) => 7.5 * (index + 1));
    const shots = randomShots(300, 20260502);
    expect(shots).toHaveLength(300);
    let [worst, worstTime] = [0, 0];
    for (const shot of shots) {
      const flight = trajectory({ ...shot, until: { x: 90 } });
      flightByOdex(shot, distances, 1e-12).forEach((reference, index) => {
        const point = flight.at(distances[index]!)!;
        worst = Math.max(worst, Math.hypot(point.y - reference.y, point.z - reference.z));
        worstTime = Math.max(worstTime, Math.abs(point.t - reference.t));
      });
    }
    expect(worst).toBeGreaterThan(0);
    expect(worst).toBeLessThan(1e-6);
    expect(worstTime).toBeLessThan(1e-7);
  });

  it('has a reference that is itself settled: a tolerance a hundred times looser moves it by less than 0.0001 mm', () => {
    for (const shot of randomShots(20, 7)) {
      const [tight, loose] = [flightByOdex(shot, [90], 1e-12)[0]!, flightByOdex(shot, [90], 1e-10)[0]!];
      expect(Math.hypot(tight.y - loose.y, tight.z - loose.z)).toBeLessThan(1e-7);
    }
  });
});
