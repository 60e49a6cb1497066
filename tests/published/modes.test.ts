import { describe, expect, it } from 'vitest';
import { beamModes, bendingModes, stiffnessOf, type LumpedBeam } from '../../core/arrow/index.ts';
import { exampleBundle } from '../../core/model/index.ts';

const grain = 6.479891e-5;
const shaft: LumpedBeam = { stiffness: 4, linearDensity: 0.012, length: 0.7, lumps: [] };

/** βL back from a frequency. */
const rootOf = (frequency: number, { stiffness, linearDensity, length }: LumpedBeam) =>
  length * Math.sqrt(2 * Math.PI * frequency * Math.sqrt(linearDensity / stiffness));

const crossings = (at: (x: number) => number, length: number): number[] => {
  const found: number[] = [];
  const steps = 7000;
  for (let i = 0; i < steps; i++) {
    const [from, to] = [(length * i) / steps, (length * (i + 1)) / steps];
    if (Math.sign(at(from)) !== Math.sign(at(to))) found.push((from + to) / 2);
  }
  return found;
};

describe('bending modes by elements against the handbooks', () => {
  it.each([
    // Blevins, Formulas for Natural Frequency and Mode Shape: free-free, pinned-free and pinned-pinned; an endless mass holds an end still.
    { ends: 'free at both ends', back: 0, front: 0, roots: [4.7300407, 7.8532046, 10.9956078] },
    { ends: 'free, and endlessly heavy at the front', back: 0, front: 1e5, roots: [3.9266023, 7.0685827, 10.2101761] },
    { ends: 'endlessly heavy at both ends', back: 1e5, front: 1e5, roots: [Math.PI, 2 * Math.PI, 3 * Math.PI] },
  ])('finds the roots of a shaft $ends [Blevins]', ({ back, front, roots }) => {
    const lumps = [
      { x: 0, mass: back },
      { x: shaft.length, mass: front },
    ];
    const found = beamModes({ ...shaft, lumps });
    expect(found.length).toBe(roots.length);
    for (const [i, root] of roots.entries())
      expect(Math.abs(rootOf(found[i]?.frequency ?? 0, shaft) / root - 1)).toBeLessThan(1e-4);
  });

  it('stands still where the handbook says: 0.2242 and 0.7758 of the length, then 0.1321, 0.5 and 0.8679 [Blevins]', () => {
    const [first, second] = beamModes(shaft);
    if (first === undefined || second === undefined) throw new Error('Two modes were expected.');
    const ends = crossings(first.at, shaft.length).map((x) => x / shaft.length);
    const three = crossings(second.at, shaft.length).map((x) => x / shaft.length);
    const handbook = [0.2242, 0.7758, 0.1321, 0.5, 0.8679];
    const found = [...ends, ...three];
    expect(found.length).toBe(handbook.length);
    for (const [i, place] of handbook.entries()) expect(Math.abs((found[i] ?? 0) - place)).toBeLessThan(2e-4);
  });

  it.each([
    // Computed independently for the science notes; the exact treatment is that of Bilge and Morgül 2023.
    { nock: 0, front: 0.25, root: 4.24897 },
    { nock: 0, front: 0.5, root: 4.12814 },
    { nock: 0.1, front: 0.5, root: 3.86593 },
    { nock: 0.1, front: 1, root: 3.78056 },
  ])('finds $root for end masses of $nock and $front shaft masses [computed independently]', ({ nock, front, root }) => {
    const whole = shaft.linearDensity * shaft.length;
    const lumps = [
      { x: 0, mass: nock * whole },
      { x: shaft.length, mass: front * whole },
    ];
    expect(rootOf(beamModes({ ...shaft, lumps })[0]?.frequency ?? 0, shaft)).toBeCloseTo(root, 4);
  });

  it('gives 78.01 and 244.79 Hz for 0.70 m of 16 g/m and 0.600 in with 1 g of nock and 120 gr of point [computed independently]', () => {
    const lumps = [
      { x: 0, mass: 0.001 },
      { x: 0.7, mass: 120 * grain },
    ];
    const [first, second] = beamModes({
      stiffness: stiffnessOf(0.6 * 0.0254, '28 in, 880 g'),
      linearDensity: 0.016,
      length: 0.7,
      lumps,
    });
    expect(first?.frequency).toBeCloseTo(78.01, 2);
    expect(second?.frequency).toBeCloseTo(244.79, 2);
  });

  it('carries four parts of some length at their places as exact transfer matrices do [computed independently]', () => {
    // A nock of 0.6 g and 20 mm about 3 mm, fletching 0.6 g and 45 mm about 47.5 mm, insert 0.8 g and 20 mm about 690 mm, point 6.5 g and
    // 45 mm about the end. Each as a stiff rod: 85.32273, 272.40072, 561.47696 Hz. As two halves of equal inertia: 85.31980, 272.37948, 561.73112.
    const rods = [85.32273, 272.40072, 561.47696];
    const halves = [85.3198, 272.37948, 561.73112];
    const apart = (mass: number, at: number, length: number) =>
      [-1, 1].map((side) => ({ x: at + (side * length) / Math.sqrt(12), mass: mass / 2 }));
    const lumps = [
      ...apart(0.0006, 0.003, 0.02),
      ...apart(0.0006, 0.0475, 0.045),
      ...apart(0.0008, 0.69, 0.02),
      ...apart(0.0065, 0.7, 0.045),
    ];
    const found = beamModes({ ...shaft, lumps }).map(({ frequency }) => frequency);
    for (const [i, frequency] of found.entries()) {
      expect(Math.abs(frequency / (halves[i] ?? 0) - 1)).toBeLessThan(2e-4);
      expect(Math.abs(frequency / (rods[i] ?? 0) - 1)).toBeLessThan(1e-3);
    }
  });

  it('has the rear node of the first mode about 150 mm from the nock on a target arrow [Park, published articles]', () => {
    const modes = bendingModes(exampleBundle.arrowSet);
    if (!modes.ok) throw new Error(modes.problem.sentence);
    expect(Math.abs((modes.value[0]?.nodes[0] ?? 0) - 0.15)).toBeLessThan(0.01);
  });
});
