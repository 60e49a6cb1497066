import { Solver } from 'odex';
import type { Shot, Wind } from '../../core/flight/index.ts';

/** A seeded stream of numbers from 0 to 1 (linear congruence with the constants of Numerical Recipes): the same shots on every machine. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32;
}

export interface WindyShot extends Omit<Shot, 'until' | 'wind'> {
  readonly wind: Wind;
}

/** Target shots as they come on a range, and well past it: 30 to 80 m/s, 5° down to 20° up, any wind up to 6 m/s on each axis. */
export function randomShots(count: number, seed: number): WindyShot[] {
  const next = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  return Array.from({ length: count }, () => ({
    speed: between(30, 80),
    elevation: between(-0.09, 0.35),
    k: between(0.0005, 0.004),
    wind: { x: between(-6, 6), y: between(-2, 2), z: between(-6, 6) },
  }));
}

/** Shots that no range has but a hill may: 45 to 80 m/s, from 60° down to 60° up, in any wind up to 12 m/s on each axis. */
export function steepShots(count: number, seed: number): WindyShot[] {
  const next = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  return Array.from({ length: count }, () => ({
    speed: between(45, 80),
    elevation: between(-1.05, 1.05),
    k: between(0.0005, 0.004),
    wind: { x: between(-12, 12), y: between(-3, 3), z: between(-12, 12) },
  }));
}

/**
 * The same flight by a general-purpose library (extrapolation after Gragg, Bulirsch and Stoer), written with the distance as the
 * independent variable, so that neither the method nor the formulation is ours: y, z and t at each distance.
 */
export function flightByOdex(
  shot: WindyShot,
  distances: readonly number[],
  tolerance: number,
): { y: number; z: number; t: number }[] {
  const { speed, elevation, k, wind } = shot;
  const rates = (_x: number, [, , , vx, vy, vz]: number[]): number[] => {
    const [ux, uy, uz] = [vx! - wind.x, vy! - wind.y, vz! - wind.z];
    const drag = k * Math.hypot(ux, uy, uz);
    return [1 / vx!, vy! / vx!, vz! / vx!, (-drag * ux) / vx!, (-drag * uy - 9.80665) / vx!, (-drag * uz) / vx!];
  };
  const solver = new Solver(6);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  let x = 0;
  let state = [0, 0, 0, speed * Math.cos(elevation), speed * Math.sin(elevation), 0];
  return distances.map((distance) => {
    state = solver.solve(rates, x, state, distance).y;
    x = distance;
    return { t: state[0]!, y: state[1]!, z: state[2]! };
  });
}
