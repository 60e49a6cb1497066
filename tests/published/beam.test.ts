import { describe, expect, it } from 'vitest';
import { bendingFrequency, betaL, stiffnessOf, type BendingMode } from '../../core/arrow/index.ts';

const grain = 6.479891e-5;

describe('bending of a free shaft against the handbooks', () => {
  const modes: readonly BendingMode[] = [1, 2, 3];

  it.each([
    // Blevins, Formulas for Natural Frequency and Mode Shape: free-free beam.
    { ends: 'free at both ends', nock: 0, front: 0, roots: [4.7300407, 7.8532046, 10.9956078] },
    // The same table, pinned-free: an endless mass holds one end still and lets it turn.
    { ends: 'free, and endlessly heavy at the front', nock: 0, front: 1e12, roots: [3.9266023, 7.0685827, 10.2101761] },
    // The same table, pinned-pinned.
    { ends: 'endlessly heavy at both ends', nock: 1e9, front: 1e9, roots: [Math.PI, 2 * Math.PI, 3 * Math.PI] },
  ])('finds the roots of a beam $ends [Blevins]', ({ nock, front, roots }) => {
    expect(roots.length).toBe(modes.length);
    for (const mode of modes) expect(betaL(mode, nock, front)).toBeCloseTo(roots[mode - 1] ?? Number.NaN, 6);
  });

  it.each([
    // Computed independently for the science notes; the exact treatment is that of Bilge and Morgül 2023.
    { nock: 0, front: 0.25, root: 4.24897 },
    { nock: 0, front: 0.5, root: 4.12814 },
    { nock: 0.1, front: 0.5, root: 3.86593 },
    { nock: 0.1, front: 1, root: 3.78056 },
  ])('finds $root for end masses of $nock and $front shaft masses [computed independently]', ({ nock, front, root }) => {
    expect(betaL(1, nock, front)).toBeCloseTo(root, 5);
  });

  it('gives 78.01 and 244.79 Hz for 0.70 m of 16 g/m and 0.600 in with 1 g of nock and 120 gr of point [computed independently]', () => {
    const shaft = {
      stiffness: stiffnessOf(0.6 * 0.0254, '28 in, 880 g'),
      linearDensity: 0.016,
      length: 0.7,
      nockMass: 0.001,
      frontMass: 120 * grain,
    };
    expect(bendingFrequency(shaft, 1)).toBeCloseTo(78.01, 1);
    expect(bendingFrequency(shaft, 2)).toBeCloseTo(244.79, 1);
  });

  it('agrees with sixty cubic Hermite elements [computed independently with SciPy]', () => {
    const shaft = { stiffness: 3.6, linearDensity: 0.012, length: 0.72, nockMass: 0.001, frontMass: 0.0085 };
    const elements = [75.03446699, 240.56372156, 507.75205876];
    for (const mode of modes) expect(bendingFrequency(shaft, mode) / (elements[mode - 1] ?? Number.NaN)).toBeCloseTo(1, 5);
  });

  it('lies where bending arrows have been reported: 80 to 90 and 210 to 220 Hz [Park, published articles], within a quarter', () => {
    const target = {
      stiffness: stiffnessOf(0.5 * 0.0254, '28 in, 880 g'),
      linearDensity: (7 * grain) / 0.0254,
      length: 29 * 0.0254,
      nockMass: 20 * grain,
      frontMass: 120 * grain,
    };
    expect(Math.abs(bendingFrequency(target, 1) / 85 - 1)).toBeLessThan(0.25);
    expect(Math.abs(bendingFrequency(target, 2) / 215 - 1)).toBeLessThan(0.25);
  });
});
