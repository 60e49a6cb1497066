import { describe, expect, it } from 'vitest';
import { sightDrop } from '../../core/aim/index.ts';
import { dragParameter } from '../../core/flight/index.ts';

const launch = { speed: 57, k: dragParameter(1.5, 0.0055, 0.02, 1.225), eyeHeight: 0.12 };
const sightRadius = 0.85;
const mark = (distance: number, who = launch) => {
  const drop = sightDrop(who, sightRadius, distance);
  if (!drop.ok) throw new Error(drop.problem.sentence);
  return drop.value;
};

describe('the sight pin below the eye line', () => {
  // Computed independently: 57 m/s, eye 0.12 m above the arrow, sight radius 0.85 m, 20 g, 5.5 mm, C_D 1.5 in air of 1.225 kg/m³.
  it.each([
    [18, 29.083],
    [30, 42.827],
    [50, 69.001],
    [70, 97.229],
  ])('at %i m is %f mm', (distance, millimetres) => {
    expect(Math.abs(1000 * mark(distance) - millimetres)).toBeLessThan(6e-4);
  });

  // First order, own derivation: tan δ ≈ e/x + g x/(2 v²), which only misses drag and the square of the angle.
  it.each([18, 30, 50])('at %i m without drag is r (e/x + g x / 2v²) within 1 %%', (distance) => {
    const firstOrder = sightRadius * (0.12 / distance + (9.80665 * distance) / (2 * 57 ** 2));
    expect(Math.abs(mark(distance, { ...launch, k: 0 }) / firstOrder - 1)).toBeLessThan(0.01);
  });

  it('stands lower for a farther target once past the shortest distances (common practice)', () => {
    const marks = [10, 18, 30, 50, 70, 90].map((distance) => mark(distance));
    expect(marks).toEqual([...marks].sort((a, b) => a - b));
  });
});
