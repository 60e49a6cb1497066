import { describe, expect, it } from 'vitest';
import { launchElevation, trajectory } from '../../core/flight/index.ts';
import { flightByOdex, randomShots, seeded, steepShots } from './flightByOdex.ts';

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

  it('agrees on 300 steep shots up and down hill in a gale, where each crosses 90 m, within 0.1 mm', () => {
    let [worst, worstTime, got] = [0, 0, 0];
    for (const shot of steepShots(300, 20260603)) {
      const point = trajectory({ ...shot, until: { x: 90 } }).at(90);
      // A steep shot against a gale may never get there; then there is nothing to hold beside the other.
      if (point === null) continue;
      got += 1;
      const reference = flightByOdex(shot, [90], 1e-12)[0]!;
      worst = Math.max(worst, Math.hypot(point.y - reference.y, point.z - reference.z));
      worstTime = Math.max(worstTime, Math.abs(point.t - reference.t));
    }
    expect(got).toBeGreaterThan(250);
    expect(worst).toBeGreaterThan(0);
    expect(worst).toBeLessThan(1e-4);
    expect(worstTime).toBeLessThan(1e-6);
  });

  it('passes within 0.1 mm of 200 targets up and down slopes, flown by the library with the angle that was found', () => {
    const next = seeded(20260604);
    const between = (low: number, high: number) => low + (high - low) * next();
    let worst = 0;
    for (let shot = 0; shot < 200; shot++) {
      const [speed, k, far, slope] = [between(45, 80), between(0.0005, 0.004), between(10, 90), between(-1, 1)];
      const [x, y] = [far * Math.cos(slope), far * Math.sin(slope)];
      const wind = { x: between(-6, 6), y: between(-1, 1), z: 0 };
      const found = launchElevation({ speed, k, x, y, wind });
      if (!found.ok) throw new Error(found.problem.sentence);
      const reference = flightByOdex({ speed, k, elevation: found.value, wind }, [x], 1e-12)[0]!;
      worst = Math.max(worst, Math.abs(reference.y - y));
    }
    expect(worst).toBeGreaterThan(0);
    expect(worst).toBeLessThan(1e-4);
  });

  it('has a reference that is itself settled: a tolerance a hundred times looser moves it by less than 0.0001 mm', () => {
    for (const shot of randomShots(20, 7)) {
      const [tight, loose] = [flightByOdex(shot, [90], 1e-12)[0]!, flightByOdex(shot, [90], 1e-10)[0]!];
      expect(Math.hypot(tight.y - loose.y, tight.z - loose.z)).toBeLessThan(1e-7);
    }
  });
});
