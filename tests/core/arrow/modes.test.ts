import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  beamModes,
  bendingFrequencies,
  bendingFrequency,
  bendingModes,
  buildArrow,
  lumpsOf,
  type BendingMode,
} from '../../../core/arrow/index.ts';
import { exampleBundle, unmeasured, type ArrowSet, type Result } from '../../../core/model/index.ts';

const grain = 6.479891e-5;
const inch = 0.0254;
const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};
const modesOf = (set: ArrowSet) => valueOf(bendingModes(set));

const arrows = fc
  .record({
    length: fc.double({ min: 20 * inch, max: 34 * inch, noNaN: true }),
    deflection: fc.double({ min: 0.25 * inch, max: 2 * inch, noNaN: true }),
    linearDensity: fc.double({ min: (4 * grain) / inch, max: (18 * grain) / inch, noNaN: true }),
    pointMass: fc.double({ min: 10 * grain, max: 400 * grain, noNaN: true }),
    nockMass: fc.double({ min: 0, max: 40 * grain, noNaN: true }),
    fletchingMass: fc.double({ min: 0, max: 30 * grain, noNaN: true }),
  })
  .map((parts): ArrowSet => ({ ...exampleBundle.arrowSet, ...unmeasured.arrowSet, ...parts }));

const masses = fc.double({ min: 0, max: 0.05, noNaN: true });
const beam = { stiffness: 4, linearDensity: 0.012, length: 0.7 };

describe('bending modes of an arrow', () => {
  it('come to the exact frequencies when the masses sit on the ends', () => {
    fc.assert(
      fc.property(masses, masses, (back, front) => {
        const lumps = [
          { x: 0, mass: back },
          { x: beam.length, mass: front },
        ];
        for (const [i, { frequency }] of beamModes({ ...beam, lumps }).entries()) {
          const exact = bendingFrequency({ ...beam, nockMass: back, frontMass: front }, (i + 1) as BendingMode);
          // Elements are stiffer than the beam, never softer; the third mode by 155 parts in a million at most.
          expect(frequency / exact - 1).toBeGreaterThan(-1e-8);
          expect(frequency / exact - 1).toBeLessThan(1.6e-4);
        }
      }),
    );
  });

  it('are at right angles to each other, and to sliding and swinging, as the masses weigh them', () => {
    fc.assert(
      fc.property(arrows, (set) => {
        const { parts, length } = valueOf(buildArrow(set));
        const shaft = parts.find(({ name }) => name === 'shaft')?.mass ?? 0;
        const lumps = lumpsOf(parts);
        const modes = beamModes({ stiffness: beam.stiffness, linearDensity: shaft / length, length, lumps });
        const shapes = [...modes.map(({ at }) => at), () => 1, (x: number) => x / length];
        // Simpson's rule along the shaft, and every lump at its place.
        const count = 480;
        const weight = (i: number) => (i === 0 || i === count ? 1 : i % 2 === 1 ? 4 : 2) / (3 * count);
        const places = Array.from({ length: count + 1 }, (_, i) => (length * i) / count);
        const product = (a: (x: number) => number, b: (x: number) => number) =>
          shaft * places.reduce((sum, x, i) => sum + weight(i) * a(x) * b(x), 0) +
          lumps.reduce((sum, { x, mass }) => sum + mass * a(x) * b(x), 0);
        for (let i = 0; i < 3; i++)
          for (let j = i + 1; j < 5; j++) {
            const [a, b] = [shapes[i], shapes[j]];
            if (a === undefined || b === undefined) throw new Error('Five shapes were expected.');
            expect(Math.abs(product(a, b)) / Math.sqrt(product(a, a) * product(b, b))).toBeLessThan(1e-6);
          }
      }),
      { numRuns: 40 },
    );
  });

  it('swing at their largest by 1, with the throat to the positive side and one node more than their number', () => {
    fc.assert(
      fc.property(arrows, (set) => {
        for (const { mode, shape, nodes } of modesOf(set)) {
          expect(Math.max(...shape.map(({ w }) => Math.abs(w)))).toBeCloseTo(1, 12);
          expect(shape[0]?.w).toBeGreaterThan(0);
          expect(shape.length).toBe(61);
          expect(nodes.length).toBe(mode + 1);
          expect([...nodes].sort((a, b) => a - b)).toEqual(nodes);
          for (const node of nodes) expect(node).toBeGreaterThan(0);
        }
      }),
    );
  });

  it('rise in order, and fall with a weaker shaft and with a heavier point', () => {
    fc.assert(
      fc.property(arrows, (set) => {
        const frequencies = valueOf(bendingFrequencies(set));
        const weaker = valueOf(bendingFrequencies({ ...set, deflection: (set.deflection ?? 0) * 1.1 }));
        const heavier = valueOf(bendingFrequencies({ ...set, pointMass: (set.pointMass ?? 0) * 0.9 }));
        for (const [i, frequency] of frequencies.entries()) {
          expect(weaker[i] ?? 0).toBeCloseTo(frequency / Math.sqrt(1.1), 6);
          expect(heavier[i] ?? 0).toBeGreaterThan(frequency * (1 - 1e-9));
          expect(frequency).toBeGreaterThan(frequencies[i - 1] ?? 0);
        }
      }),
    );
  });

  it('are mirrored when the shaft is turned end for end', () => {
    fc.assert(
      fc.property(masses, masses, fc.double({ min: 0, max: 1, noNaN: true }), (back, front, place) => {
        const lumps = [
          { x: 0, mass: back },
          { x: place * beam.length, mass: 0.002 },
          { x: beam.length, mass: front },
        ];
        const turned = lumps.map(({ x, mass }) => ({ x: beam.length - x, mass }));
        const [one, other] = [beamModes({ ...beam, lumps }), beamModes({ ...beam, lumps: turned })];
        for (const [i, { frequency }] of one.entries()) expect((other[i]?.frequency ?? 0) / frequency).toBeCloseTo(1, 7);
      }),
    );
  });

  it('keep their frequencies when lengths, masses and stiffness are counted in other units', () => {
    const unit = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(unit, unit, (s, q) => {
        const lumps = [
          { x: 0.003, mass: 0.0006 },
          { x: 0.71, mass: 0.007 },
        ];
        const other = {
          stiffness: beam.stiffness / (q * s ** 3),
          linearDensity: (beam.linearDensity / q) * s,
          length: beam.length / s,
          lumps: lumps.map(({ x, mass }) => ({ x: x / s, mass: mass / q })),
        };
        const there = beamModes(other);
        for (const [i, { frequency }] of beamModes({ ...beam, lumps }).entries())
          expect((there[i]?.frequency ?? 0) / frequency).toBeCloseTo(1, 9);
      }),
    );
  });

  it('say what they wait for, and refuse what cannot be', () => {
    const set = exampleBundle.arrowSet;
    expect(bendingModes({ ...set, deflection: null }).ok).toBe(false);
    expect(bendingModes({ ...set, length: null }).ok).toBe(false);
    expect(bendingModes({ ...set, pointMass: Number.NaN }).ok).toBe(false);
    expect(() => beamModes({ ...beam, lumps: [{ x: Number.NaN, mass: 0.001 }] })).toThrow(RangeError);
    expect(() => beamModes({ ...beam, lumps: [{ x: 0, mass: -0.001 }] })).toThrow(RangeError);
    expect(() => beamModes({ ...beam, stiffness: 0, lumps: [] })).toThrow(RangeError);
  });
});
