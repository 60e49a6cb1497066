import { describe, expect, it } from 'vitest';
import {
  flatFireTime,
  integrate,
  readDense,
  speedAfter,
  trajectory,
  vacuumRange,
  verticalHeight,
} from '../../core/flight/index.ts';

const degrees = Math.PI / 180;

describe('the trajectory beside the closed forms of any textbook on mechanics', () => {
  it.each([
    [30, 10],
    [60, 45],
    [90, 80],
  ])('without air, at %i m/s and %i°, carries v₀² sin 2θ / g', (speed, angle) => {
    const flight = trajectory({ speed, elevation: angle * degrees, k: 0, until: { y: 0 } });
    const range = (speed ** 2 * Math.sin(2 * angle * degrees)) / 9.80665;
    expect(Math.abs(flight.downTo(0)!.x - range)).toBeLessThan(1e-6);
    expect(Math.abs(vacuumRange(speed, angle * degrees) - range)).toBeLessThan(1e-9);
  });

  it.each([
    [40, 0.001],
    [60, 0.003],
  ])('straight up at %i m/s with k = %f rises to ln(1 + k v₀²/g) / 2k', (speed, k) => {
    const height = Math.log(1 + (k * speed ** 2) / 9.80665) / (2 * k);
    expect(Math.abs(trajectory({ speed, elevation: Math.PI / 2, k, until: { y: 0 } }).apex().y - height)).toBeLessThan(1e-6);
    expect(Math.abs(verticalHeight(speed, k) - height)).toBeLessThan(1e-9);
  });

  it('without gravity slows to v₀ e^(−k s) and takes (e^(k s) − 1)/(k v₀)', () => {
    const [speed, k] = [60, 0.002];
    const glide = integrate(
      {
        size: 2,
        rate: (_t, s, out) => {
          out[0] = s[1]!;
          out[1] = -k * s[1]! ** 2;
        },
      },
      [0, speed],
      { absoluteTolerance: 1e-10, relativeTolerance: 1e-10, firstStep: 0.1, lastTime: 1.5 },
    );
    const [path, left] = [readDense(glide, glide.steps - 1, 0, 1), readDense(glide, glide.steps - 1, 1, 1)];
    expect(Math.abs(speedAfter(speed, k, path) - left)).toBeLessThan(1e-7);
    expect(Math.abs(flatFireTime(speed, k, path) - 1.5)).toBeLessThan(1e-8);
  });

  it('flies flat over 18 m in the time of flat fire', () => {
    expect(trajectory({ speed: 57, elevation: 0.03, k: 0.002, until: { x: 18 } }).at(18)!.t).toBeCloseTo(
      flatFireTime(57 * Math.cos(0.03), 0.002, 18),
      5,
    );
  });
});

// Computed independently at high precision, for v₀ 60 m/s and k 0.001 per metre.
describe('the trajectory beside figures computed independently', () => {
  it('carries 288.36967384 m in 8.07699550 s at 45°', () => {
    const landing = trajectory({ speed: 60, elevation: 45 * degrees, k: 1e-3, until: { y: 0 } }).downTo(0)!;
    expect(Math.abs(landing.x - 288.36967384)).toBeLessThan(1e-6);
    expect(Math.abs(landing.t - 8.0769955)).toBeLessThan(1e-7);
  });

  it('passes 70 m after 1.215207412 s, 0.282600702 m up, at 6°', () => {
    const point = trajectory({ speed: 60, elevation: 6 * degrees, k: 1e-3, until: { x: 70 } }).at(70)!;
    expect(Math.abs(point.t - 1.215207412)).toBeLessThan(1e-8);
    expect(Math.abs(point.y - 0.282600702)).toBeLessThan(1e-7);
  });

  it('is carried 0.168843259 m to the right by 4 m/s from the left', () => {
    const point = trajectory({ speed: 60, elevation: 6 * degrees, k: 1e-3, wind: { x: 0, y: 0, z: 4 }, until: { x: 70 } }).at(
      70,
    )!;
    expect(Math.abs(point.z - 0.168843259)).toBeLessThan(1e-7);
  });
});
