import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import { landing } from '../../core/aim/index.ts';
import { solveShot } from '../../core/flight/index.ts';
import { seeded } from './flightByOdex.ts';

interface Vector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * Where an arrow is after a time in a steady wind, by an exact change of frame: seen from the air it flies as in still air, with the wind taken
 * from its launch speed; then the air has moved by wind times time. So neither the method nor the treatment of the wind is ours.
 */
function afterTime(start: Vector, launch: Vector, k: number, wind: Vector, time: number): Vector {
  const rates = (_t: number, [, , , vx, vy, vz]: number[]): number[] => {
    const drag = k * Math.hypot(vx!, vy!, vz!);
    return [vx!, vy!, vz!, -drag * vx!, -drag * vy! - 9.80665, -drag * vz!];
  };
  const solver = new Solver(6);
  solver.absoluteTolerance = 1e-11;
  solver.relativeTolerance = 1e-11;
  const through = [start.x, start.y, start.z, launch.x - wind.x, launch.y - wind.y, launch.z - wind.z];
  const [x = NaN, y = NaN, z = NaN] = solver.solve(rates, 0, through, time).y;
  return { x: x + wind.x * time, y: y + wind.y * time, z: z + wind.z * time };
}

function conditionsOf(seed: number, count: number) {
  const next = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  return Array.from({ length: count }, () => ({
    speed: between(45, 75),
    k: between(0.0005, 0.004),
    distance: between(10, 80),
    slope: between(-0.8, 0.8),
    eyeHeight: between(0, 0.16),
    wind: { x: between(-10, 10), y: between(-2, 2), z: between(-10, 10) },
  }));
}

// Source: odex 2.0.4, a port of Hairer and Wanner's extrapolation code ODEX, at a tolerance of 1e-11.
describe('a shot solved in three dimensions beside a general-purpose library', () => {
  it('strikes its place on 150 random slopes and winds within 0.001 mm', () => {
    const shots = conditionsOf(20260815, 150);
    expect(shots).toHaveLength(150);
    let worst = 0;
    for (const shot of shots) {
      const found = solveShot(shot);
      if (!found.ok) throw new Error(found.problem.sentence);
      const { elevation, windage, time } = found.value;
      const [up, along] = [Math.sin(elevation), Math.cos(elevation)];
      const start = {
        x: shot.eyeHeight * up * Math.cos(windage),
        y: -shot.eyeHeight * along,
        z: shot.eyeHeight * up * Math.sin(windage),
      };
      const launch = {
        x: shot.speed * along * Math.cos(windage),
        y: shot.speed * up,
        z: shot.speed * along * Math.sin(windage),
      };
      const there = afterTime(start, launch, shot.k, shot.wind, time);
      const [x, y] = [shot.distance * Math.cos(shot.slope), shot.distance * Math.sin(shot.slope)];
      worst = Math.max(worst, Math.hypot(there.x - x, there.y - y, there.z));
    }
    expect(worst).toBeGreaterThan(0);
    expect(worst).toBeLessThan(1e-6);
  });
});

describe('a landing beside a general-purpose library', () => {
  /** The angle of the sight: launch angle over the horizontal for a level distance, found by halving on the library's own flights. */
  function sightBy(speed: number, k: number, eyeHeight: number, distance: number): number {
    const still = { x: 0, y: 0, z: 0 };
    let [low, high] = [0, 0.5];
    for (let turn = 0; turn < 45; turn++) {
      const theta = (low + high) / 2;
      const [up, along] = [Math.sin(theta), Math.cos(theta)];
      const start = { x: eyeHeight * up, y: -eyeHeight * along, z: 0 };
      const at = (time: number) => afterTime(start, { x: speed * along, y: speed * up, z: 0 }, k, still, time);
      if (at(timeTo((time) => at(time).x - distance)).y < 0) low = theta;
      else high = theta;
    }
    return (low + high) / 2;
  }

  /** When something that grows with time passes nought, by halving. */
  function timeTo(off: (time: number) => number): number {
    let [low, high] = [0, 6];
    for (let turn = 0; turn < 45; turn++) {
      const time = (low + high) / 2;
      if (off(time) < 0) low = time;
      else high = time;
    }
    return (low + high) / 2;
  }

  it('lies where the library has it, for a wrong distance on a slope in a wind, within 0.01 mm', () => {
    const shots = conditionsOf(4, 8);
    expect(shots).toHaveLength(8);
    for (const { speed, k, distance, slope, eyeHeight, wind } of shots) {
      const setFor = 0.9 * distance;
      const found = landing({ value: { speed, k, eyeHeight }, corners: [] }, { setFor, distance, slope, wind });
      if (!found.ok) throw new Error(found.problem.sentence);
      const theta = slope + sightBy(speed, k, eyeHeight, setFor);
      const [up, along] = [Math.sin(theta), Math.cos(theta)];
      const start = { x: eyeHeight * up, y: -eyeHeight * along, z: 0 };
      const [x, y] = [distance * Math.cos(slope), distance * Math.sin(slope)];
      const at = (time: number) => afterTime(start, { x: speed * along, y: speed * up, z: 0 }, k, wind, time);
      const time = timeTo((t) => (at(t).x - x) * Math.cos(slope) + (at(t).y - y) * Math.sin(slope));
      const there = at(time);
      const over = (there.y - y) * Math.cos(slope) - (there.x - x) * Math.sin(slope);
      expect(Math.abs(found.value.across.value - there.z)).toBeLessThan(1e-5);
      expect(Math.abs(found.value.up.value - over)).toBeLessThan(1e-5);
      expect(found.value.time.value).toBeCloseTo(time, 6);
    }
  });
});
